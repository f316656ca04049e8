package org.loomproof.shop.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.loomproof.papers.Material;
import org.loomproof.papers.Papers;
import org.loomproof.papers.ShopFacts;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.change.PlanOf;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/** Runs one job whose files are texts that somebody keeps, such as the job book: nothing is read from a disk or written to one. */
public final class TextRun {

    private final Messages messages;
    private final BriefReader briefs;

    /** @param messages the language of the papers */
    public TextRun(Messages messages) {
        this.messages = messages;
        TradeDefaults usual = TradeDefaults.read();
        this.briefs = new BriefReader(usual, new SheetCompletion(usual));
    }

    /** Reads texts one by one, to tell their problems while they are being written. */
    public BriefReader briefs() {
        return briefs;
    }

    /**
     * Plans the job in the three texts, proves the plan and makes its papers.
     *
     * @param texts what the papers take from the shop
     * @param told hears each stage as it begins
     * @param beforeEachProof is called before each candidate is proven; what it throws ends the run
     */
    public Checked<MadeJob> make(
            SourceText sheet,
            SourceText kit,
            SourceText order,
            ShopTexts texts,
            Consumer<Stage> told,
            Runnable beforeEachProof) {
        told.accept(Stage.READING);
        List<Problem> problems = new ArrayList<>();
        Optional<ReadBrief> given = briefs.read(sheet, kit, order).orTell(problems);
        ShopFacts shop = texts.read(problems);
        if (!problems.isEmpty()) {
            return new Checked.Bad<>(List.copyOf(problems));
        }
        ReadBrief read = given.orElseThrow();
        JudgedJob job = judge(read.brief(), told, beforeEachProof);
        told.accept(Stage.WRITING);
        String planText = new PlanFileWriter(messages).write(new PlanFile(read, job.plan()));
        Material material = new Material(read.brief(), job.plan(), job.proof(), Optional.empty(), planText);
        return new Checked.Good<>(
                new MadeJob(material, shop, job.search(), Papers.of(material, shop, Optional.empty(), messages)));
    }

    /**
     * Plans and proves, and makes no papers.
     *
     * @param told hears each stage as it begins
     * @param beforeEachProof is called before each candidate is proven; what it throws ends the run
     */
    public Checked<JudgedJob> judged(
            SourceText sheet, SourceText kit, SourceText order, Consumer<Stage> told, Runnable beforeEachProof) {
        told.accept(Stage.READING);
        return switch (briefs.read(sheet, kit, order)) {
            case Checked.Bad<ReadBrief>(List<Problem> problems) -> new Checked.Bad<>(problems);
            case Checked.Good<ReadBrief>(ReadBrief read) ->
                new Checked.Good<>(judge(read.brief(), told, beforeEachProof));
        };
    }

    private static JudgedJob judge(Brief brief, Consumer<Stage> told, Runnable beforeEachProof) {
        told.accept(Stage.PLANNING);
        PlannedJob job = new Weigher(beforeEachProof).weigh(brief);
        return new JudgedJob(brief, job.plan(), job.proof().alsoBoundedBy(job.bounds()), job.search());
    }

    /** What changes from one plan to another, or every problem of the two; nothing is proven. */
    public Checked<PlanChange> change(SourceText before, SourceText after, Optional<PriceList> prices) {
        List<Problem> problems = new ArrayList<>();
        PlanFileReader reader = new PlanFileReader(briefs, messages);
        Optional<PlanFile> old = reader.read(before).orTell(problems);
        Optional<PlanFile> next = reader.read(after).orTell(problems);
        return problems.isEmpty()
                ? new Checked.Good<>(PlanChange.between(of(old.orElseThrow()), of(next.orElseThrow()), prices))
                : new Checked.Bad<>(List.copyOf(problems));
    }

    private static PlanOf of(PlanFile file) {
        return new PlanOf(file.given().brief(), file.plan());
    }

    /** Tries every fault and slip of a made job's plan; its papers are then with the test order. Takes longest by far. */
    public MadeJob tried(MadeJob made, Consumer<Stage> told, FaultWatch watch) {
        told.accept(Stage.TRYING_FAULTS);
        FaultProof faults = FaultProver.prove(made.brief(), made.plan(), watch);
        told.accept(Stage.WRITING);
        Material all = new Material(
                made.brief(),
                made.plan(),
                made.proof(),
                Optional.of(faults),
                made.material().planText());
        return new MadeJob(all, made.shop(), made.search(), Papers.of(all, made.shop(), Optional.empty(), messages));
    }
}
