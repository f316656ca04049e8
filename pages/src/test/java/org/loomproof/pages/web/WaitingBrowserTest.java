package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.web.Browsers.Screen;

/** A job that waits for parts: what is missing, where it stands in the list, and that its parts stay asked for. */
class WaitingBrowserTest extends InBrowser {

    @TempDir
    private Path folder;

    private static CardId job(OpenBook book) {
        book.cards()
                .add(
                        CardKind.PRICES,
                        Author.CONSOLE,
                        "prices.changed",
                        Map.of("title", "prices", "stock", "article,size,count\nfuse,7.5 A,1\ntie,,40\n"));
        return book.cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Odile Brandt"),
                        Map.of(
                                "plate", "QX 481 LM",
                                "make", "Fennick",
                                "checked-in", "2026-11-26",
                                "order", "x",
                                "sheet", "x",
                                "kit", "x",
                                "verdict", "proven",
                                "needs", "article,size,count\nfuse,7.5 A,2\ntie,,12\nrelay-socket,,1\n",
                                "stage", "bench"))
                .id();
    }

    @Test
    void aJobWaitsForPartsUntilTheyAreHere() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            CardId id = job(shop.shop.book().orElseThrow());
            String job = shop.address() + "/jobs/" + id;
            Page page = signedIn(somebody, shop);
            page.navigate(job);
            assertThat(page.locator(".lacking")).hasText("Not enough on the shelf: blade fuse 7.5\u00A0A.");
            assertThat(page.locator(".next")).hasCount(1);
            button(page, "It waits for parts").click();
            assertThat(page.locator(".next")).hasText("The parts are here");

            page.navigate(shop.address() + "/?stage=waits-for-parts");
            assertThat(page.locator(".cards li")).hasCount(1);
            assertThat(page.locator(".cards .waits")).hasText("waits for parts");
            page.navigate(shop.address() + "/?stage=bench");
            assertThat(page.locator(".cards li")).hasCount(0);
            page.navigate(shop.address() + "/prices");
            assertThat(page.locator("tr.differs").first()).containsText("blade fuse");
            for (Screen screen : Screen.of("job-waits-for-parts")) {
                try (BrowserContext other = browsers().somebody(screen)) {
                    Page seen = signedIn(other, shop);
                    seen.navigate(job);
                    Browsers.look(seen, screen, "job-waits-for-parts");
                }
            }
            page.navigate(job);
            button(page, "The parts are here").click();
            assertThat(page.locator(".next")).hasText("The loom is prepared");
            page.navigate(shop.address() + "/?stage=bench");
            assertThat(page.locator(".cards li")).hasCount(1);
        }
    }

    /** From the list to the job and on, without a mouse: the first key leads past the bar, and what is at hand is to be seen. */
    @Test
    void everythingIsReachedByKeys() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            CardId id = job(shop.shop.book().orElseThrow());
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address());
            page.keyboard().press("Tab");
            assertThat(page.locator("a.skip")).isFocused();
            page.keyboard().press("Enter");
            reach(page, page.locator("#find"));
            page.keyboard().type("QX 481");
            page.keyboard().press("Enter");
            assertThat(page.locator(".cards li")).hasCount(1);
            reach(page, page.locator(".cards a"));
            page.keyboard().press("Enter");
            assertThat(page).hasURL(shop.address() + "/jobs/" + id);
            reach(page, button(page, "It waits for parts"));
            assertThat(page.locator(":focus-visible")).hasText("It waits for parts");
            page.keyboard().press("Enter");
            reach(page, button(page, "The parts are here"));
            page.keyboard().press("Space");
            assertThat(page.locator("button.next")).hasText("The loom is prepared");
        }
    }

    private static void reach(Page page, Locator wanted) {
        for (int key = 0; key < 60 && !(Boolean) wanted.evaluate("e => e === document.activeElement"); key++) {
            page.keyboard().press("Tab");
        }
        assertThat(wanted).isFocused();
    }
}
