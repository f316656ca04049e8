package org.loomproof.pages.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.Work.SheetChecked.Says;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.shop.job.MadeJob;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

/** What is counted over many jobs: entries of a shared sheet that meters confirmed, and how long work took. */
class TallyTest extends InBook {

    private static final Path VAN = Path.of("..", "examples", "bakery-van");
    private static final Instant NOW = Instant.parse("2026-11-26T09:00:00Z");

    private static String van(String text) {
        try {
            return Files.readString(VAN.resolve(text + ".yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Card sheet() {
        return book().cards()
                .add(CardKind.SHEET, Author.CONSOLE, "sheet.changed", Map.of("title", "Van", "sheet", van("sheet")));
    }

    private Card job(Card sheet, String plate) {
        return book().cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Odile Brandt"),
                        Map.of(
                                "plate",
                                plate,
                                "sheet",
                                sheet.get("sheet"),
                                "sheet-from",
                                sheet.id().value()));
    }

    private Confirmations confirmations() {
        return new Confirmations(book(), Messages.english());
    }

    private void said(Card job, String circuit, Says says) {
        String entry = Objects.requireNonNull(confirmations().entries(job).get(new CircuitId(circuit)));
        new WorkLog(book(), job.id())
                .add(Author.CONSOLE, List.of(Entry.of(NOW, new Work.SheetChecked(circuit, entry, says))));
    }

    private List<Integer> counts(Card sheet, String circuit) {
        return confirmations().of(sheet).stream()
                .filter(line -> line.circuit().id().value().equals(circuit))
                .flatMap(line -> Stream.of(line.confirmed(), line.contradicted()))
                .toList();
    }

    @Test
    void anEntryIsCountedOnceForEachCarAndBeginsAnewWhenItIsChanged() {
        Card sheet = sheet();
        Card one = job(sheet, "QX 481 LM");
        Card other = job(sheet, "QX 482 LM");
        said(one, "horn-wire", Says.CONFIRMED);
        said(one, "starter", Says.CONTRADICTED);
        said(one, "ignition", Says.CONTRADICTED);
        said(one, "ignition", Says.CONFIRMED);
        said(one, "side-lamps", Says.CONFIRMED);
        said(one, "side-lamps", Says.OPEN);
        said(other, "horn-wire", Says.CONFIRMED);
        assertThat(counts(sheet, "horn-wire")).as("not before somebody counts").containsExactly(0, 0);
        confirmations().count(one, Author.CONSOLE);
        confirmations().count(one, Author.CONSOLE);
        confirmations().count(other, Author.CONSOLE);
        assertThat(counts(sheet, "horn-wire")).containsExactly(2, 0);
        assertThat(counts(sheet, "starter")).containsExactly(0, 1);
        assertThat(counts(sheet, "ignition")).as("what was said last").containsExactly(1, 0);
        assertThat(counts(sheet, "side-lamps")).as("taken back").containsExactly(0, 0);
        assertThat(book().cards().find(CardId.beside(sheet.id(), CardKind.TALLY)))
                .map(Card::version)
                .as("one change a car")
                .hasValue(3);

        String text = sheet.get("sheet");
        String recoloured = text.replaceFirst("(?s)(id: horn-wire\n.*?colour: )RD", "$1VT");
        assertThat(recoloured).isNotEqualTo(text);
        book().cards().change(sheet.id(), 1, Author.CONSOLE, "sheet.changed", Map.of("sheet", recoloured));
        Card changed = book().cards().find(sheet.id()).orElseThrow();
        assertThat(counts(changed, "horn-wire")).as("says something else now").containsExactly(0, 0);
        assertThat(counts(changed, "starter")).as("says the same").containsExactly(0, 1);
    }

    /** A page reads one card: with every job forgotten it says the same, and nothing in it is a customer's. */
    @Test
    void theCountStaysWhenCustomersAreForgottenAndNamesNobody() {
        Card sheet = sheet();
        List<Card> jobs = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            Card job = job(sheet, "QX 48" + k + " LM");
            said(job, "horn-wire", Says.CONFIRMED);
            confirmations().count(job, Author.CONSOLE);
            jobs.add(job);
        }
        jobs.forEach(job -> book().customers().erase(job.customer(), Author.CONSOLE));
        assertThat(jobs).allMatch(job -> book().cards().find(job.id()).isEmpty());
        assertThat(counts(sheet, "horn-wire")).containsExactly(3, 0);
        Card tally =
                book().cards().find(CardId.beside(sheet.id(), CardKind.TALLY)).orElseThrow();
        assertThat(tally.entries().values()).hasSize(3).allSatisfy((name, said) -> {
            assertThat(name).matches("[a-z2-7]{26}");
            assertThat(said).matches("[0-9a-f]{16}[+-]");
        });
    }

    @Test
    void aSheetOfTheJobsOwnIsCountedNowhere() {
        Card sheet = sheet();
        Card own = book().cards()
                .addCustomerWithJob(
                        Author.CONSOLE, "job.called", Map.of("name", "Odile Brandt"), Map.of("sheet", van("sheet")));
        said(own, "horn-wire", Says.CONFIRMED);
        confirmations().count(own, Author.CONSOLE);
        assertThat(counts(sheet, "horn-wire")).containsExactly(0, 0);
    }

    @Test
    void quotesGoByWhatTheShopTimedOnceThatWasOftenEnough() {
        assertThat(Prices.texts(book()).history()).isEmpty();
        book().cards()
                .add(CardKind.PRICES, Author.CONSOLE, "prices.changed", Map.of("title", "prices", "prices", prices()));
        Card sheet = sheet();
        for (int k = 0; k < 4; k++) {
            new Timings(book()).count(job(sheet, "P" + k), Stream.of("tap,11.00", "check-in,31.00"), Author.CONSOLE);
        }
        assertThat(quote(made())).as("four are too few").doesNotContain("min each; half of our");
        Card fifth = job(sheet, "P5");
        new Timings(book()).count(fifth, Stream.of("tap,99.00"), Author.CONSOLE);
        new Timings(book()).count(fifth, Stream.of("tap,13.50", "tap,16.00", "tap,16.00", "tap,16.00"), Author.CONSOLE);
        assertThat(Prices.texts(book()).history().orElseThrow().text())
                .as("in place of what was counted before")
                .doesNotContain("99.00");
        MadeJob made = made();
        assertThat(made.shop().history().find(org.loomproof.workshop.goods.price.Work.TAP))
                .hasValueSatisfying(spread -> {
                    assertThat(spread.count()).isEqualTo(8);
                    assertThat(spread.median()).isEqualByComparingTo("12.25");
                });
        assertThat(quote(made)).contains("12.25 min each; half of our 8 such jobs");
    }

    private static String prices() {
        try {
            return Files.readString(VAN.resolve("prices.csv"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private MadeJob made() {
        return switch (new TextRun(Messages.english())
                .make(
                        new SourceText("sheet.yaml", van("sheet")),
                        new SourceText("kit.yaml", van("kit")),
                        new SourceText("order.yaml", van("order")),
                        Prices.texts(book()),
                        stage -> {},
                        () -> {})) {
            case Checked.Good<MadeJob>(MadeJob good) -> good;
            case Checked.Bad<MadeJob>(var problems) -> throw new AssertionError(problems.toString());
        };
    }

    private static String quote(MadeJob made) {
        return made.papers().stream()
                .filter(paper -> paper.name().equals("quote.txt"))
                .map(paper -> new String(paper.bytes(), StandardCharsets.UTF_8).replaceAll("[\\s\u00A0]+", " "))
                .findFirst()
                .orElseThrow();
    }
}
