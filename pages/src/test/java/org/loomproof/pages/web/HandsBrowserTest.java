package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.workshop.words.Messages;

/** The work's pages for who has no hand free for a mouse, no eye for the screen, or another language; and what a device keeps of them. */
class HandsBrowserTest extends InBrowser {

    private static final double A_WHILE = 90_000;

    private static final List<String> PAGES = List.of(
            "bench",
            "bay",
            "bay/@battery",
            "bay/constant",
            "bay/starter",
            "try",
            "faults",
            "test",
            "comeback",
            "plan",
            "plan/by-hand");

    /** Numbers everything that can be done on a page; of a group of radio buttons one is reached and the arrows do the rest. */
    private static final String NUMBER_CONTROLS = "() => { const seen = new Set(); let n = 0;"
            + " for (const e of document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary')) {"
            + " if (!e.checkVisibility() || e.disabled) continue;"
            + " const group = e.type === 'radio' ? e.form + e.name + [...document.forms].indexOf(e.form) : null;"
            + " if (group && (seen.has(group) || !e.checked && document.querySelector('input[type=radio]:checked[name=\"' + e.name + '\"]'))) continue;"
            + " if (group) seen.add(group);"
            + " e.dataset.control = n++; } return n; }";

    /** What was said and how high it beeped, in place of a loudspeaker. */
    private static final String LISTEN = "window.said = []; window.beeps = [];"
            + " Object.defineProperty(window, 'speechSynthesis', {value: {speak: u => window.said.push(u.text), cancel() {}}});"
            + " window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };"
            + " window.AudioContext = class { currentTime = 0; close() {} createGain() { return {gain: {}, connect() {}}; }"
            + " createOscillator() { const f = {value: 0}; return {frequency: f, connect: to => to, start() { window.beeps.push(f.value); }, stop() {}}; } };";

    @TempDir
    private Path folder;

