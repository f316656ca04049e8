package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.PhoneCode;
import org.loomproof.pages.web.Browsers.Screen;

/** How somebody signs in: their own password, one that an owner tells whoever forgot theirs, the second step, and their sessions. */
class OneselfBrowserTest extends InBrowser {

    private static final String OLD = "a kettle for Bo!";
    private static final String TOLD = "told by Ada today";
    private static final String NEXT = "another kettle for Bo";

    @TempDir
    private Path folder;

    @Test
    void whoChangesTheirPasswordStaysSignedInHereAndNowhereElse() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext here = browsers().somebody(Screen.PHONE);
                BrowserContext there = browsers().somebody(Screen.LAPTOP)) {
            Page page = signedIn(shop, here, OLD);
            Page other = signedIn(shop, there, OLD);
            assertThat((String) page.evaluate("document.cookie"))
                    .as("no script can read the session")
                    .isEmpty();
            page.navigate(shop.address() + "/password");
            change(page, "not my password", NEXT, NEXT);
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("not your password");
            change(page, OLD, NEXT, NEXT + "!");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("not the same");
            change(page, OLD, "short", "short");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("too short");
            Browsers.look(page, Screen.PHONE, "password-problem");
            change(page, OLD, NEXT, NEXT);
            assertThat(page.locator("h1")).hasText("Jobs");
            other.navigate(shop.address());
            assertThat(other).hasURL(shop.address() + "/sign-in");
            typeSignIn(other, OLD);
            other.locator("main button").click();
            assertThat(other.getByRole(AriaRole.ALERT)).isVisible();
            signIn(other, NEXT);

            for (Screen screen : Screen.of("password")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page seen = signedIn(shop, somebody, NEXT);
                    seen.navigate(shop.address() + "/password");
                    Browsers.look(seen, screen, "password");
                }
            }
        }
    }

    @Test
    void whoeverGuessesAtATakenSessionIsSlowed() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.LAPTOP)) {
            Page page = signedIn(shop, somebody, OLD);
            page.navigate(shop.address() + "/password");
            for (int guess = 0; guess < Attempts.FREE; guess++) {
                change(page, "guess number " + guess, NEXT, NEXT);
                assertThat(page.getByRole(AriaRole.ALERT)).containsText("not your password");
            }
            change(page, OLD, NEXT, NEXT);
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Too many tries");
        }
    }

    @Test
    void anOwnerSetsOneForWhoeverForgotTheirs() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext owners = browsers().somebody(Screen.PHONE);
                BrowserContext theirs = browsers().somebody(Screen.LAPTOP)) {
            Page bo = signedIn(shop, theirs, OLD);
            Page page = ownerSignedIn(owners, shop);
            page.navigate(shop.address() + "/people");
            page.getByText("New password for Bo Larch").click();
            page.getByLabel("Password that you tell Bo Larch").fill(TOLD);
            Browsers.look(page, Screen.PHONE, "people-new-password");
            page.locator("details[open] button").click();
            assertThat(page).hasURL(shop.address() + "/people");
            bo.navigate(shop.address());
            assertThat(bo).hasURL(shop.address() + "/sign-in");
            typeSignIn(bo, TOLD);
            bo.locator("main button").click();
            assertThat(bo).hasURL(shop.address() + "/password");
            assertThat(bo.locator("main")).containsText("Somebody told you the password");
            Browsers.look(bo, Screen.LAPTOP, "password-told");
            for (String elsewhere : List.of("/", "/call", "/kits", "/password/second-step")) {
                bo.navigate(shop.address() + elsewhere);
                assertThat(bo).hasURL(shop.address() + "/password");
            }
            change(bo, TOLD, TOLD, TOLD);
            assertThat(bo.getByRole(AriaRole.ALERT)).containsText("password there was");
            change(bo, TOLD, NEXT, NEXT);
            assertThat(bo.locator("h1")).hasText("Jobs");
        }
    }

    @Test
    void withASecondStepThePasswordAloneOpensNothing() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext here = browsers().somebody(Screen.PHONE);
                BrowserContext there = browsers().somebody(Screen.LAPTOP)) {
            Page page = signedIn(shop, here, OLD);
            Page other = signedIn(shop, there, OLD);
            page.navigate(shop.address() + "/password");
            page.getByText("Set it up").click();
            assertThat(page.locator(".phone-code svg")).isVisible();
            PhoneCode phone =
                    new PhoneCode(page.locator("code.spaced").innerText().replace(" ", ""));
            page.getByLabel("Six digits").fill("000000");
            page.getByLabel("Password as it is").fill(OLD);
            page.locator("main button").click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("digits are not those");
            Browsers.look(page, Screen.PHONE, "second-step");
            page.getByLabel("Six digits").fill(phone.at(shop.clock.instant()));
            page.getByLabel("Password as it is").fill(OLD);
            page.locator("main button").click();
            String spare = page.locator("code.spare").innerText().strip();
            Browsers.look(page, Screen.PHONE, "second-step-begun");
            other.navigate(shop.address());
            assertThat(other).hasURL(shop.address() + "/sign-in");

            signInBy(other, OLD, "");
            assertThat(other.getByRole(AriaRole.ALERT)).isVisible();
            signInBy(other, "a wrong kettle of Bo", phone.at(shop.clock.instant()));
            assertThat(other.getByRole(AriaRole.ALERT)).isVisible();
            Browsers.look(other, Screen.LAPTOP, "sign-in-code");
            signInBy(other, OLD, phone.at(shop.clock.instant()));
            assertThat(other.locator("h1")).hasText("Jobs");
            signOut(other);
            signInBy(other, OLD, phone.at(shop.clock.instant()));
            assertThat(other.getByRole(AriaRole.ALERT)).isVisible(); // used: somebody may have looked over a shoulder
            shop.clock.pass(Duration.ofSeconds(31));
            signInBy(other, OLD, phone.at(shop.clock.instant()));
            assertThat(other.locator("h1")).hasText("Jobs");

            signOut(other);
            signInBy(other, OLD, spare);
            assertThat(other.locator("h1")).hasText("Jobs");
            signOut(other);
            assertThat(other.getByLabel("Code of your phone")).hasCount(0);
            signIn(other, OLD);
            assertThat(other.locator("h1")).hasText("Jobs");
        }
    }

    @Test
    void anOwnerEndsTheSecondStepOfWhoeverLostTheirPhone() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext owners = browsers().somebody(Screen.PHONE);
                BrowserContext theirs = browsers().somebody(Screen.LAPTOP)) {
            People people = new People(shop.shop.book().orElseThrow().cards());
            CardId bo = people.list().stream()
                    .filter(line -> line.headline().get("name").equals("Bo Larch"))
                    .findFirst()
                    .orElseThrow()
                    .id();
            people.beginSecondStep(bo, PhoneCode.newSecret(), Author.of(bo));
            Page page = ownerSignedIn(owners, shop);
            page.navigate(shop.address() + "/people");
            Browsers.look(page, Screen.PHONE, "people-second-step");
            page.getByText("End the second step of Bo Larch").click();
            assertThat(page.getByText("End the second step")).hasCount(0);
            signedIn(shop, theirs, OLD);
        }
    }

    @Test
    void aSessionIsSeenAndEndedFromAnotherDevice() {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext here = browsers().somebody(Screen.PHONE);
                BrowserContext there = browsers().somebody(Screen.LAPTOP);
                BrowserContext owners = browsers().somebody(Screen.LAPTOP)) {
            Page other = signedIn(shop, there, OLD);
            shop.clock.pass(Duration.ofMinutes(9));
            Page page = signedIn(shop, here, OLD);
            Page ada = ownerSignedIn(owners, shop);
            page.navigate(shop.address() + "/password");
            Locator sessions = page.locator(".people li");
            assertThat(sessions).hasCount(2);
            assertThat(sessions.nth(0)).containsText("this device");
            Browsers.look(page, Screen.PHONE, "sessions");
            sessions.nth(1).getByText("Sign out there").click();
            assertThat(sessions).hasCount(1);
            other.navigate(shop.address());
            assertThat(other).hasURL(shop.address() + "/sign-in");
            ada.navigate(shop.address());
            assertThat(ada.locator("h1")).hasText("Jobs");
        }
    }

    private static void change(Page page, String old, String next, String again) {
        page.getByLabel("Password as it is").fill(old);
        page.getByLabel("New password", new Page.GetByLabelOptions().setExact(true))
                .fill(next);
        page.getByLabel("New password once more").fill(again);
        page.locator("form[action='/password'] button").click();
    }

    private static void signInBy(Page page, String password, String code) {
        typeSignIn(page, password);
        page.getByLabel("Code of your phone").fill(code);
        page.locator("main button").click();
    }

    private static void typeSignIn(Page page, String password) {
        page.getByLabel("Name to sign in").fill("bo");
        page.getByLabel("Password").fill(password);
    }

    private static void signOut(Page page) {
        page.getByText("Sign out", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.getByLabel("Name to sign in")).isVisible();
    }

    private static Page signedIn(TestShop shop, BrowserContext somebody, String password) {
        Page page = somebody.newPage();
        page.navigate(shop.address());
        signIn(page, password);
        return page;
    }

    private static void signIn(Page page, String password) {
        signIn(page, "bo", password);
        assertThat(page.locator("h1")).hasText("Jobs");
    }
}
