package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.Attachments;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Messages;

/** Faults and slips of a plan, in a real browser. */
class FaultsBrowserTest extends InBrowser {

    @TempDir
    private Path folder;

    @Test
    void theWorstStandsFirstAndAPartCanBeAskedAbout() {
        try (TestShop shop = TestShop.open(folder)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.in(book);
            KeptFaults kept = new Planning(book, Messages.english())
                    .faults(book.cards().find(job).orElseThrow())
                    .orElseThrow();
            for (Screen screen : Screen.of("faults")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = signedIn(somebody, shop);
                    page.navigate(shop.address() + "/jobs/" + job + "/faults");
                    assertThat(page.locator(".severity").first())
                            .hasAttribute("id", Severity.FIRE_OR_LOSS_OF_CONTROL.word());
                    Browsers.lookInBay(page, screen, "faults");
                    page.locator("summary").all().forEach(summary -> {
                        if (summary.evaluate("s => s.parentElement.open").equals(false)) {
                            summary.press("Enter");
                        }
                    });
                    Browsers.lookInBay(page, screen, "faults-unfolded");
                    assertThat(page.locator(".whats li")).hasCount(kept.wrongs().size());
                    String part = kept.wrongs().getFirst().about().getFirst();
                    page.getByLabel("Only what is about").selectOption(part);
                    page.getByRole(
                                    AriaRole.BUTTON,
                                    new Page.GetByRoleOptions().setName("Show").setExact(true))
                            .click();
                    assertThat(page.locator(".whats li")).hasCount((int) kept.wrongs().stream()
                            .filter(wrong -> wrong.about().contains(part))
                            .count());
                    Browsers.lookInBay(page, screen, "faults-of-a-part");
                }
            }
        }
    }

    @Test
    void whatARunLeftOutIsTriedFromThePage() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId tried = ProvenJob.small(book, Map.of());
            Card job = withoutFaults(book, tried);
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + job.id() + "/faults");
            Browsers.lookInBay(page, Screen.PHONE, "faults-untried");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Try every fault and slip"))
                    .click();
            assertThat(page.locator("[data-progress]")).isVisible();
            Browsers.picture(page, Screen.PHONE, "faults-running");
            assertThat(page.locator(".severity").first())
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(180_000));
            Planning planning = new Planning(book, Messages.english());
            assertThat(planning.faults(job))
                    .as("the same as the run found")
                    .isEqualTo(planning.faults(book.cards().find(tried).orElseThrow()));
        }
    }

    /** Another job with the verdicts and the plan of that one, as a run leaves it that was stopped while it tried faults. */
    private static Card withoutFaults(OpenBook book, CardId tried) {
        Card done = book.cards().find(tried).orElseThrow();
        CardId job = book.cards()
                .addCustomerWithJob(
                        Author.CONSOLE,
                        "job.called",
                        Map.of("name", "Somebody"),
                        done.entries().values())
                .id();
        List<Attachments.Label> all = book.attachments().of(tried);
        all.stream()
                .filter(label -> !label.label().endsWith("faults.json"))
                .forEach(label -> book.attachments()
                        .add(
                                job,
                                Author.CONSOLE,
                                label.label(),
                                book.attachments().open(tried, label.id()).orElseThrow()));
        return book.cards().find(job).orElseThrow();
    }
}
