package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.pages.web.Browsers.Screen;

/** The pages as people meet them, in a real browser. */
class PagesBrowserTest extends InBrowser {

    private static final Path JOB = Path.of("..", "examples", "circuits", "starter-with-two-wires");

    /** A picture of one pixel. */
    private static final byte[] PIXEL = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @TempDir
    private Path folder;

    static List<Screen> screens() {
        return Screen.of("whole-way");
    }

    @ParameterizedTest
    @MethodSource("screens")
    void aJobGoesFromTheFirstCallThroughCheckInToAProvenPlan(Screen screen) throws IOException {
        try (TestShop shop = new TestShop(folder);
                BrowserContext somebody = browsers().somebody(screen)) {
            Page page = somebody.newPage();
            List<String> refusedByPolicy = new ArrayList<>();
            page.onConsoleMessage(message -> {
                if (message.text().contains("Content Security Policy")) {
                    refusedByPolicy.add(message.text());
                }
            });
            makeBook(page, shop, screen);
            call(page, screen);
            checkIn(page, screen);
            for (String text : List.of("order", "sheet", "kit")) {
                enter(page, screen, text);
            }
            next(page, "Plan and prove").click();
            Browsers.look(page, screen, "plan-before");
            button(page, "Plan and prove").click();
            assertThat(page.locator("[data-progress]")).isVisible();
            Browsers.look(page, screen, "plan-running");
            assertThat(page.locator(".verdict"))
                    .hasText("Proven", new LocatorAssertions.HasTextOptions().setTimeout(120_000));
            Browsers.look(page, screen, "plan-proven");
            assertThat(page.locator(".claim.is-broken")).hasCount(0);

            Page paper = page.waitForPopup(
                    () -> page.getByRole(AriaRole.LINK, named("Bench card").setExact(true))
                            .click());
            assertThat(paper.locator("h1")).isVisible();
            Browsers.picture(paper, screen, "bench-card"); // nothing runs in a paper, axe neither
            paper.close();

            page.getByRole(AriaRole.LINK, named("Back to the job")).click();
            for (String said : List.of("The loom is prepared", "The work in the car is done")) {
                button(page, said).click();
            }
            assertThat(next(page, "Test and hand-over")).isVisible();
            Browsers.look(page, screen, "job-to-test");
            page.navigate(shop.address() + "/?find=brandt");
            assertThat(page.locator(".cards li")).hasCount(1);
            Browsers.look(page, screen, "jobs");
            assertThat(refusedByPolicy)
                    .as("nothing of ours is refused by our own policy")
                    .isEmpty();
        }
    }

    private static void makeBook(Page page, TestShop shop, Screen screen) {
        page.navigate(shop.address());
        Browsers.look(page, screen, "begin");
        page.getByLabel("Passphrase", exactly()).fill(TestShop.PASSPHRASE);
        page.getByLabel("The passphrase once more").fill(TestShop.PASSPHRASE);
        page.getByLabel("I have written it down").check();
        page.getByLabel("Name", exactly()).fill("Ada Quill");
        page.getByLabel("Name to sign in").fill("ada");
        page.getByLabel("Password").fill(TestShop.PASSWORD);
        button(page, "Make the book").click();
        signIn(page, screen, "ada", TestShop.PASSWORD);
        Browsers.look(page, screen, "jobs-empty");
    }

    private static void signIn(Page page, Screen screen, String name, String password) {
        assertThat(page.locator("h1")).hasText("Sign in");
        Browsers.look(page, screen, "sign-in");
        signIn(page, name, password);
    }

    private static void call(Page page, Screen screen) {
        page.getByRole(AriaRole.LINK, named("First call")).first().click();
        Browsers.look(page, screen, "call");
        page.getByLabel("Make", exactly()).fill("Fennick");
        page.getByLabel("Model", exactly()).fill("Drayling");
        page.getByLabel("Year", exactly()).fill("2012");
        page.getByLabel("Age of the battery").fill("6");
        page.getByLabel("Starter interrupt").check();
        page.getByLabel("Siren", exactly()).check();
        button(page, "Can it be done?").click();
        assertThat(page.locator("#answer h2")).hasText("Yes, if");
        assertThat(page.locator("#answer")).containsText("6 years is old");
        Browsers.look(page, screen, "call-answered");
        page.getByLabel("Name", exactly()).fill("Odile Brandt-Øster");
        page.getByLabel("Telephone").fill("0155 7700 12");
        page.getByLabel("Plate", exactly()).fill("QX 481 LM");
        page.getByLabel("Due", exactly()).fill("2026-11-30");
        button(page, "Take the job on").click();
        assertThat(page.locator("h1")).containsText("QX 481 LM");
        Browsers.look(page, screen, "job");
    }

