package org.loomproof.pages.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Background;
import org.loomproof.pages.desk.Fit;
import org.loomproof.pages.desk.NightlyProof;
import org.loomproof.workshop.words.Messages;

/** The nightly proof of sheets with kits: what is proven, when it is proven again, and when not. */
class NightlyProofTest {

    @TempDir
    private Path folder;

    @Test
    void aSheetIsProvenWithAKitOnceUntilATextChanges() {
        try (TestShop shop = TestShop.open(folder)) {
            OpenBook book = shop.shop.book().orElseThrow();
            Card sheet = SharedText.sheet(book, "Small hatchback");
            SharedText.kit(book, "Kit", SharedText.of("order"));
            SharedText.kit(book, "Nobody orders it", "");
            assertThat(fits(book)).extracting(Fit::standing).containsExactly("due", "no-order");

            Background background = shop.shop.background().orElseThrow();
            assertThat(background.proveDue(Author.CONSOLE, Locale.ENGLISH)).isEqualTo(1);
            background.proveDue(Author.CONSOLE, Locale.ENGLISH); // asked for twice, done once
            shop.awaitNightlyProof();
            Fit proven = fits(book).getFirst();
            assertThat(proven.standing()).isEqualTo("proven");
            var card = book.cards().find(proven.last().orElseThrow().id()).orElseThrow();
            assertThat(card.version()).isEqualTo(1);
            assertThat(NightlyProof.verdicts(card).orElseThrow().claims())
                    .hasSizeGreaterThan(10)
                    .allSatisfy(claim -> assertThat(claim.verdict()).isEqualTo("holds"));
            assertThat(background.proveDue(Author.CONSOLE, Locale.ENGLISH)).isZero();

            shop.shop.close();
            shop.shop.unlock(Passphrase.of(TestShop.PASSPHRASE));
            OpenBook again = shop.shop.book().orElseThrow();
            assertThat(fits(again).getFirst().standing()).isEqualTo("proven");

            again.cards()
                    .change(
                            sheet.id(),
                            1,
                            Author.CONSOLE,
                            "sheet.changed",
                            Map.of("sheet", sheet.get("sheet") + "# seen again\n"));
            Fit stale = fits(again).getFirst();
            assertThat(stale.standing()).isEqualTo("due");
            assertThat(stale.last()).as("what was found stays to be read").isPresent();
            Background next = shop.shop.background().orElseThrow();
            assertThat(next.proveDue(Author.CONSOLE, Locale.ENGLISH)).isEqualTo(1);
            shop.awaitNightlyProof();
            assertThat(fits(again).getFirst().standing()).isEqualTo("proven");
            assertThat(again.cards().find(card.id()).orElseThrow().version())
                    .as("on the same card")
                    .isEqualTo(2);
        }
    }

    private static List<Fit> fits(OpenBook book) {
        return new NightlyProof(book, Messages.english()).all();
    }
}
