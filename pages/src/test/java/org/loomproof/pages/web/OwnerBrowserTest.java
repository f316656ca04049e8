package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.Book;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.web.Browsers.Screen;

/** What only an owner does, in a real browser. */
class OwnerBrowserTest extends InBrowser {

    private static final String NEXT = "five tin kettles hum";

    @TempDir
    private Path folder;

    @Test
    void anotherPassphraseOpensTheBookAndTheOldOneNoMore() {
        try (TestShop shop = TestShop.open(folder)) {
            for (Screen screen : Screen.of("book")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = ownerSignedIn(somebody, shop);
                    page.navigate(shop.address() + "/book");
                    fill(page, "not the passphrase", NEXT);
                    assertThat(page.getByRole(AriaRole.ALERT)).containsText("does not open");
                    Browsers.look(page, screen, "book");
                }
            }
            try (BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
                Page page = ownerSignedIn(somebody, shop);
                page.navigate(shop.address() + "/book");
                fill(page, TestShop.PASSPHRASE, NEXT);
                assertThat(page.locator(".done")).containsText("was changed");
            }
            BookPlace place = shop.shop.place();
            assertThat(Book.open(place, Passphrase.of(TestShop.PASSPHRASE), shop.clock))
                    .isEqualTo(new Tried.Not<OpenBook>(Refusal.WRONG_PASSPHRASE));
            Book.open(place, Passphrase.of(NEXT), shop.clock).orThrow().close();
        }
    }

    private static void fill(Page page, String old, String next) {
        page.getByLabel("The passphrase as it is").fill(old);
        page.getByLabel("The new passphrase").fill(next);
        page.getByLabel("The passphrase once more").fill(next);
        page.locator("#understood").check();
        page.locator("main button").click();
    }

    @Test
    void aCustomersDataIsHandedOverWholeAndForgotten() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            Card job = book.cards()
                    .addCustomerWithJob(
                            Author.CONSOLE,
                            "job.called",
                            Map.of("name", "Odile Brandt"),
                            Map.of("plate", "QX 481 LM", "make", "Fennick", "model", "Drayling"));
            book.attachments().add(job.id(), Author.CONSOLE, "photo", new byte[] {1, 2, 3});
            Page page = ownerSignedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + job.id() + "/customer");
            Browsers.look(page, Screen.PHONE, "customer");

            Download file =
                    page.waitForDownload(() -> page.locator("main a.button").click());
            Path saved = folder.resolve("saved.zip");
            file.saveAs(saved);
            try (ZipFile zip = new ZipFile(saved.toFile())) {
                List<String> names = new ArrayList<>();
                zip.stream().forEach(entry -> names.add(entry.getName()));
                assertThat(names).containsExactly("0001-photo", "customer.json");
                assertThat(zip.getInputStream(zip.getEntry("0001-photo")).readAllBytes())
                        .containsExactly(1, 2, 3);
                assertThat(new String(
                                zip.getInputStream(zip.getEntry("customer.json"))
                                        .readAllBytes(),
                                StandardCharsets.UTF_8))
                        .contains("Odile Brandt", "QX 481 LM", "job.called");
            }

            page.locator("main button").click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("nobody can undo");
            page.locator("#understood").check();
            page.locator("main button").click();
            assertThat(page.locator("h1")).hasText("Forgotten");
            assertThat(page.locator(".cards")).containsText("Fennick Drayling");
            Browsers.look(page, Screen.PHONE, "erased");
            assertThat(book.cards().find(job.id())).isEmpty();
            assertThat(book.cards().list(Listing.all(CardKind.JOB, 9))).isEmpty();
            assertThat(page.navigate(shop.address() + "/jobs/" + job.id()).status())
                    .isEqualTo(404);
        }
    }
}