    private static void checkIn(Page page, Screen screen) {
        next(page, "Check the vehicle in").click();
        Locator horn = page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("Horn"));
        horn.getByLabel("does not").check();
        page.getByLabel("Battery at rest").fill("12.6");
        page.getByLabel("Battery while cranking").fill("9.8");
        page.getByLabel("Add pictures").setInputFiles(new FilePayload("dash.png", "image/png", PIXEL));
        Locator canvas = page.locator("canvas");
        canvas.scrollIntoViewIfNeeded();
        var box = canvas.boundingBox();
        page.mouse().move(box.x + 30, box.y + 30);
        page.mouse().down();
        page.mouse().move(box.x + 120, box.y + 60);
        page.mouse().move(box.x + 200, box.y + 25);
        page.mouse().up();
        Browsers.look(page, screen, "check-in");
        button(page, "Sign and check in").click();
        assertThat(page.locator(".problem")).containsText("signed");
        assertThat(page.locator("input[name=signature]")).hasValue(Pattern.compile("data:image/png.*"));
        page.getByLabel("Name of who signs").fill("Odile Brandt-Øster");
        page.getByLabel("Add pictures").setInputFiles(new FilePayload("dash.png", "image/png", PIXEL));
        button(page, "Sign and check in").click();
        assertThat(next(page, "Enter the order")).isVisible();
        page.getByRole(AriaRole.LINK, named("Check-in")).click();
        assertThat(page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("Horn"))
                        .getByLabel("does not"))
                .isChecked();
        assertThat(page.locator(".pictures img")).hasCount(2); // the signature was not lost
        Browsers.look(page, screen, "check-in-done");
        page.getByRole(AriaRole.LINK, named("Back to the job")).click();
    }

    /** First with a slip of the hand, which is told as it would be of a file, then as it should be. */
    private static void enter(Page page, Screen screen, String name) throws IOException {
        String text = Files.readString(JOB.resolve(name + ".yaml"));
        page.locator("a.next").click();
        page.locator("#text").fill(text.replaceFirst("format:", "formatt:"));
        button(page, "Check and save").click();
        assertThat(page.locator(".problem li").first()).containsText(name + ".yaml");
        Browsers.look(page, screen, "text-" + name);
        page.locator("#text").fill(text);
        button(page, "Check and save").click();
        assertThat(page.locator(".way")).isVisible();
    }

    @Test
    void theSecondOfTwoAtOneJobIsShownWhatTheFirstWrote() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext adas = browsers().somebody(Screen.LAPTOP);
                BrowserContext bos = browsers().somebody(Screen.PHONE)) {
            Page ada = adas.newPage();
            Page bo = bos.newPage();
            ada.navigate(shop.address());
            signIn(ada, "ada", TestShop.PASSWORD);
            bo.navigate(shop.address());
            signIn(bo, "bo", "a kettle for Bo!");
            call(ada, Screen.LAPTOP);
            String job = ada.url();

            ada.navigate(job + "/vehicle");
            bo.navigate(job + "/vehicle");
            ada.getByLabel("Plate", exactly()).fill("ADA 1");
            button(ada, "Save").click();
            assertThat(ada.locator("h1")).containsText("ADA 1");
            bo.getByLabel("Plate", exactly()).fill("BO 2");
            bo.getByLabel("Vehicle number").fill("11111111111111112");
            button(bo, "Save").click();

            assertThat(bo.getByRole(AriaRole.ALERT)).containsText("Somebody else changed this job");
            assertThat(bo.locator(".theirs").first()).containsText("ADA 1");
            assertThat(bo.getByLabel("Plate", exactly())).hasValue("BO 2");
            Browsers.look(bo, Screen.PHONE, "overtaken");
            ada.reload();
            assertThat(ada.locator("h1")).containsText("ADA 1");

            button(bo, "Save").click();
            assertThat(bo.locator("h1")).containsText("BO 2");
            bo.navigate(job + "/vehicle");
            assertThat(bo.locator(".number")).containsText("does not agree");
            Browsers.look(bo, Screen.PHONE, "vehicle");
        }
    }

    @Test
    void theFrontDeskSeesNoWiringAndNoHiddenPlace() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext adas = browsers().somebody(Screen.LAPTOP);
                BrowserContext cys = browsers().somebody(Screen.LAPTOP)) {
            Page ada = ownerSignedIn(adas, shop);
            call(ada, Screen.LAPTOP);
            String job = ada.url();
            ada.navigate(job + "/vehicle");
            ada.getByLabel("Where the controller is").fill("behind the spare wheel well");
            button(ada, "Save").click();
            assertThat(ada.locator("main")).containsText("spare wheel");
            ada.navigate(shop.address() + "/people");
            Browsers.look(ada, Screen.LAPTOP, "people");
            ada.navigate(shop.address() + "/prices");
            Browsers.look(ada, Screen.LAPTOP, "prices");

            Page cy = cys.newPage();
            cy.navigate(shop.address());
            signIn(cy, "cy", "a kettle for Cy!");
            cy.navigate(job);
            assertThat(cy.content()).contains("QX 481 LM").doesNotContain("spare wheel");
            cy.navigate(job + "/vehicle");
            assertThat(cy.content()).doesNotContain("spare wheel");
            for (String closed :
                    List.of("/texts/order", "/plan", "/papers/bench-card.html", "/past", "/past/1", "/changes")) {
                assertThat(cy.navigate(job + closed).status()).as(closed).isEqualTo(403);
            }
            for (String closed : List.of("/people", "/sheets", "/kits", "/fits", "/prices")) {
                assertThat(cy.navigate(shop.address() + closed).status())
                        .as(closed)
                        .isEqualTo(403);
            }
            Browsers.look(cy, Screen.LAPTOP, "refused");
        }
    }

    @Test
    void afterARestartTheBookIsLockedUntilThePassphraseIsGiven() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            shop.shop.close();
            Page page = somebody.newPage();
            page.navigate(shop.address());
            assertThat(page.locator("h1")).hasText("The book is locked");
            page.getByLabel("Passphrase").fill("four brass kettles sin");
            button(page, "Unlock").click();
            assertThat(page.locator(".problem")).containsText("does not open");
            Browsers.look(page, Screen.PHONE, "unlock");
            page.getByLabel("Passphrase").fill(TestShop.PASSPHRASE);
            button(page, "Unlock").click();
            signIn(page, "bo", "a kettle for Bo!");
        }
    }

    private static Locator next(Page page, String name) {
        return page.locator("a.next", new Page.LocatorOptions().setHasText(name));
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }
}
