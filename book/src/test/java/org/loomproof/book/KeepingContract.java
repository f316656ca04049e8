package org.loomproof.book;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.Customers;
import org.loomproof.book.store.OpenBook;
import org.loomproof.testing.Sample;

/** How a book is kept wherever it lies: from strangers, from damage, from those who forget, and for those who ask to be forgotten. */
abstract class KeepingContract extends BookFixture {

    @Test
    void whatIsDroppedIsGoneAndTheRestStays() {
        Card van = book().cards()
                .addCustomerWithJob(BO, "job.called", Map.of("name", "Somebody"), Map.of("plate", "QX 1"));
        book().attachments().add(van.id(), BO, "old/plan", new byte[] {1});
        book().attachments().add(van.id(), BO, "photo", new byte[] {2});
        assertThat(book().attachments().drop(van.id(), one -> one.label().startsWith("old/")))
                .isEqualTo(1);
        assertThat(book().attachments().of(van.id()))
                .extracting(Attachments.Label::label)
                .containsExactly("photo");
        assertThat(book().attachments().drop(van.id(), one -> false)).isZero();
    }

    @Test
    void aWrongPassphraseOpensNothing() {
        Card van = addVan();
        closeBook();
        open = Optional.empty();

        for (String wrong :
                List.of("four brass kettles sin", "", "Four brass kettles sing", "four brass kettles sing ")) {
            assertThat(refusal(Book.open(place, Passphrase.of(wrong), Clock.systemUTC())))
                    .isEqualTo(Refusal.WRONG_PASSPHRASE);
        }
        open = Optional.of(Book.open(place, PASSPHRASE, Clock.systemUTC()).orThrow());
        assertThat(book().cards().find(van.id())).hasValue(van);
    }

    @Test
    void afterThePassphraseWasChangedOnlyTheNewOneOpens() {
        Card van = addVan();
        Passphrase next = Passphrase.of("nine tin whistles rust");

        assertThat(refusal(book().changePassphrase(next, next, QUICK)))
                .as("the old one is asked for")
                .isEqualTo(Refusal.WRONG_PASSPHRASE);
        assertThat(refusal(book().changePassphrase(PASSPHRASE, Passphrase.of("short"), QUICK)))
                .isEqualTo(Refusal.PASSPHRASE_TOO_SHORT);
        assertThat(book().changePassphrase(PASSPHRASE, next, QUICK).orThrow()).isTrue();
        closeBook();
        open = Optional.empty();

        assertThat(refusal(Book.open(place, PASSPHRASE, Clock.systemUTC()))).isEqualTo(Refusal.WRONG_PASSPHRASE);
        open = Optional.of(Book.open(place, next, Clock.systemUTC()).orThrow());
        assertThat(book().cards().find(van.id())).hasValue(van);
    }

    @Test
    void theFilesHoldNoNamePlateNumberOrHidingPlace() throws Exception {
        Card van = addVan();
        saved(book().cards()
                .change(van.id(), 1, BO, "job.corrected", Map.of("finding", "starter wire under quince panel")));
        book().attachments().add(van.id(), BO, "photo of quince", "pixels of quince".getBytes(UTF_8));
        List<Path> files = filesOnDisk(place);

        assertThat(files).isNotEmpty();
        List<String> secrets = List.of(
                "Wilhelmine",
                "Östergård",
                "stergård",
                "ostergard",
                "wilhelmine",
                "QX 481 LM",
                "qx481lm",
                "11111111111111111",
                "Courier",
                "courier",
                "spare wheel",
                "quince",
                "Quince",
                "0155 7700",
                "015577001234");
        boolean clearTextSeen = false;
        for (Path file : files) {
            String content = Files.readString(file, ISO_8859_1);
            for (String secret : secrets) {
                for (Charset charset : List.of(UTF_8, UTF_16LE)) {
                    String bytes = new String(secret.getBytes(charset), ISO_8859_1);
                    assertThat(content.contains(bytes))
                            .as("%s in %s", secret, file.getFileName())
                            .isFalse();
                }
            }
            clearTextSeen |= content.contains(van.id().value()) && content.contains("job.corrected");
        }
        assertThat(clearTextSeen).as("the search looks where the book is").isTrue();
    }

