package org.loomproof.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.card.BenchCard;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.letter.HandOverLetter;
import org.loomproof.papers.letter.QuoteLetter;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.report.ProofReport;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.papers.shelf.PickListPage;
import org.loomproof.papers.shelf.PickListTable;
import org.loomproof.papers.svg.SvgDrawing;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.words.Messages;

/** Every paper of a job. The same job gives the same bytes. */
public final class Papers {

    /** The name of the plan's file. */
    public static final String PLAN = "plan.yaml";

    /** The name of the proof report's file. */
    public static final String PROOF_REPORT = "proof.html";

    private Papers() {}

    /**
     * The papers of a job, ready for {@link org.loomproof.papers.folder.PaperFolder}.
     *
     * @param planText the plan as a file, self-contained
     * @param prices the shop's own; without them there is no quote
     */
    public static List<Paper> of(
            Brief brief, Plan plan, Proof proof, String planText, Optional<PriceList> prices, Messages messages) {
        Wording words = new Wording(messages);
        List<PlacedDrawing> sheets = Schematic.sheets(brief, plan, words);
        String title = words.of(
                "page.title", words.of("schematic.title"), brief.order().job());
        List<Element> drawings =
                sheets.stream().map(sheet -> SvgDrawing.of(sheet, title)).toList();
        PickList picks = PickList.of(brief, plan);
        List<Paper> papers = new ArrayList<>(List.of(
                new Paper(PLAN, planText),
                new Paper("bench-card.html", BenchCard.page(brief, plan, words)),
                new Paper(PROOF_REPORT, ProofReport.page(brief, plan, proof, drawings, words)),
                new Paper("schematic.svg", MarkupWriter.xml(SvgDrawing.stacked(sheets, title))),
                new Paper("pick-list.html", PickListPage.page(brief, picks, words)),
                new Paper("pick-list.csv", PickListTable.of(picks)),
                new Paper("hand-over.html", HandOverLetter.page(brief, plan, words)),
                new Paper("hand-over.txt", HandOverLetter.text(brief, plan, words))));
        if (HandOverLetter.hasSlip(brief)) {
            papers.add(new Paper("override-slip.html", HandOverLetter.slip(brief, words)));
        }
        prices.map(list -> Quote.of(brief, plan, list)).ifPresent(quote -> {
            papers.add(new Paper("quote.html", QuoteLetter.page(brief, plan, quote, words)));
            papers.add(new Paper("quote.txt", QuoteLetter.text(brief, plan, quote, words)));
        });
        return List.copyOf(papers);
    }
}
