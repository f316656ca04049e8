package org.loomproof.pages.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.papers.Papers;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/** The bakery's van in a book with its plan, kept as a proof keeps it, for tests of what comes after. */
final class PlannedVan {

    static final String CUSTOMER = "Odile Brandt";

    private static final Path JOB = Path.of("..", "examples", "bakery-van");
    private static final String RUN = "first";

    private PlannedVan() {}

    /** Puts it there. */
    static CardId in(OpenBook book) throws IOException {
        ReadBrief read = switch (new TextRun(Messages.english())
                .briefs()
                .read(JOB.resolve("sheet.yaml"), JOB.resolve("kit.yaml"), JOB.resolve("order.yaml"))) {
            case Checked.Good<ReadBrief>(ReadBrief good) -> good;
            case Checked.Bad<ReadBrief>(var problems) -> throw new AssertionError(problems.toString());
        };
        Map<String, String> entries = new HashMap<>(Map.of(
                "make", "Fennick", "plate", "QX 481 LM", "run", RUN, "verdict", "proven", "checked-in", "2026-11-26"));
        entries.put("sum", ShopAddress.sum(read.brief().order().job()));
        entries.put("hidden", "behind the glove box");
        for (String text : List.of("sheet", "kit", "order")) {
            entries.put(text, Files.readString(JOB.resolve(text + ".yaml")));
        }
        CardId job = book.cards()
                .addCustomerWithJob(
                        Author.CONSOLE, "job.called", Map.of("name", CUSTOMER, "phone", "0155 7700 1234"), entries)
                .id();
        Plan plan = new Weigher().weigh(read.brief()).plan();
        String file = new PlanFileWriter(Messages.english()).write(new PlanFile(read, plan));
        book.attachments().add(job, Author.CONSOLE, RUN + "/" + Papers.PLAN, new Paper(Papers.PLAN, file).bytes());
        return job;
    }

    /** Signs the technician in. */
    static void signIn(Page page, TestShop shop) {
        page.navigate(shop.address());
        page.getByLabel("Name to sign in").fill("bo");
        page.getByLabel("Password").fill("a kettle for Bo!");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign in"))
                .click();
        assertThat(page.locator("h1")).hasText("Jobs");
    }
}
