package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.loomproof.papers.Papers;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.BlankPlan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Runs one job from its files to its papers. Papers are written whole or not at all, and never on bad input. */
public final class JobRun {

    private final Messages messages;
    private final Consumer<Stage> told;
    private final BriefReader briefs;

    /**
     * @param messages the language of the papers
     * @param told hears each stage as it begins
     */
    public JobRun(Messages messages, Consumer<Stage> told) {
        this.messages = messages;
        this.told = told;
        TradeDefaults usual = TradeDefaults.read();
        this.briefs = new BriefReader(usual, new SheetCompletion(usual));
    }

    /** Plans the job in the three files, proves the plan, and writes the papers into the folder. */
    public JobOutcome plan(Path sheet, Path kit, Path order, Path out) {
        told.accept(Stage.READING);
        return switch (briefs.read(sheet, kit, order)) {
            case Checked.Bad<ReadBrief> bad -> new JobOutcome.BadInput(bad.problems());
            case Checked.Good<ReadBrief> good -> {
                told.accept(Stage.PLANNING);
                PlannedJob job = new Weigher().weigh(good.value().brief());
                yield judged(good.value(), job.plan(), job.proof().alsoBoundedBy(job.bounds()), Optional.of(out));
            }
        };
    }

    /** Proves a plan again as it stands in its file; papers are written only where a folder is given. */
    public JobOutcome prove(Path plan, Optional<Path> out) {
        told.accept(Stage.READING);
        return switch (new PlanFileReader(briefs, messages).read(plan)) {
            case Checked.Bad<PlanFile> bad -> new JobOutcome.BadInput(bad.problems());
            case Checked.Good<PlanFile> good -> {
                told.accept(Stage.PROVING);
                PlanFile file = good.value();
                Proof proof = Prover.prove(file.given().brief(), file.plan());
                yield judged(file.given(), file.plan(), proof, out);
            }
        };
    }

    /** A plan to be written by hand: every lead on hold, with the three files inside. */
    public Checked<String> blank(Path sheet, Path kit, Path order) {
        return switch (briefs.read(sheet, kit, order)) {
            case Checked.Bad<ReadBrief> bad -> new Checked.Bad<>(bad.problems());
            case Checked.Good<ReadBrief> good ->
                new Checked.Good<>(new PlanFileWriter(messages)
                        .writeBlank(new PlanFile(
                                good.value(), BlankPlan.of(good.value().brief().kit()))));
        };
    }

    private JobOutcome judged(ReadBrief given, Plan plan, Proof proof, Optional<Path> out) {
        if (out.isEmpty()) {
            return new JobOutcome.Judged(given.brief(), plan, proof, Optional.empty(), List.of());
        }
        told.accept(Stage.WRITING);
        String planText = new PlanFileWriter(messages).write(new PlanFile(given, plan));
        List<Paper> papers = Papers.of(given.brief(), plan, proof, planText, messages);
        return switch (PaperFolder.write(out.get(), papers)) {
            case FolderOutcome.Written written ->
                new JobOutcome.Judged(
                        given.brief(),
                        plan,
                        proof,
                        Optional.of(written.folder()),
                        papers.stream().map(Paper::name).sorted().toList());
            case FolderOutcome.Refused refused ->
                new JobOutcome.BadInput(List.of(new Problem(
                        Place.file(refused.folder().toString()),
                        ProblemKind.FOLDER_NOT_OURS,
                        refused.folder().toString(),
                        Phrase.of("problem.wanted.folder"),
                        refused.because())));
        };
    }
}
