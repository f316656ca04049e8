package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.workshop.words.Messages;

/** One switch for units: it holds on every page of the device, and in the papers of plans that are made from it. */
class UnitsBrowserTest extends InBrowser {

    private static final double PROOF_MILLIS = 300_000;

    @TempDir
    private Path folder;

    @Test
    void squareMillimetresAndFahrenheitHoldOnEveryPageAndInThePapers() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE);
                BrowserContext other = browsers().somebody(Screen.LAPTOP)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = job(book);
            String path = shop.address() + "/jobs/" + job;
            Page page = ownerSignedIn(somebody, shop);
            page.navigate(path + "/plan");
            choose(page, "with mm²", "°F");
            assertThat(page).hasURL(path + "/plan");
            page.locator("form[action$='/plan'] button").click();
            assertThat(page.locator(".verdict"))
                    .hasText("Proven", new LocatorAssertions.HasTextOptions().setTimeout(PROOF_MILLIS));

            page.navigate(path + "/bench");
            assertThat(page.locator("main")).containsText(" mm²)");
            page.navigate(shop.address() + "/prices");
            assertThat(page.locator("tbody th").getByText(" mm²)").first()).isVisible();
            page.navigate(path + "/texts/order");
            page.locator("#text")
                    .fill(SharedText.of("order").replace("  hottest: 50 C", "  hottest: 50 C\n  insulation: 40 C"));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Check and save"))
                    .click();
            assertThat(page.locator(".problem")).containsText("140 °F");
            Browsers.look(page, Screen.PHONE, "units-problem");

            Card made = book.cards().find(job).orElseThrow();
            Planning planning = new Planning(book, Messages.english());
            assertThat(paper(planning, made, "bench-card.html"))
                    .contains("\u00A0mm²)")
                    .contains("lang=\"en\"");
            assertThat(paper(planning, made, "proof.html")).contains("68 °F").doesNotContain("20 °C");
            assertThat(made.get("needs"))
                    .as("what is bought is the same")
                    .contains("wire,18 AWG,")
                    .doesNotContain("(");

            Page theirs = signedIn(other, shop);
            theirs.navigate(path + "/bench");
            assertThat(theirs.locator("main")).containsText("AWG");
            assertThat(theirs.locator("main")).not().containsText(" mm²)");
            everywhere(shop, path);
        }
    }

    /** The switch itself on every screen, and in Spanish. */
    private static void everywhere(TestShop shop, String path) {
        for (Screen screen : Screen.of("units")) {
            try (BrowserContext somebody = browsers().somebody(screen);
                    BrowserContext spanish = somebody.browser()
                            .newContext(new Browser.NewContextOptions()
                                    .setViewportSize(screen.width(), screen.height())
                                    .setColorScheme(screen.theme())
                                    .setLocale("es-ES"))) {
                Page page = spanish.newPage();
                page.navigate(shop.address());
                page.locator("input[name=sign-in]").fill("bo");
                page.locator("input[name=password]").fill("a kettle for Bo!");
                page.locator("main button").click();
                assertThat(page.locator("footer.units")).isVisible();
                page.getByLabel("Secciones de cable").selectOption("mm2");
                page.getByText("Mostrar así").click();
                page.navigate(path + "/bench");
                assertThat(page.locator("html")).hasAttribute("lang", "es");
                assertThat(page.locator("main")).containsText(" mm²)");
                Browsers.look(page, screen, "units-bench-es");
                page.navigate(shop.address() + "/prices");
                Browsers.look(page, screen, "units-parts-es");
            }
        }
    }

    /** What a device says that is no choice of ours, and a way back that leads elsewhere, come to nothing. */
    @Test
    void whatNoFormOfOursSendsIsPassedOver() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            Page page = signedIn(somebody, shop);
            String mark = page.locator("footer input[name=mark]").getAttribute("value");
            for (String back : List.of("//elsewhere.example/", "https://elsewhere.example/", "/\\elsewhere.example")) {
                Object at = page.evaluate(
                        "([mark, back]) => fetch('/units', {method: 'POST', body: new URLSearchParams({mark, back,"
                                + " sizes: '<b>', temperature: 'kelvin'})}).then(r => r.url)",
                        List.of(mark, back));
                assertThat((String) at).isEqualTo(shop.address() + "/");
            }
            page.reload();
            assertThat(page.getByLabel("Wire sizes")).hasValue("bought");
            assertThat(page.getByLabel("Temperatures")).hasValue("celsius");
        }
    }

    private static void choose(Page page, String sizes, String temperature) {
        page.getByLabel("Wire sizes").selectOption(new SelectOption().setLabel(sizes));
        page.getByLabel("Temperatures").selectOption(new SelectOption().setLabel(temperature));
        page.getByText("Show so").click();
    }

    private static CardId job(OpenBook book) {
        book.cards()
                .add(
                        CardKind.PRICES,
                        Author.CONSOLE,
                        "prices.changed",
                        Map.of("title", "prices", "stock", "article,size,count\nwire,18 AWG,20\n"));
        return book.cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Odile Brandt"),
                        Map.of(
                                "plate",
                                "QX 481 LM",
                                "make",
                                "Fennick",
                                "checked-in",
                                "2026-11-26",
                                "sheet",
                                SharedText.of("sheet"),
                                "kit",
                                SharedText.of("kit"),
                                "order",
                                SharedText.of("order")))
                .id();
    }

    private static String paper(Planning planning, Card job, String name) {
        return new String(planning.paper(job, name).orElseThrow(), StandardCharsets.UTF_8);
    }
}
