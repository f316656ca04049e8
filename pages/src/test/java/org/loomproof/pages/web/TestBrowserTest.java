package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;

/** The tests of a finished car and its hand-over, in a real browser. */
class TestBrowserTest extends InBrowser {

    private static final Map<String, String> FITTED = Map.of("bench-done", "2026-11-26", "bay-done", "2026-11-26");

    @TempDir
    private Path folder;

    @Test
    void everyStepIsClosedBeforeTheCustomerSigns() {
        CardId job;
        String far;
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            job = ProvenJob.in(shop.shop.book().orElseThrow(), FITTED);
            lookEverywhere(shop, "/jobs/" + job + "/test", "test-first");
            Page page = at(shop, somebody, job);
            String first = page.locator("#step h2").innerText();
            button(page, "Not as expected").click();
            assertThat(page.locator(".problem")).containsText("what was seen");
            page.getByLabel("What was seen").fill("nothing moved");
            button(page, "Not as expected").click();
            assertThat(page.locator("#step h2")).not().hasText(first);
            for (int k = 0; k < 3; k++) {
                closeOne(page);
            }
            far = page.locator(".far").innerText();
            assertThat(far).startsWith("3 of");
        }
        try (TestShop shop = new TestShop(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            shop.shop.unlock(Passphrase.of(TestShop.PASSPHRASE));
            Page page = at(shop, somebody, job);
            assertThat(page.locator(".far")).hasText(far); // the server was gone, and nothing is lost
            assertThat(page.locator(".wrong.is-failed")).containsText("nothing moved");
            lookEverywhere(shop, "/jobs/" + job + "/test", "test-one-open");
            leaveOneOut(page);
            assertThat(page.locator(".wrong.is-waived")).containsText("no trailer here");
            while (!page.locator("#step .phase").innerText().equals("Sleep current")) {
                closeOne(page);
            }
            lookEverywhere(shop, "/jobs/" + job + "/test", "test-sleep");
            page.locator("#seen").fill("5000");
            button(page, "Compare").click();
            assertThat(page.locator(".problem")).containsText("draws more than it may");
            page.locator("#seen").fill("22,5 mA");
            button(page, "Compare").click();
            assertThat(page.locator("#step .stood")).containsText("nothing moved"); // what did not pass comes again
            closeOne(page);
            lookEverywhere(shop, "/jobs/" + job + "/test", "test-closed");
            button(page, "The tests are passed").click();
            page.locator("a.next").click();
            assertThat(page.locator("main")).containsText("no trailer here");
            button(page, "Handed over to the customer").click();
            assertThat(page.locator(".problem")).containsText("signed");
            lookEverywhere(shop, "/jobs/" + job + "/test", "hand-over");
            page.getByLabel("Name of who signs").fill("Odile Brandt-Øster");
            button(page, "Handed over to the customer").click();
            assertThat(page.locator("p.done")).isVisible();
            Browsers.look(page, Screen.PHONE, "job-done");
            lookEverywhere(shop, "/jobs/" + job + "/test", "handed-over");
        }
    }

    @Test
    void nothingPassesBesideThePageOrAfterADeviation() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book, FITTED);
            shop.clock.pass(Duration.ofMinutes(5));
            new WorkLog(book, job)
                    .add(
                            Author.CONSOLE,
                            List.of(Entry.of(
                                    shop.clock.instant(),
                                    new Work.Deviation("bay/starter", "relay K1", "another relay", "none in stock"))));
            Page page = at(shop, somebody, job);
            assertThat(page.locator(".caution").first()).containsText("after the proof");
            String mark = page.locator("#step input[name=mark]").first().getAttribute("value");
            for (String way : List.of("/said/test", "/said/hand-over", "/test/passed", "/hand-over")) {
                Object status = page.evaluate(
                        "([path, mark]) => fetch(path, {method: 'POST', body: new URLSearchParams({mark, seen: 1})})"
                                + ".then(r => r.status)",
                        List.of("/jobs/" + job + way, mark));
                assertThat(status).as(way).isEqualTo(409);
            }
            assertThat(book.cards().find(job).orElseThrow().get("test-done")).isEmpty();
            Browsers.lookInBay(page, Screen.LAPTOP, "test-deviation");
        }
    }

    private static void leaveOneOut(Page page) {
        page.locator("#step summary").click();
        button(page, "Leave this step open").click();
        assertThat(page.locator(".problem")).containsText("a name and a reason");
        page.locator("#step summary").click();
        page.getByLabel("Who answers for it").fill("Ada Quill");
        page.getByLabel("Why", new Page.GetByLabelOptions().setExact(true)).fill("no trailer here");
        button(page, "Leave this step open").click();
    }

    private static void closeOne(Page page) {
        page.locator("#step button.next").click();
    }

    private static Page at(TestShop shop, BrowserContext somebody, CardId job) {
        Page page = signedIn(somebody, shop);
        page.navigate(shop.address() + "/jobs/" + job + "/test");
        return page;
    }
}
