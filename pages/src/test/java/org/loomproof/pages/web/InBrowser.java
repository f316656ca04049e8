package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.loomproof.pages.web.Browsers.Screen;

/** Tests that share one real browser, started when the first one asks and gone when they end; each thread of tests has its own. */
abstract class InBrowser {

    private static final ThreadLocal<Browsers> STARTED = new ThreadLocal<>();

    static Browsers browsers() {
        Browsers there = STARTED.get();
        if (there == null || !there.isThere()) {
            there = Browsers.start();
            Runtime.getRuntime().addShutdownHook(new Thread(there::close));
            STARTED.set(there);
        }
        return there;
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

    /** One page of the bay on its screens. */
    static void lookEverywhere(TestShop shop, String path, String name) {
        for (Screen screen : Screen.of(name)) {
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
