package org.loomproof.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.papers.bay.BaySheet;
import org.loomproof.papers.card.BenchCard;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.letter.HandOverLetter;
import org.loomproof.papers.letter.QuoteLetter;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.papers.record.WarrantyRecord;
import org.loomproof.papers.report.ProofReport;
import org.loomproof.papers.schematic.Details;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.papers.schematic.SchematicPage;
import org.loomproof.papers.shelf.PickListPage;
import org.loomproof.papers.shelf.PickListTable;
import org.loomproof.papers.svg.SvgDrawing;
import org.loomproof.papers.trial.CommissioningRecord;
import org.loomproof.papers.trial.TestOrderPage;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Messages;

/** Every paper of a job. The same job gives the same bytes. */
public final class Papers {

    /** The name of the plan's file. */
    public static final String PLAN = "plan.yaml";

    private static final String PROOF = "proof";

    /** The name of the proof report's file. */
    public static final String PROOF_REPORT = PROOF + ".html";

    private Papers() {}

    /**
     * The papers of a job, ready for {@link org.loomproof.papers.folder.PaperFolder}.
     *
     * @param print the sheets on which every page is also printed into a PDF; none when nobody asked
     */
    public static List<Paper> of(Material job, ShopFacts shop, Optional<Sheet> print, Messages messages) {
        Wording words = new Wording(messages);
        Brief brief = job.brief();
        List<PlacedDrawing> sheets = Schematic.sheets(brief, job.plan(), words);
        String title = words.of(
                "page.title", words.of("schematic.title"), brief.order().job());
        List<PlacedDrawing> details = Details.sheets(brief, job.plan(), words);
        List<Element> drawings = drawn(sheets, title);
        Page schematic = SchematicPage.of(brief, drawings, drawn(details, title), words);
        PickList picks = PickList.of(brief, job.plan());
        Optional<Quote> quote = shop.prices().map(list -> Quote.of(brief, job.plan(), list, shop.history()));

        Map<String, Page> pages = pages(job, shop, schematic, drawings, picks, quote, words);
        List<Paper> papers = new ArrayList<>();
        papers.add(new Paper(PLAN, job.planText()));
        pages.forEach((name, page) -> papers.add(new Paper(name + ".html", page.html())));
        print.ifPresent(sheet ->
                pages.forEach((name, page) -> papers.add(new Paper(name + ".pdf", Pdf.of(page, sheet)))));
        papers.add(new Paper("schematic.svg", MarkupWriter.xml(SvgDrawing.stacked(sheets, title))));
        papers.add(new Paper("details.svg", MarkupWriter.xml(SvgDrawing.stacked(details, title))));
        papers.add(new Paper("pick-list.csv", PickListTable.of(picks, shop.stock())));
        Wording theirs = new Wording(Messages.in(shop.customer()));
        papers.add(new Paper("hand-over.txt", HandOverLetter.text(brief, job.plan(), theirs)));
        quote.ifPresent(q -> papers.add(new Paper("quote.txt", QuoteLetter.text(brief, job.plan(), q, theirs))));
        return List.copyOf(papers);
    }

    private static List<Element> drawn(List<PlacedDrawing> sheets, String title) {
        return sheets.stream().map(sheet -> SvgDrawing.of(sheet, title)).toList();
    }

    private static Map<String, Page> pages(
            Material job,
            ShopFacts shop,
            Page schematic,
            List<Element> drawings,
            PickList picks,
            Optional<Quote> quote,
            Wording words) {
        Brief brief = job.brief();
        Plan plan = job.plan();
        Wording theirs = new Wording(Messages.in(shop.customer()));
        Map<String, Page> pages = new LinkedHashMap<>();
        pages.put("bench-card", BenchCard.page(brief, plan, words));
        pages.put("schematic", schematic);
        pages.put("bay-sheet", BaySheet.page(brief, plan, shop.address(), words));
        job.faults().ifPresent(faults -> pages.put("test-order", TestOrderPage.page(brief, plan, faults, words)));
        pages.put("commissioning", CommissioningRecord.page(brief, plan, words));
        pages.put(PROOF, ProofReport.page(brief, plan, job.proof(), drawings, words));
        pages.put(
                "warranty-record",
                WarrantyRecord.with(WarrantyRecord.page(brief, plan, drawings, words), shop.photos()));
        pages.put("pick-list", PickListPage.page(brief, plan, picks, shop.stock(), words));
        pages.put("hand-over", HandOverLetter.page(brief, plan, theirs));
        if (HandOverLetter.hasSlip(brief)) {
            pages.put("override-slip", HandOverLetter.slip(brief, theirs));
        }
        quote.ifPresent(q -> pages.put("quote", QuoteLetter.page(brief, plan, q, theirs)));
        return pages;
    }
}
