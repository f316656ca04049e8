package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.SelectOption;
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
import org.loomproof.pages.desk.Prices;
import org.loomproof.pages.desk.Timings;
import org.loomproof.pages.web.Browsers.Screen;

/** Parts used and minutes spent at a job, and what its readings say of the vehicle sheet that all jobs share. */
class SpentBrowserTest extends InBrowser {

    private static final double A_WHILE = 30_000;

    @TempDir
    private Path folder;

    @Test
    void partsAndMinutesAreNotedTakenBackAndTakenOffTheShelf() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.untried(book);
            book.cards()
                    .add(
                            CardKind.PRICES,
                            Author.CONSOLE,
                            "prices.changed",
                            Map.of("title", "prices", "stock", "article,size,count\ntie,,10\nfuse,7.5 A,3\n"));
            String spent = shop.address() + "/jobs/" + job + "/spent";
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + job);
            assertThat(page.locator(".spent-sum")).containsText("0 h 00 min noted; no part besides");
            page.locator(".spent-sum a").click();
            assertThat(page).hasURL(spent);

            page.getByLabel("Minutes", new Page.GetByLabelOptions().setExact(true))
                    .fill("half an hour");
            button(page, "Note the minutes").click();
            assertThat(page.locator(".problem")).containsText("at most 1440");
            Browsers.look(page, Screen.PHONE, "spent-problem");
            minutes(page, "Bench: every lead of the loom", "35");
            minutes(page, "Panel off and on: under the dash left of the column", "7,5");
            minutes(page, "Panel off and on: under the dash left of the column", "4");
            assertThat(page.locator(".sum")).hasText("0 h 47 min in all");
            button(page, "Take back: Bench: every lead of the loom").click();
            assertThat(page.locator(".sum")).hasText("0 h 12 min in all");

            part(page, "cable tie", "", "4", "");
            part(page, "blade fuse", "7.5 A", "2", "L-77");
            assertThat(stock(book)).contains("tie,,6").contains("fuse,7.5 A,1");
            page.goBack(); // the form again, as it was sent
            assertThat(stock(book)).contains("fuse,7.5 A,1");
            page.navigate(spent);
            button(page, "Take back: cable tie").click();
            assertThat(page.locator(".spent-list li")).hasCount(3);
            assertThat(stock(book)).contains("tie,,10").contains("fuse,7.5 A,1");
            assertThat(new Timings(book).text())
                    .as("counted when the car is handed over")
                    .isEmpty();
            page.navigate(shop.address() + "/jobs/" + job);
            assertThat(page.locator(".spent-sum")).containsText("0 h 12 min noted; one part besides");
            for (Screen screen : Screen.of("spent")) {
                try (BrowserContext other = browsers().somebody(screen)) {
                    Page seen = signedIn(other, shop);
                    seen.navigate(spent);
                    Browsers.look(seen, screen, "spent");
                    seen.navigate(shop.address() + "/jobs/" + job);
                    Browsers.look(seen, screen, "job-with-spent");
                }
            }
        }
    }

    private static void minutes(Page page, String step, String minutes) {
        page.getByLabel("On what").selectOption(new SelectOption().setLabel(step));
        page.getByLabel("Minutes", new Page.GetByLabelOptions().setExact(true)).fill(minutes);
        button(page, "Note the minutes").click();
        assertThat(page.locator(".problem")).hasCount(0);
    }

    private static void part(Page page, String article, String size, String count, String lot) {
        page.getByLabel("Part", new Page.GetByLabelOptions().setExact(true))
                .selectOption(new SelectOption().setLabel(article));
        page.getByLabel("Size, such as 7.5 A").fill(size);
        page.getByLabel("How many, or metres").fill(count);
        page.getByLabel("Lot or serial number").fill(lot);
        button(page, "Note the part").click();
        assertThat(page.locator(".problem")).hasCount(0);
    }

    private static String stock(OpenBook book) {
        return Prices.texts(book).stock().orElseThrow().text();
    }

    /** A car whose readings confirm one entry of the sheet that all share, and contradict another. */
    @Test
    void theVehicleSheetTellsHowOftenAMeterConfirmedEachEntry() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            OpenBook book = shop.shop.book().orElseThrow();
            CardId job = ProvenJob.untried(book);
            Card made = book.cards().find(job).orElseThrow();
            CardId sheet = book.cards()
                    .add(
                            CardKind.SHEET,
                            Author.CONSOLE,
                            "sheet.changed",
                            Map.of("title", "Fennick van", "sheet", made.get("sheet")))
                    .id();
            book.cards()
                    .amend(
                            made,
                            Author.CONSOLE,
                            "job.sheet",
                            now -> Map.of("sheet-from", sheet.value(), "bench-done", "2026-11-26"));
            Page page = signedIn(somebody, shop);
            String path = shop.address() + "/jobs/" + job;
            page.navigate(path + "/bay/@battery");
            read(page, 0, "12.60");
            read(page, 1, "12.40");
            read(page, 2, "10.20");
            page.navigate(path + "/bay/side-lamps");
            read(page, 0, "0.00");
            read(page, 1, "12.60");
            says(page, "This is it");
            page.navigate(path + "/bay/ignition");
            for (String volts : List.of("12.60", "12.61", "12.40", "10.20")) {
                read(page, List.of("12.60", "12.61", "12.40", "10.20").indexOf(volts), volts);
            }
            says(page, "must be shown");
            page.navigate(shop.address() + "/sheets/" + sheet);
            assertThat(row(page, "side-lamps").locator("td").first()).hasText("0");

            page.navigate(path);
            button(page, "The work in the car is done").click();
            assertThat(page.locator(".way")).isVisible();
            page.navigate(shop.address() + "/sheets/" + sheet);
            assertThat(row(page, "side-lamps").locator("td")).hasText(new String[] {"1", "0"});
            assertThat(row(page, "ignition").locator("td")).hasText(new String[] {"0", "1"});
            assertThat(row(page, "horn-wire").locator("td")).hasText(new String[] {"0", "0"});
            assertThat(page.content()).doesNotContain("QX 481").doesNotContain(ProvenJob.CUSTOMER);

            forged(page, job, path);
            for (Screen screen : Screen.of("sheet-met")) {
                try (BrowserContext other = browsers().somebody(screen)) {
                    Page seen = signedIn(other, shop);
                    seen.navigate(shop.address() + "/sheets/" + sheet);
                    Browsers.look(seen, screen, "sheet-met");
                }
            }
        }
    }

    /** What the book itself says of readings, no device can say. */
    private static void forged(Page page, CardId job, String path) {
        page.navigate(path + "/bay/horn-wire");
        Object refused = page.evaluate(
                "async (path) => { const mark = (await (await fetch('/mark')).json()).mark;"
                        + " const line = JSON.stringify({what: 'sheet-checked', circuit: 'horn-wire', entry: '0123456789abcdef',"
                        + " says: 'CONFIRMED', id: crypto.randomUUID(), when: 1});"
                        + " const answer = await fetch(path + '/work', {method: 'POST', body: new URLSearchParams({mark, line})});"
                        + " return JSON.stringify(await answer.json()); }",
                "/jobs/" + job);
        assertThat(refused).isEqualTo("{\"refused\":[1]}");
    }

    private static Locator row(Page page, String circuit) {
        return page.locator("tr[data-entry='" + circuit + "']");
    }

    private static void read(Page page, int row, String volts) {
        page.locator("#whole-" + row).check();
        page.locator("#v-whole").fill(volts);
        page.locator("form:has(#v-whole) button.act").click();
        assertThat(page.locator(".taken")
                        .filter(new Locator.FilterOptions().setHasText(volts))
                        .first())
                .isAttached(new LocatorAssertions.IsAttachedOptions().setTimeout(A_WHILE));
    }

    private static void says(Page page, String answer) {
        assertThat(page.locator("#says"))
                .containsText(answer, new LocatorAssertions.ContainsTextOptions().setTimeout(A_WHILE));
    }
}
