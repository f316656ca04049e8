package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.loomproof.pages.web.Browsers.Screen;

/** Tests that share one real browser, started once for all of a class. */
abstract class InBrowser {

    private static @Nullable Browsers started;

    @BeforeAll
    static void start() {
        started = Browsers.start();
    }

    @AfterAll
    static void stop() {
        if (started != null) {
            started.close();
        }
    }

    static Browsers browsers() {
        if (started == null) {
            throw new IllegalStateException("the browser did not start");
        }
        return started;
    }

    /** The technician's page, signed in. */
    static Page signedIn(BrowserContext somebody, TestShop shop) {
        return signedIn(somebody, shop, "bo", "a kettle for Bo!");
    }

    static Page ownerSignedIn(BrowserContext somebody, TestShop shop) {
        return signedIn(somebody, shop, "ada", TestShop.PASSWORD);
    }

    private static Page signedIn(BrowserContext somebody, TestShop shop, String name, String password) {
        Page page = somebody.newPage();
        page.navigate(shop.address());
        signIn(page, name, password);
        return page;
    }

    /** On the page that asks for it. */
    static void signIn(Page page, String name, String password) {
        page.getByLabel("Name to sign in").fill(name);
        page.getByLabel("Password").fill(password);
        button(page, "Sign in").click();
        assertThat(page.locator("h1")).hasText("Jobs");
    }

    /** One page of the bay at every size and in every theme. */
    static void lookEverywhere(TestShop shop, String path, String name) {
        for (Screen screen : Screen.all()) {
            try (BrowserContext somebody = browsers().somebody(screen)) {
                Page page = signedIn(somebody, shop);
                page.navigate(shop.address() + path);
                Browsers.lookInBay(page, screen, name);
            }
        }
    }

    static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, named(name).setExact(true));
    }

    static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