    @Test
    void everythingAboutACustomerCanBeHandedOver() {
        Card van = addVan();
        Card other = book().cards()
                .addCustomerWithJob(BO, "job.called", Map.of("name", "Tobias Quill"), Map.of("plate", "ZZ 9"));
        book().cards().addJob(van.customer(), BO, "job.called", Map.of("plate", "QX 2"));
        book().attachments().add(van.id(), BO, "photo", new byte[] {1});
        book().cards().beside(van.id(), CardKind.WORK, BO, "work.begun");

        List<Customers.Whole> all = book().customers().everything(van.customer());
        assertThat(all)
                .extracting(w -> w.card().kind())
                .containsExactly(CardKind.CUSTOMER, CardKind.JOB, CardKind.JOB, CardKind.WORK);
        assertThat(all).flatExtracting(Customers.Whole::events).hasSize(4);
        assertThat(all).flatExtracting(Customers.Whole::attachments).hasSize(1);
        assertThat(all).extracting(w -> w.card().id()).doesNotContain(other.id());
    }

    @Test
    void anErasedCustomerCannotBeReadAgainAndWhatStaysNamesNobody() {
        Card van = addVan();
        Card other = book().cards()
                .addCustomerWithJob(BO, "job.called", Map.of("name", "Tobias Quill"), Map.of("plate", "ZZ 9"));
        CardId photo =
                book().attachments().add(van.id(), BO, "photo", new byte[] {1}).orElseThrow();
        Card work =
                book().cards().beside(van.id(), CardKind.WORK, BO, "work.begun").orElseThrow();
        saved(book().cards().change(work.id(), 1, BO, "work.noted", Map.of("one", "behind the quince panel")));

        List<Card> remains = book().customers().erase(van.customer(), BO);

        assertThat(remains).singleElement().satisfies(card -> {
            assertThat(card.kind()).isEqualTo(CardKind.REMAINS);
            assertThat(card.entries().values()).containsOnlyKeys("make", "model", "year", "stage");
        });
        assertThat(book().cards().find(van.id())).isEmpty();
        assertThat(book().cards().find(van.customer())).isEmpty();
        assertThat(book().cards().at(van.id(), 1)).isEmpty();
        assertThat(book().cards().find(work.id())).isEmpty();
        assertThat(book().cards().events(work.id()))
                .allSatisfy(event -> assertThat(event.changes()).isEmpty());
        assertThat(book().cards().beside(van.id(), CardKind.WORK, BO, "work.begun"))
                .as("of a job that is gone")
                .isEmpty();
        assertThat(book().attachments().open(van.id(), photo)).isEmpty();
        assertThat(found(Listing.all(CardKind.JOB, 10))).containsExactly(other.id());
        assertThat(found(Listing.all(CardKind.JOB, 10).foundBy("qx481lm"))).isEmpty();
        assertThat(book().cards().change(van.id(), 1, BO, "job.corrected", Map.of("plate", "X")))
                .isInstanceOf(Saved.Gone.class);
        assertThat(book().cards().addJob(van.customer(), BO, "job.called", VAN)).isEmpty();
        assertThat(book().customers().erase(van.customer(), BO)).isEmpty();
        List<CardEvent> events = book().cards().events(van.id());
        assertThat(events).extracting(CardEvent::what).containsExactly("job.called", "customer.erased");
        assertThat(events).allSatisfy(event -> assertThat(event.changes()).isEmpty());
        assertThat(book().cards().find(other.id())).hasValue(other);
        assertThat(book().check()).isInstanceOf(Tried.Done.class);
    }

    @Test
    void aBackupMadeWhileOthersWriteIsAWholeBookAndComesBack() throws Exception {
        Card van = addVan();
        book().attachments().add(van.id(), BO, "photo", new byte[] {9, 9});
        Path file = folder.resolve("night.backup");
        Set<CardId> during = new HashSet<>();
        try (ExecutorService pool = Executors.newSingleThreadExecutor()) {
            Future<?> writing = pool.submit(() -> IntStream.range(0, 60)
                    .forEach(i -> during.add(book().cards()
                            .addCustomerWithJob(BO, "job.called", Map.of("name", "N" + i), Map.of("plate", "P" + i))
                            .id())));
            assertThat(Book.backup(place, file).orThrow()).isPositive();
            writing.get();
        }
        assertThat(refusal(Book.backup(place, file)))
                .as("a file that is there stays")
                .isEqualTo(Refusal.BOOK_THERE);
        assertThat(refusal(Book.restore(file, place)))
                .as("a book that is there stays")
                .isEqualTo(Refusal.BOOK_THERE);

        BookPlace elsewhere = freshPlace();
        assertThat(Book.restore(file, elsewhere).orThrow()).isPositive();
        try (OpenBook restored =
                Book.open(elsewhere, PASSPHRASE, Clock.systemUTC()).orThrow()) {
            assertThat(restored.cards().find(van.id())).hasValue(van);
            assertThat(restored.attachments().of(van.id())).hasSize(1);
            assertThat(restored.check().orThrow()).isPositive();
            int jobs = restored.cards().count(Listing.all(CardKind.JOB, 1));
            int customers = restored.cards().count(Listing.all(CardKind.CUSTOMER, 1));
            assertThat(jobs)
                    .as("one moment: no customer without the job that came with it")
                    .isEqualTo(customers);
        }
        assertThat(during).hasSize(60);
    }

