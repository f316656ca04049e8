package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.finished.Suspects;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.meter.comeback.Look;
import org.loomproof.workshop.meter.comeback.Symptom;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.words.Messages;

/** A car that came back, in a real browser; its meter reads what the engine finds in a car with one planted fault. */
class ComebackBrowserTest extends InBrowser {

    private static final int MOST_READINGS = 12;

    @TempDir
    private Path folder;

    @Test
    void aPlantedFaultIsFoundReadingByReading() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId id = ProvenJob.in(
                    book,
                    Map.of(
                            "bench-done", "2026-11-26",
                            "bay-done", "2026-11-26",
                            "test-done", "2026-11-26",
                            "handed-over", "2026-11-26"));
            Card job = book.cards().find(id).orElseThrow();
            Planning planning = new Planning(book, Messages.english());
            PlanFile file = planning.planFile(job).orElseThrow();
            KeptFaults kept = planning.faults(job).orElseThrow();
            KeptFaults.Wrong wrong = kept.wrongs().stream()
                    .filter(one ->
                            one.id().startsWith("wire-open") && one.complaints().contains(Symptom.SIREN_SILENT))
                    .findFirst()
                    .orElseThrow();
            Suspects suspects = Suspects.of(file.given().brief(), file.plan(), kept);
            Vehicle car = broken(file, wrong.id());

            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + id);
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("The car came back"))
                    .click();
            lookEverywhere(shop, "/jobs/" + id + "/comeback", "comeback-complaint");
            button(page, "Find the cause").click();
            assertThat(page.locator(".problem")).containsText("Tick at least one");
            page.getByLabel("siren or horn silent").check();
            button(page, "Find the cause").click();
            assertThat(page.locator(".complaint")).containsText("siren or horn silent");
            lookEverywhere(shop, "/jobs/" + id + "/comeback", "comeback-asks");
            page.locator("#value").fill("no idea");
            button(page, "Keep the reading").first().click();
            assertThat(page.locator(".problem li")).not().hasCount(0);
            assertThat(book.cards().find(id).orElseThrow().get("stage")).isEqualTo("come-back");

            int readings = 0;
            while (page.locator(".card").count() > 0 && readings < MOST_READINGS) {
                Locator form = page.locator(".card form");
                Work.ComebackReading asked = new Work.ComebackReading(
                        form.locator("[name=place]").getAttribute("value"),
                        form.locator("[name=step]").getAttribute("value"),
                        "?",
                        "12.6");
                page.locator("#value").fill(meter(car, suspects.look(asked).orElseThrow()));
                page.locator("#battery").fill("12.6");
                // The next page, and not what is left of this one.
                page.waitForResponse(
                        answer -> answer.request().method().equals("GET")
                                && answer.url().contains("/comeback"),
                        () -> button(page, "Keep the reading").first().click());
                page.waitForLoadState();
                readings++;
            }
            lookEverywhere(shop, "/jobs/" + id + "/comeback", "comeback-settled");
            assertThat(page.locator(".stand.is-holds")).isVisible();
            assertThat(page.locator(".wrong").first()).containsText(wrong.what());

            page.getByLabel("How it was mended").fill("joint made anew");
            button(page, "Found and mended").click();
            assertThat(page.locator("a.next")).hasText("Test and hand-over");
            page.locator("a.next").click();
            assertThat(page.locator(".far")).containsText("0 of");
        }
    }

    private static Vehicle broken(PlanFile file, String id) {
        Brief brief = file.given().brief().set(file.plan().settings());
        Mishap mishap = Mishap.list(brief, file.plan()).stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        Vehicle fitted = Vehicle.fitted(brief, file.plan(), Corner.TYPICAL);
        return Damage.of(mishap, file.plan(), fitted.wired()).vehicle(brief);
    }

    /** Solved afresh, by the engine alone; what hangs on nothing reads about nothing. */
    private static String meter(Vehicle car, Look look) {
        SolveOutcome outcome = Solver.of(car.wired().network(), SolverOptions.USUAL.withoutOtherStablePoints())
                .solve(car.settings().of(look.when()));
        Node node = look.at().node(car.wired()).orElseThrow();
        if (!(outcome instanceof SolveOutcome.Settled settled)) {
            throw new AssertionError("does not come to rest: " + look);
        }
        return settled.point().isFloating(node)
                ? "~0"
                : String.format(Locale.ROOT, "%.2f", settled.point().volts(node));
    }
}