    @Test
    void everythingIsReachedByTheKeyboardAlone() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            CardId id = ProvenJob.in(shop.shop.book().orElseThrow());
            Page page = signedIn(somebody, shop);
            for (String name : PAGES) {
                page.navigate(shop.address() + "/jobs/" + id + "/" + name);
                int controls = ((Number) page.evaluate(NUMBER_CONTROLS)).intValue();
                Set<String> reached = new HashSet<>();
                for (int tab = 0; tab < controls + 2; tab++) {
                    page.keyboard().press("Tab");
                    reached.add(String.valueOf(page.evaluate("document.activeElement.dataset.control ?? ''")));
                }
                assertThat((List<?>) page.evaluate(
                                "reached => [...document.querySelectorAll('[data-control]')]"
                                        + ".filter(e => !reached.includes(e.dataset.control)).map(e => e.outerHTML.slice(0, 160))",
                                List.copyOf(reached)))
                        .as("not reached on %s, of %d", name, controls)
                        .isEmpty();
            }
            page.navigate(shop.address() + "/jobs/" + id + "/bay/@battery");
            page.locator("#whole-0").focus();
            page.keyboard().press("ArrowDown");
            page.keyboard().press("Tab");
            page.keyboard().type("12.4");
            page.keyboard().press("Enter");
            assertThat(page.locator(".taken li")).hasText(Pattern.compile(".*12\\.4.*", Pattern.DOTALL));
        }
    }

    @Test
    void theStepIsSpokenAndAnAnswerHeardUnlessSomebodyWantsQuiet() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            somebody.addInitScript(LISTEN);
            CardId id = ProvenJob.in(shop.shop.book().orElseThrow());
            Page page = signedIn(somebody, shop);
            page.navigate(shop.address() + "/jobs/" + id + "/bay/side-lamps");
            assertThat(said(page)).containsExactly(page.locator("h1").innerText());
            read(page, "0.00", "One more test");
            assertThat(beeps(page)).containsExactly(440);
            assertThat(said(page).getLast())
                    .startsWith("One more test")
                    .contains(page.locator(".asks").innerText());
            read(page, "12.60", "This is it");
            assertThat(beeps(page)).as("higher once it may be joined").containsExactly(440, 1320);

            button(page, "Voice").click();
            assertThat(page.locator("#voice")).hasAttribute("aria-pressed", "false");
            page.navigate(shop.address() + "/jobs/" + id + "/bay/horn");
            page.navigate(shop.address() + "/jobs/" + id + "/bay/constant");
            read(page, "12.60", "One more test");
            assertThat(said(page)).isEmpty();
            assertThat(beeps(page)).isEmpty();
        }
    }

    @Test
    void aDeviceKeepsNoPageLongerThanADayNorBeyondTheSignOut() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            CardId id = ProvenJob.in(shop.shop.book().orElseThrow());
            String bay = shop.address() + "/jobs/" + id + "/bay";
            Page page = signedIn(somebody, shop);
            keep(page, bay);
            page.evaluate("async () => { const kept = await caches.open('bay');"
                    + " for (const key of await kept.keys()) { if (!key.url.endsWith('/bay/constant')) continue;"
                    + " const body = await (await kept.match(key)).text();"
                    + " await kept.put(key, new Response(body, {headers: {'Content-Type': 'text/html',"
                    + " Date: new Date(Date.now() - 12.1 * 3600e3).toUTCString()}})); } }");
            somebody.setOffline(true);
            page.navigate(bay + "/ignition");
            assertThat(page.locator("h1")).containsText("ignition");
            assertThatThrownBy(() -> page.navigate(bay + "/constant")).isInstanceOf(PlaywrightException.class);
            somebody.setOffline(false);
            keep(page, bay);
            button(page, "Sign out").click();
            assertThat(page.locator("h1")).hasText("Sign in");
            page.waitForCondition(() -> page.evaluate("caches.has('bay')").equals(false));
            somebody.setOffline(true);
            assertThatThrownBy(() -> page.navigate(bay)).isInstanceOf(PlaywrightException.class);
        }
    }

    @Test
    void theWorkIsReadInSpanishWithNoEnglishLeft() {
        Messages english = Messages.english();
        Messages spanish = Messages.in(Locale.forLanguageTag("es"));
        List<String> elsewhere = english.keys().stream()
                .filter(key -> !key.startsWith("pages."))
                .map(key -> pattern(english, key))
                .toList();
        List<String> ofThePages = english.keys().stream()
                .filter(key ->
                        key.startsWith("pages.") && !pattern(english, key).equals(pattern(spanish, key)))
                .map(key -> pattern(english, key))
                .filter(words -> words.length() > 8 && !words.contains("{"))
                .filter(words -> elsewhere.stream().noneMatch(other -> other.contains(words)))
                .toList();
        assertThat(ofThePages).hasSizeGreaterThan(100);
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE, "es-ES")) {
            CardId id = ProvenJob.in(shop.shop.book().orElseThrow());
            Page page = somebody.newPage();
            page.navigate(shop.address());
            page.locator("[name=sign-in]").fill("bo");
            page.locator("[name=password]").fill("a kettle for Bo!");
            page.locator("main form button").click();
            page.waitForURL(shop.address() + "/");
            for (String name : PAGES) {
                page.navigate(shop.address() + "/jobs/" + id + "/" + name);
                assertThat(page.locator("html")).hasAttribute("lang", "es");
                Browsers.look(page, Screen.PHONE, "es-" + name.replace("/", "-").replace("@", ""));
                String shown = page.locator("main").innerText();
                assertThat(ofThePages.stream().filter(shown::contains))
                        .as("English on %s", name)
                        .isEmpty();
            }
        }
    }

    private static String pattern(Messages words, String key) {
        return words.findPattern(key).orElse("");
    }

    private static void keep(Page page, String bay) {
        page.navigate(bay);
        assertThat(page.locator("#unsent[data-ready]"))
                .isAttached(new LocatorAssertions.IsAttachedOptions().setTimeout(A_WHILE));
    }

    private static void read(Page page, String volts, String answer) {
        page.locator("#v-whole").fill(volts);
        page.locator("form:has(#v-whole) button.act").click();
        assertThat(page.locator("#says"))
                .containsText(answer, new LocatorAssertions.ContainsTextOptions().setTimeout(A_WHILE));
        assertThat(page.locator("#unsent"))
                .hasText("All sent.", new LocatorAssertions.HasTextOptions().setTimeout(A_WHILE));
    }

    private static List<String> said(Page page) {
        return ((List<?>) page.evaluate("window.said"))
                .stream().map(String::valueOf).toList();
    }

    private static List<Integer> beeps(Page page) {
        return ((List<?>) page.evaluate("window.beeps"))
                .stream().map(each -> ((Number) each).intValue()).toList();
    }
}
