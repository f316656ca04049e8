package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PageAssertions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.words.Messages;

/** Papers made inside the job book: printed from the page of the plan, their codes open the steps of this very job. */
class BookPapersBrowserTest extends InBrowser {

    private static final double POINTS_A_MILLIMETRE = 72 / 25.4;

    /** A page may take long on a busy machine. */
    private static final PageAssertions.HasURLOptions PATIENT = new PageAssertions.HasURLOptions().setTimeout(30_000);

    @TempDir
    private Path folder;

    @Test
    void everyCodeOnThePrintedBaySheetOpensItsStep() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE);
                BrowserContext stranger = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            String at = shop.address() + "/jobs/" + job;
            Page page = signedIn(somebody, shop);

            byte[] pdf = get(page, at + "/papers/bay-sheet.pdf?sheet=letter").body();
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat((double) document.getPage(0).getMediaBox().getHeight())
                        .isCloseTo(279 * POINTS_A_MILLIMETRE, within(1.0));
            }
            SortedSet<String> codes = PrintedCodes.in(pdf);
            assertThat(codes).isEqualTo(steps(at, book, book.cards().find(job).orElseThrow()));
            for (String code : codes) {
                assertThat(page.navigate(code).status()).as(code).isEqualTo(200);
                assertThat(page.url()).isEqualTo(code);
                assertThat(page.locator("h1")).isVisible();
            }

            page.navigate(at + "/papers/bay-sheet.html");
            Locator link = page.locator(".step-link a").first();
            String step = link.getAttribute("href");
            assertThat(codes).contains(step);
            link.click();
            assertThat(page).hasURL(step, PATIENT);
            assertThat(page.locator("h1")).isVisible();

            Page other = stranger.newPage();
            other.navigate(codes.first());
            assertThat(other.locator("h1")).hasText("Sign in");
            other.getByLabel("Name to sign in").fill("bo");
            other.getByLabel("Password").fill("no kettle at all");
            button(other, "Sign in").click();
            other.getByLabel("Password").fill("a kettle for Bo!");
            button(other, "Sign in").click();
            assertThat(other).hasURL(codes.first(), PATIENT);
        }
    }

    @Test
    void everyPageIsPrintedAndNothingElse() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE_DARK)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + job + "/plan");
            Browsers.look(page, Screen.PHONE_DARK, "plan-papers");
            List<?> links = (List<?>)
                    page.evaluate("[...document.querySelectorAll('.papers a[href*=\".pdf\"]')].map(a => a.href)");
            assertThat(links)
                    .hasSize(2 * page.locator(".papers a[href$=\".html\"]").count());
            for (Object link : links) {
                APIResponse answer = get(page, String.valueOf(link));
                assertThat(answer.headers())
                        .containsEntry("content-type", "application/pdf")
                        .containsEntry("cache-control", "no-store");
                try (PDDocument document = Loader.loadPDF(answer.body())) {
                    assertThat(document.getNumberOfPages()).isPositive();
                }
            }
            for (String none : List.of("result.pdf", "faults.pdf", "plan.pdf", "..%2Fplan.pdf", "bay-sheet.PDF")) {
                assertThat(page.request()
                                .get(shop.address() + "/jobs/" + job + "/papers/" + none)
                                .status())
                        .as(none)
                        .isBetween(400, 404);
            }
        }
    }

    /** The steps at circuits, by the plan that the book keeps. */
    private static SortedSet<String> steps(String at, OpenBook book, Card job) {
        PlanFile file = new Planning(book, Messages.english()).planFile(job).orElseThrow();
        SortedSet<String> steps = new TreeSet<>();
        BayOrder.of(file.given().brief(), file.plan())
                .stations()
                .forEach(station -> station.visits()
                        .forEach(visit -> visit.findCircuit()
                                .ifPresent(circuit -> steps.add(at + "/" + ShopAddress.stepId(circuit)))));
        return steps;
    }

    private static APIResponse get(Page page, String address) {
        APIResponse answer = page.request().get(address);
        assertThat(answer.status()).as(address).isEqualTo(200);
        return answer;
    }
}
