package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.pages.web.Browsers.Screen;

/** The car on the screen, in a real browser. */
class TryBrowserTest extends InBrowser {

    @TempDir
    private Path folder;

    @Test
    void everyTurnOfAControlIsAnsweredAtOnce() throws IOException {
        try (TestShop shop = TestShop.open(folder)) {
            String job =
                    shop.address() + "/jobs/" + ProvenJob.in(shop.shop.book().orElseThrow());
            for (Screen screen : Screen.of("try")) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = somebody.newPage();
                    List<String> refusedByPolicy = new ArrayList<>();
                    page.onConsoleMessage(message -> {
                        if (message.text().contains("Content Security Policy")) {
                            refusedByPolicy.add(message.text());
                        }
                    });
                    page.navigate(shop.address());
                    signIn(page, "bo", "a kettle for Bo!");
                    page.navigate(job + "/try");
                    assertThat(page.locator(".drawn svg").first()).isVisible();
                    Browsers.look(page, screen, "try-rest");
                    String before = page.locator("#live").innerText();
                    page.getByLabel("start", new Page.GetByLabelOptions().setExact(true))
                            .check();
                    page.waitForURL("**at-key=start**");
                    assertThat(page.locator("#live").innerText()).isNotEqualTo(before);
                    page.getByLabel("What is wrong").selectOption(new String[] {firstOpenWire(page)});
                    page.waitForURL("**wrong=wire-open**");
                    Browsers.look(page, screen, "try-broken");
                    assertThat(refusedByPolicy).isEmpty();
                }
            }
        }
    }

    @Test
    void withoutScriptTheButtonDoesTheSame() throws IOException {
        try (TestShop shop = TestShop.open(folder);
                BrowserContext somebody = browsers().somebody(Screen.PHONE)) {
            String job =
                    shop.address() + "/jobs/" + ProvenJob.in(shop.shop.book().orElseThrow());
            Page page = signedIn(somebody, shop);
            page.route("**/files/*.js", route -> route.abort());
            page.navigate(job + "/try");
            page.getByLabel("armed", new Page.GetByLabelOptions().setExact(true))
                    .check();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show"))
                    .click();
            assertThat(page.getByLabel("armed", new Page.GetByLabelOptions().setExact(true)))
                    .isChecked();
            assertThat(page.url()).contains("state=armed");
        }
    }

    private static String firstOpenWire(Page page) {
        return (String)
                page.evaluate("document.querySelector('#wrong option[value^=\"wire-open\"]').getAttribute('value')");
    }
}
