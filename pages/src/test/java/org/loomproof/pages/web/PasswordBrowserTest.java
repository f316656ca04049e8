package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.pages.door.Attempts;
import org.loomproof.pages.web.Browsers.Screen;

/** Somebody's own password, and one that an owner sets for whoever forgot theirs. */
class PasswordBrowserTest extends InBrowser {

    private static final String OLD = "a kettle for Bo!";
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
            other.getByLabel("Name to sign in").fill("bo");
            other.getByLabel("Password").fill(OLD);
            other.locator("main button").click();
            assertThat(other.getByRole(AriaRole.ALERT)).isVisible();
            signIn(other, NEXT);

            for (Screen screen : Screen.all()) {
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
            page.getByLabel("Password that you tell Bo Larch").fill("told by Ada today");
            Browsers.look(page, Screen.PHONE, "people-new-password");
            page.locator("details[open] button").click();
            assertThat(page).hasURL(shop.address() + "/people");
            bo.navigate(shop.address());
            assertThat(bo).hasURL(shop.address() + "/sign-in");
            signIn(bo, "told by Ada today");
        }
    }

    private static void change(Page page, String old, String next, String again) {
        page.getByLabel("Password as it is").fill(old);
        page.getByLabel("New password", new Page.GetByLabelOptions().setExact(true))
                .fill(next);
        page.getByLabel("New password once more").fill(again);
        page.locator("main button").click();
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
