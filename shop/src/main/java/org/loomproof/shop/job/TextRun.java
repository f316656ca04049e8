package org.loomproof.shop.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Search;
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
        return with(briefs.read(sheet, kit, order), texts, (read, shop) -> {
            JudgedJob job = judge(read.brief(), told, beforeEachProof);
            return made(new PlanFile(read, job.plan()), job.proof(), job.search(), shop, told);
        });
    }

    /**
     * Proves a plan that was changed by hand and makes its papers.
     *
     * @param file as {@link #byHand} reads it
     * @param texts what the papers take from the shop
     * @param told hears each stage as it begins
     */
    public Checked<MadeJob> makeByHand(Checked<PlanFile> file, ShopTexts texts, Consumer<Stage> told) {
        told.accept(Stage.READING);
        return with(file, texts, (plan, shop) -> {
            told.accept(Stage.PROVING);
            Proof proof = Prover.prove(plan.given().brief(), plan.plan());
            return made(plan, proof, Search.NONE, shop, told);
        });
    }

    /** A plan of which only what was decided is written, with the three texts it was decided for; or the problems of these three, or those of the plan. */
    public Checked<PlanFile> byHand(SourceText decided, SourceText sheet, SourceText kit, SourceText order) {
        return switch (briefs.read(sheet, kit, order)) {
            case Checked.Bad<ReadBrief>(List<Problem> problems) -> new Checked.Bad<>(problems);
            case Checked.Good<ReadBrief>(ReadBrief given) ->
                new PlanFileReader(briefs, messages).readDecided(decided, given);
        };
    }

    /** Goes on with what was read, or tells the problems of all texts at once. */
    private <T> Checked<MadeJob> with(Checked<T> read, ShopTexts texts, BiFunction<T, ShopFacts, MadeJob> work) {
        List<Problem> problems = new ArrayList<>();
        Optional<T> job = read.orTell(problems);
        ShopFacts shop = texts.read(problems, messages.locale());
        return problems.isEmpty()
                ? new Checked.Good<>(work.apply(job.orElseThrow(), shop))
                : new Checked.Bad<>(List.copyOf(problems));
    }

    private MadeJob made(PlanFile file, Proof proof, Search search, ShopFacts shop, Consumer<Stage> told) {
        told.accept(Stage.WRITING);
        String planText = new PlanFileWriter(messages).write(file);
        Material material = new Material(file.given().brief(), file.plan(), proof, Optional.empty(), planText);
        return new MadeJob(material, shop, search, Papers.of(material, shop, Optional.empty(), messages));
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
