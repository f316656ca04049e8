package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Passphrase;
import org.loomproof.pages.bay.MeterAt;
import org.loomproof.pages.bay.SoundMeter;
import org.loomproof.pages.desk.Planning;
import org.loomproof.pages.desk.Timings;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.words.Messages;

/**
 * One job from the bench to the hand-over, as a technician goes through it: every lead ticked, every wire read until the page says what
 * it is, the starter's wire cut and both ends proven, every test closed, the customer's signature. In the middle of the bay the network
 * goes, and the server with it.
 */
class WholeJobBrowserTest extends InBrowser {

    private static final LocatorAssertions.HasTextOptions IN_A_WHILE =
            new LocatorAssertions.HasTextOptions().setTimeout(90_000);

    /** After so many joined steps the network goes. */
    private static final int JOINED_BEFORE_IT_GOES = 5;

    private static final int MOST_READINGS = 8;

    /** The wire, its end, what the car does, what stands otherwise, the unit: what is ticked for the next reading. */
    private static final String ASKED = "f => { const about = JSON.parse(f.querySelector('[name=entry]').value);"
            + " const at = JSON.parse(f.querySelector('[name=with]:checked').value);"
            + " return [about.circuit, about.end, at.step, at.position ?? '', at.unit]; }";

    @TempDir
    private Path folder;

    /** What was done by hand, to be found in the book: nothing lost, nothing doubled. */
    private final List<String> read = new ArrayList<>();

    private final List<String> joined = new ArrayList<>();

    static List<Screen> screens() {
        return Sample.of(List.of(Screen.PHONE, Screen.LAPTOP), 1);
    }

    @ParameterizedTest
    @MethodSource("screens")
    void fromTheBenchToTheCustomersSignature(Screen screen) {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(screen)) {
            CardId id = ProvenJob.in(shop.shop.book().orElseThrow());
            PlanFile file = new Planning(shop.shop.book().orElseThrow(), Messages.english())
                    .planFile(card(shop, id))
                    .orElseThrow();
            SoundMeter meter = new SoundMeter(file.given().brief(), file.plan());
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + id);
            int leads = file.given().brief().kit().leads().size();
            bench(page, leads);
            Browsers.picture(page, screen, "whole-bench");
            page.navigate(shop.address() + "/jobs/" + id);
            button(page, "The loom is prepared").click();

            page.navigate(shop.address() + "/jobs/" + id + "/bay");
            assertThat(page.locator("#unsent[data-ready]")).isAttached(attachedInAWhile());
            page.locator(".steps a").first().click();
            for (int row = 0; row < SoundMeter.BATTERY.size(); row++) {
                note(page, page.locator("form.reading"), meter);
            }
            List<String> steps = steps(page, shop, id);
            for (String step : steps) {
                page.navigate(step);
                if (steps.indexOf(step) == JOINED_BEFORE_IT_GOES) {
                    withoutNetwork(page, somebody, shop, steps, meter);
                    page.navigate(step);
                }
                join(page, meter);
            }
            page.navigate(shop.address() + "/jobs/" + id + "/bay");
            assertThat(page.locator(".steps .ticked")).hasCount(steps.size());
            Browsers.picture(page, screen, "whole-bay");
            benchTook(page, shop, id, "35");
            inTheBook(shop, id, leads, steps.size());

