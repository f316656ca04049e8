package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.words.Messages;

/** What is done otherwise in the car changes the plan, and nothing passes before that plan is proven. */
class ByHandBrowserTest extends InBrowser {

    private static final double PROOF_MILLIS = 300_000;

    @TempDir
    private Path folder;

    @Test
    void aDeviationIsWrittenIntoThePlanAndProvenBeforeTheTestsPass() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId id = ProvenJob.small(book, Map.of("bench-done", "2026-11-26", "bay-done", "2026-11-26"));
            String job = shop.address() + "/jobs/" + id;
            Page page = signedIn(somebody, shop);
            deviate(page, job);
            page.navigate(job + "/test");
            assertThat(page.locator(".caution").first()).containsText("not proven");

            page.navigate(job + "/plan");
            page.locator("a", new Page.LocatorOptions().setHasText("Change the plan by hand"))
                    .click();
            assertThat(page.locator(".caution")).containsText("a longer run round the pedals");
            lookAtIt(shop, id);
            button(page, "Check, save and prove again").first().click();
            assertThat(page.locator(".problem")).containsText("Nothing was changed");
            type(page, "W12 length", "rather long");
            assertThat(page.locator(".problem")).containsText("rather long");
            assertThat(page.locator("[name='W12 length']")).hasValue("rather long");
            Browsers.look(page, Screen.PHONE, "by-hand-problem");
            assertThat(card(book, id).get("deviated")).isEqualTo("yes");

            type(page, "W12 length", "0.9 m");
            proven(page, "Proven");
            assertThat(page.locator(".caution").first()).containsText("changed by hand");
            Browsers.look(page, Screen.PHONE, "plan-by-hand");
            assertThat(wire(book, id, "W12").length().value()).isEqualTo(0.9);
            triedThroughout(page, job);
            page.navigate(job + "/test");
            assertThat(page.locator(".caution").allInnerTexts())
                    .as("why nothing can pass")
                    .noneMatch(text -> text.contains("proven") || text.contains("proof") || text.contains("tried"));
            assertThat(page.locator("#step button.next")).isVisible();

            page.navigate(job + "/plan/by-hand");
            type(page, "K1 break-rating", "0.1 A");
            proven(page, "Broken: do not build this");
            page.navigate(job + "/test");
            assertThat(page.locator(".caution").first()).containsText("not proven");

            page.navigate(job + "/plan/by-hand");
            button(page, "Set this plan aside").click();
            proven(page, "Proven");
            assertThat(wire(book, id, "W12").length().value()).isEqualTo(0.3);
        }
    }

    @Test
    void whoSaysThatThePlanStandsSaysWhy() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId id = ProvenJob.small(book, Map.of());
            String job = shop.address() + "/jobs/" + id;
            Page page = signedIn(somebody, shop);
            deviate(page, job);
            page.navigate(job + "/plan/by-hand");
            page.getByText("The plan stands as it is").click();
            button(page, "It stands; prove it again").click();
            assertThat(page.locator(".problem")).containsText("Say why");
            page.getByText("The plan stands as it is").click();
            page.getByLabel("Why it needs no change").fill("the same wire, another tie");
            button(page, "It stands; prove it again").click();
            proven(page, "Proven");
            assertThat(card(book, id).get("by-hand-stands")).isEqualTo("Bo Larch: the same wire, another tie");
            assertThat(card(book, id).get("deviated")).isEmpty();
        }
    }

    private static void deviate(Page page, String job) {
        page.navigate(job + "/bay/starter");
        page.locator(".deviation summary").click();
        page.locator("#dev-done").fill("a longer run round the pedals");
        page.locator(".deviation button").click();
        page.waitForURL(job + "/plan");
    }

    private static void type(Page page, String field, String value) {
        page.locator("[name='" + field + "']").fill(value);
        page.locator("form.figures button").click();
    }

    private static void proven(Page page, String verdict) {
        assertThat(page.locator(".verdict"))
                .hasText(verdict, new LocatorAssertions.HasTextOptions().setTimeout(PROOF_MILLIS));
    }

    /** Until the faults of the plan were tried as well, which the tests need. */
    private static void triedThroughout(Page page, String job) {
        page.waitForCondition(
                () -> {
                    // The page asks for itself how far it is, which costs less than loading it over and over.
                    assertThat(page.locator("[data-progress]"))
                            .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(PROOF_MILLIS));
                    page.navigate(job + "/plan");
                    return page.locator("[data-progress]").count() == 0;
                },
                new Page.WaitForConditionOptions().setTimeout(PROOF_MILLIS));
    }

    private static void lookAtIt(TestShop shop, CardId id) {
        for (Screen screen : Screen.of("by-hand")) {
            try (BrowserContext somebody = browsers().somebody(screen)) {
                Page page = signedIn(somebody, shop);
                page.navigate(shop.address() + "/jobs/" + id + "/plan");
                Browsers.look(page, screen, "plan-deviated");
                page.navigate(shop.address() + "/jobs/" + id + "/plan/by-hand");
                page.locator("details").all().forEach(details -> details.evaluate("d => d.open = true"));
                Browsers.look(page, screen, "by-hand");
            }
        }
    }

    private static Card card(OpenBook book, CardId id) {
        return book.cards().find(id).orElseThrow();
    }

    private static AddedWire wire(OpenBook book, CardId id, String name) {
        return new Planning(book, Messages.english())
                .planFile(card(book, id)).orElseThrow().plan().wires().stream()
                        .filter(wire -> wire.id().value().equals(name))
                        .findFirst()
                        .orElseThrow();
    }
}
