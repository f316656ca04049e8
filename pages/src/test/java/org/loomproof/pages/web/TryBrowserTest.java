package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.web.Browsers.Screen;
import org.loomproof.papers.Papers;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/** The car on the screen, in a real browser. */
class TryBrowserTest extends InBrowser {

    private static final Path JOB = Path.of("..", "examples", "bakery-van");
    private static final String RUN = "first";

    @TempDir
    private Path folder;

    @Test
    void everyTurnOfAControlIsAnsweredAtOnce() throws IOException {
        try (TestShop shop = TestShop.open(folder)) {
            String job = shop.address() + "/jobs/" + planned(shop.shop.book().orElseThrow());
            for (Screen screen : Screen.all()) {
                try (BrowserContext somebody = browsers().somebody(screen)) {
                    Page page = somebody.newPage();
                    List<String> refusedByPolicy = new ArrayList<>();
                    page.onConsoleMessage(message -> {
                        if (message.text().contains("Content Security Policy")) {
                            refusedByPolicy.add(message.text());
                        }
                    });
                    signIn(page, shop);
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
            String job = shop.address() + "/jobs/" + planned(shop.shop.book().orElseThrow());
            Page page = somebody.newPage();
            signIn(page, shop);
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

    private static void signIn(Page page, TestShop shop) {
        page.navigate(shop.address());
        page.getByLabel("Name to sign in").fill("bo");
        page.getByLabel("Password").fill("a kettle for Bo!");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign in"))
                .click();
        assertThat(page.locator("h1")).hasText("Jobs");
    }

    /** The bakery's van with its plan, kept as a proof keeps it. */
    private static CardId planned(OpenBook book) throws IOException {
        Map<String, String> entries = new HashMap<>(Map.of("make", "Fennick", "plate", "QX 481 LM", "run", RUN));
        for (String text : List.of("sheet", "kit", "order")) {
            entries.put(text, Files.readString(JOB.resolve(text + ".yaml")));
        }
        CardId job = book.cards()
                .addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "Odile Brandt"), entries)
                .id();
        ReadBrief read = switch (new TextRun(Messages.english())
                .briefs()
                .read(JOB.resolve("sheet.yaml"), JOB.resolve("kit.yaml"), JOB.resolve("order.yaml"))) {
            case Checked.Good<ReadBrief>(ReadBrief good) -> good;
            case Checked.Bad<ReadBrief>(var problems) -> throw new AssertionError(problems.toString());
        };
        Plan plan = new Weigher().weigh(read.brief()).plan();
        String file = new PlanFileWriter(Messages.english()).write(new PlanFile(read, plan));
        book.attachments().add(job, Author.CONSOLE, RUN + "/" + Papers.PLAN, new Paper(Papers.PLAN, file).bytes());
        return job;
    }
}