            page.navigate(shop.address() + "/jobs/" + id);
            button(page, "The work in the car is done").click();
            page.locator("a.next").click();
            tests(page);
            Browsers.picture(page, screen, "whole-tests");
            button(page, "The tests are passed").click();
            page.locator("a.next").click();
            page.getByLabel("Name of who signs").fill(ProvenJob.CUSTOMER);
            button(page, "Handed over to the customer").click();
            assertThat(page.locator("p.done")).isVisible();
            Browsers.picture(page, screen, "whole-done");
            assertThat(card(shop, id).get("handed-over")).isNotEmpty();
            assertThat(new Timings(shop.shop.book().orElseThrow())
                            .text()
                            .orElseThrow()
                            .text())
                    .as("what the next quotes are counted from")
                    .contains(String.format(Locale.ROOT, "bench-lead,%.2f", 35.0 / leads));
        }
    }

    private static void benchTook(Page page, TestShop shop, CardId id, String minutes) {
        page.navigate(shop.address() + "/jobs/" + id + "/spent");
        page.getByLabel("On what").selectOption(new SelectOption().setLabel("Bench: every lead of the loom"));
        page.getByLabel("Minutes", new Page.GetByLabelOptions().setExact(true)).fill(minutes);
        button(page, "Note the minutes").click();
        assertThat(page.locator(".sum")).hasText("0 h " + minutes + " min in all");
        assertThat(new Timings(shop.shop.book().orElseThrow()).text())
                .as("counted when the car is handed over")
                .isEmpty();
    }

    private static Card card(TestShop shop, CardId id) {
        return shop.shop.book().orElseThrow().cards().find(id).orElseThrow();
    }

    /** Every lead is ticked. */
    private static void bench(Page page, int leads) {
        page.locator(".way a", new Page.LocatorOptions().setHasText("Bench")).click();
        assertThat(page.locator(".tickbox")).hasCount(leads);
        for (int lead = 0; lead < leads; lead++) {
            page.locator(".tickbox").nth(lead).click();
            assertThat(page.locator(".tickbox[aria-pressed=true]")).hasCount(lead + 1);
            sent(page);
        }
    }

    private static List<String> steps(Page page, TestShop shop, CardId id) {
        page.navigate(shop.address() + "/jobs/" + id + "/bay");
        List<String> steps = new ArrayList<>();
        for (Locator link : page.locator(".steps a").all()) {
            String address = shop.address() + link.getAttribute("href");
            if (!address.endsWith("@battery")) {
                steps.add(address);
            }
        }
        return steps;
    }

    /** One reading each is noted at the next two circuits; the server is gone meanwhile and comes back locked. */
    private void withoutNetwork(
            Page page, BrowserContext somebody, TestShop shop, List<String> steps, SoundMeter meter) {
        somebody.setOffline(true);
        int kept = 0;
        for (String step : steps.subList(JOINED_BEFORE_IT_GOES, steps.size())) {
            page.navigate(step);
            if (kept < 2 && page.locator("form.reading").count() == 1) {
                fill(page.locator("form.reading"), meter);
                assertThat(page.locator("#unsent")).containsText("Not yet sent: " + ++kept);
            }
        }
        assertThat(kept).isEqualTo(2);
        shop.restart();
        somebody.setOffline(false);
        assertThat(page.locator("#unsent a")).hasText("Sign in again to send it", IN_A_WHILE);
        assertThat(shop.shop.unlock(Passphrase.of(TestShop.PASSPHRASE))).isEmpty();
        page.navigate(shop.address());
        signIn(page, "bo", "a kettle for Bo!");
        page.navigate(steps.get(JOINED_BEFORE_IT_GOES));
        sent(page);
    }

    /** Reads until the page lets it be joined, cutting where it must be cut; then says that it is joined. */
    private void join(Page page, SoundMeter meter) {
        Locator joining = page.locator(".joining button.act");
        for (int readings = 0; joining.count() == 0; readings++) {
            assertThat(readings).as("readings at %s", page.url()).isLessThan(MOST_READINGS);
            Locator cutter = page.locator("button.cutter");
            if (cutter.count() == 1) {
                cutter.click();
                assertThat(page.locator(".cut-part .done")).isVisible();
            } else {
                note(page, unproven(page), meter);
            }
        }
        String step = page.url();
        joining.click();
        page.waitForURL(url -> !url.equals(step));
        joined.add(step);
    }

    /** The end of a cut at which nothing was read yet, or the one place where there is something to read. */
    private static Locator unproven(Page page) {
        Locator unread = page.locator("form.reading:not(:has(em)):visible");
        return unread.count() > 0
                ? unread.first()
                : page.locator("form.reading:visible").first();
    }

    /** Notes what the page asks for next and waits for the answer. */
    private void note(Page page, Locator form, SoundMeter meter) {
        int before = page.locator(".taken li").count();
        fill(form, meter);
        assertThat(page.locator(".taken li")).hasCount(before + 1, countedInAWhile());
        sent(page);
    }

    private void fill(Locator form, SoundMeter meter) {
        List<String> at =
                ((List<?>) form.evaluate(ASKED)).stream().map(String::valueOf).toList();
        String volts = meter.shows(at.get(0), at.get(1), new MeterAt(at.get(2), at.get(3), at.get(4)));
        read.add(at.get(0) + " " + at.get(2) + " " + volts);
        form.locator(".digits").fill(volts);
        form.locator("button.act").click();
    }

    /** Every step as expected; the sleep current as at check-in. */
    private static void tests(Page page) {
        String all = page.locator(".far").innerText().replaceAll("^0 of (\\d+) .*", "$1");
        for (int closed = 1; closed <= Integer.parseInt(all); closed++) {
            if (page.locator("#step .phase").innerText().equals("Sleep current")) {
                page.locator("#seen").fill("22.5 mA");
                button(page, "Compare").click();
            } else {
                page.locator("#step button.next").click();
            }
            assertThat(page.locator(".far")).containsText(closed + " of " + all);
        }
    }

    private static void sent(Page page) {
        assertThat(page.locator("#unsent")).hasText("All sent.", IN_A_WHILE);
    }

    private static LocatorAssertions.HasCountOptions countedInAWhile() {
        return new LocatorAssertions.HasCountOptions().setTimeout(90_000);
    }

    private static LocatorAssertions.IsAttachedOptions attachedInAWhile() {
        return new LocatorAssertions.IsAttachedOptions().setTimeout(90_000);
    }

    private void inTheBook(TestShop shop, CardId id, int leads, int steps) {
        List<Work> log = new WorkLog(shop.shop.book().orElseThrow(), id)
                .all().stream().map(Noted::work).toList();
        assertThat(log.stream()
                        .filter(Work.ReadingTaken.class::isInstance)
                        .map(Work.ReadingTaken.class::cast)
                        .map(taken -> taken.circuit() + " " + taken.step() + " " + taken.value()))
                .containsExactlyElementsOf(read);
        List<Work.Tick> ticks = log.stream()
                .filter(Work.Tick.class::isInstance)
                .map(Work.Tick.class::cast)
                .toList();
        assertThat(ticks).hasSize(leads + steps);
        assertThat(new HashSet<>(ticks.stream().map(Work.Tick::step).toList())).hasSameSizeAs(ticks);
        assertThat(joined).hasSize(steps);
        assertThat(log.stream().filter(Work.CutMade.class::isInstance)).hasSize(1);
    }
}
