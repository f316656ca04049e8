package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.web.Browsers.Screen;

/** What a shop shares between its jobs, on pages: sheets, kits, parts, the past; and what a new plan changes. */
class SharedBrowserTest extends InBrowser {

    private static final double PROOF_MILLIS = 300_000;

    @TempDir
    private Path folder;

    static List<Screen> screens() {
        return Screen.of("shared");
    }

    @ParameterizedTest
    @MethodSource("screens")
    void aJobTakesASheetWorksAndGivesItBack(Screen screen) {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(screen)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = book.cards()
                    .addCustomerWithJob(
                            Author.CONSOLE,
                            "job.called",
                            Map.of("name", "Odile Brandt"),
                            Map.of("plate", "QX 481 LM", "make", "Fennick", "model", "Drayling"))
                    .id();
            Page page = ownerSignedIn(somebody, shop);

            shareSheet(page, shop, screen);
            SharedText.kit(book, "Small kit", SharedText.of("order"));
            page.navigate(shop.address() + "/kits");
            Browsers.look(page, screen, "kits");
            page.getByRole(AriaRole.LINK, named("Small kit")).click();
            Browsers.look(page, screen, "kit");

            String path = shop.address() + "/jobs/" + job;
            take(page, path, "sheet", screen);
            take(page, path, "kit", screen);
            page.navigate(path + "/texts/order");
            page.locator("#text").fill(SharedText.of("order"));
            save(page);
            plan(page, path);

            page.navigate(shop.address() + "/prices");
            page.getByLabel("On the shelf", new Page.GetByLabelOptions().setExact(true))
                    .fill("article,size,count\nrelay-socket,,1\ntie,,0\ntape,,3\n");
            button(page, "Check and save").click();
            assertThat(page.locator("table.rows")).containsText("relay socket");
            assertThat(page.locator("tr.differs").first()).isVisible();
            Browsers.look(page, screen, "parts");

            nightly(page, shop, screen);
            change(page, path, screen);
            past(page, path, screen);
        }
    }

    private static void shareSheet(Page page, TestShop shop, Screen screen) {
        page.navigate(shop.address() + "/sheets/new");
        page.getByLabel("Name in the list").fill("Fennick Drayling");
        page.locator("#t-sheet").fill(SharedText.of("sheet").replaceFirst("format:", "formatt:"));
        button(page, "Check and save").click();
        assertThat(page.locator(".problem li").first()).containsText("sheet.yaml");
        Browsers.look(page, screen, "sheet-problems");
        page.locator("#t-sheet").fill(SharedText.of("sheet"));
        button(page, "Check and save").click();
        assertThat(page.locator("h1")).hasText("Fennick Drayling");
        Browsers.look(page, screen, "sheet");
        page.navigate(shop.address() + "/sheets");
        Browsers.look(page, screen, "sheets");
    }

    private static void take(Page page, String path, String text, Screen screen) {
        page.navigate(path + "/texts/" + text);
        button(page, "Take the copy").click();
        assertThat(page.locator(".way")).isVisible();
        page.navigate(path + "/texts/" + text);
        assertThat(page.locator("#text")).hasValue(SharedText.of(text));
        Browsers.look(page, screen, "text-with-shared-" + text);
    }

    private static void save(Page page) {
        button(page, "Check and save").click();
        assertThat(page.locator(".way")).isVisible();
    }

    private static void plan(Page page, String path) {
        page.navigate(path + "/plan");
        page.locator("form[action$='/plan'] button").click();
        assertThat(page.locator(".verdict"))
                .hasText("Proven", new LocatorAssertions.HasTextOptions().setTimeout(PROOF_MILLIS));
    }

    private static void nightly(Page page, TestShop shop, Screen screen) {
        page.navigate(shop.address() + "/fits");
        Browsers.look(page, screen, "fits-due");
        button(page, "Prove now what is due (1)").click();
        assertThat(page.locator("p.caution")
                        .or(page.locator(".fits .is-proven"))
                        .first())
                .isVisible();
        shop.awaitNightlyProof();
        page.navigate(shop.address() + "/fits");
        assertThat(page.locator(".fits .is-proven")).hasCount(1);
        Browsers.look(page, screen, "fits");
        page.getByRole(AriaRole.LINK, named("Claim by claim")).click();
        assertThat(page.locator(".verdict")).hasText("Proven");
        Browsers.look(page, screen, "fit");
    }

    /** The customer no longer wants the horn, after the plan was made. */
    private static void change(Page page, String path, Screen screen) {
        page.navigate(path + "/texts/order");
        page.locator("#text").fill(SharedText.of("order").replace("horn, ", ""));
        save(page);
        plan(page, path);
        page.getByRole(AriaRole.LINK, named("What changes")).click();
        assertThat(page.locator("main")).containsText("->");
        assertThat(page.locator("main")).containsText("Work:");
        Browsers.look(page, screen, "changes");
    }

    private static void past(Page page, String path, Screen screen) {
        page.navigate(path + "/past");
        assertThat(page.locator(".past > li").last()).containsText("QX 481 LM");
        page.locator(".past summary").first().click();
        assertThat(page.locator(".lines .gone").first()).containsText("horn");
        Browsers.look(page, screen, "past");
        page.navigate(path + "/past/2");
        assertThat(page.locator(".stood")).containsText("Fennick");
        Browsers.look(page, screen, "past-state");
    }
}