    @Test
    void aDamagedOrForeignFileIsRefusedAndChangesNothing() throws Exception {
        addVan();
        Path good = folder.resolve("good.backup");
        Book.backup(place, good).orThrow();
        byte[] bytes = Files.readAllBytes(good);
        Path bad = folder.resolve("bad.backup");
        BookPlace elsewhere = freshPlace();

        Files.writeString(bad, "a letter to the shop");
        assertThat(refusal(Book.restore(bad, elsewhere))).isEqualTo(Refusal.FOREIGN);
        Files.write(bad, new byte[0]);
        assertThat(refusal(Book.restore(bad, elsewhere))).isEqualTo(Refusal.FOREIGN);
        Files.write(bad, Arrays.copyOf(bytes, bytes.length / 2));
        assertThat(refusal(Book.restore(bad, elsewhere))).isEqualTo(Refusal.DAMAGED);
        assertThat(refusal(Book.restore(folder.resolve("none"), elsewhere))).isEqualTo(Refusal.NO_BOOK);
        int caught = 0;
        int harmless = 0;
        List<Integer> places = IntStream.iterate(64, at -> at < bytes.length, at -> at + 97)
                .boxed()
                .toList();
        for (int at : Sample.bySeed(places, 25)) {
            byte[] damaged = bytes.clone();
            damaged[at] ^= 0x10;
            Files.write(bad, damaged);
            BookPlace target = new BookPlace.InFile(folder.resolve("restored-" + at));
            switch (Book.restore(bad, target)) {
                case Tried.Not<Long>(Refusal why) -> caught++;
                case Tried.Done<Long> ignored -> {
                    harmless++; // a byte nobody reads: the copy must then be the same book
                    try (OpenBook copy =
                            Book.open(target, PASSPHRASE, Clock.systemUTC()).orThrow()) {
                        assertThat(copy.check().orThrow())
                                .isEqualTo(book().check().orThrow());
                    }
                }
            }
        }
        assertThat(caught)
                .as("damaged bytes noticed, %d were in unused space", harmless)
                .isPositive();
        assertThat(refusal(Book.open(elsewhere, PASSPHRASE, Clock.systemUTC())))
                .as("nothing was put there")
                .isEqualTo(Refusal.NO_BOOK);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")))
                    .isEmpty();
        }
    }

    @Test
    void aSealMovedToAnotherRowIsFoundOut() {
        Card van = addVan();
        Card other = book().cards().addCustomerWithJob(BO, "job.called", CUSTOMER, VAN);
        assertThat(book().check().orThrow()).isEqualTo(8L);
        tamper("UPDATE card SET headline = (SELECT headline FROM card WHERE id = '" + van.customer() + "') WHERE id = '"
                + van.id() + "'");
        assertThat(refusal(book().check())).isEqualTo(Refusal.DAMAGED);
        assertThat(book().cards().find(other.id())).isPresent();
    }

    @Test
    void eventsAreOnlyEverAdded() {
        addVan();
        assertThatThrownBy(() -> tamper("UPDATE card_event SET who = 'nobody'"))
                .hasMessageContaining("only ever added");
        assertThatThrownBy(() -> tamper("DELETE FROM card_event")).hasMessageContaining("only ever added");
    }

    @Test
    void aBookIsNotMadeOverAnother() {
        assertThat(refusal(Book.create(place, PASSPHRASE, QUICK, Clock.systemUTC())))
                .isEqualTo(Refusal.BOOK_THERE);
        assertThat(refusal(Book.create(freshPlace(), Passphrase.of("short"), QUICK, Clock.systemUTC())))
                .isEqualTo(Refusal.PASSPHRASE_TOO_SHORT);
        assertThat(refusal(Book.open(freshPlace(), PASSPHRASE, Clock.systemUTC())))
                .isEqualTo(Refusal.NO_BOOK);
    }
}
