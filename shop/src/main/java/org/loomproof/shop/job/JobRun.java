package org.loomproof.shop.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.loomproof.papers.Material;
import org.loomproof.papers.Papers;
import org.loomproof.papers.ShopFacts;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.change.PlanOf;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.meter.comeback.Comeback;
import org.loomproof.workshop.meter.comeback.Symptom;
import org.loomproof.workshop.meter.comeback.Taken;
import org.loomproof.workshop.meter.comeback.TakenReader;
import org.loomproof.workshop.meter.drain.DrainFinding;
import org.loomproof.workshop.meter.drain.DrainLog;
import org.loomproof.workshop.meter.drain.DrainReader;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.BlankPlan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
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

    /** Plans the job in the three files, proves the plan, and writes the papers. */
    public JobOutcome plan(Path sheet, Path kit, Path order, PapersWanted wanted) {
        told.accept(Stage.READING);
        return with(briefs.read(sheet, kit, order), wanted.shop(), (given, shop) -> {
            told.accept(Stage.PLANNING);
            PlannedJob job = new Weigher().weigh(given.brief());
            Proof proof = job.proof().alsoBoundedBy(job.bounds());
            return written(given, job.plan(), proof, job.search(), Optional.empty(), wanted, shop);
        });
    }

    /**
     * Proves a plan again as it stands in its file and writes the papers.
     *
     * @param tests watches while every fault is tried for the test order, which takes longest by far; without it there is none
     */
    public JobOutcome papers(Path plan, PapersWanted wanted, Optional<FaultWatch> tests) {
        told.accept(Stage.READING);
        return with(new PlanFileReader(briefs, messages).read(plan), wanted.shop(), (file, shop) -> {
            Proof proof = proven(file, () -> false);
            Optional<FaultProof> faults = tests.map(watch -> tried(file, watch));
            return written(file.given(), file.plan(), proof, Search.NONE, faults, wanted, shop);
        });
    }

    /**
     * Proves a plan again as it stands in its file, and writes nothing.
     *
     * @param isEnough true from when nothing more is to be looked at: what is not decided by then is open
     */
    public JobOutcome prove(Path plan, BooleanSupplier isEnough) {
        told.accept(Stage.READING);
        return with(
                new PlanFileReader(briefs, messages).read(plan),
                ShopFiles.NONE,
                (file, shop) -> new JobOutcome.Judged(
                        file.given().brief(),
                        file.plan(),
                        proven(file, isEnough),
                        Search.NONE,
                        Optional.empty(),
                        List.of()));
    }

    /** What changes from one plan to another, or every problem of the files; nothing is proven and nothing written. */
    public Checked<PlanChange> change(Path before, Path after, Optional<Path> priceFile) {
        told.accept(Stage.READING);
        List<Problem> problems = new ArrayList<>();
        PlanFileReader reader = new PlanFileReader(briefs, messages);
        Optional<PlanFile> old = reader.read(before).orTell(problems);
        Optional<PlanFile> next = reader.read(after).orTell(problems);
        Optional<PriceList> prices =
                priceFile.flatMap(file -> PriceListReader.read(file).orTell(problems));
        return problems.isEmpty()
                ? new Checked.Good<>(PlanChange.between(of(old.orElseThrow()), of(next.orElseThrow()), prices))
                : new Checked.Bad<>(List.copyOf(problems));
    }

    private static PlanOf of(PlanFile file) {
        return new PlanOf(file.given().brief(), file.plan());
    }

    private Proof proven(PlanFile file, BooleanSupplier isEnough) {
        told.accept(Stage.PROVING);
        return Prover.prove(file.given().brief(), file.plan(), isEnough);
    }

    /** Goes on with what was read, or tells the problems of all files at once. */
    private static <T> JobOutcome with(Checked<T> read, ShopFiles files, BiFunction<T, ShopFacts, JobOutcome> work) {
        List<Problem> problems = new ArrayList<>();
        ShopFacts shop = files.read(problems);
        Optional<T> job = read.orTell(problems);
        return problems.isEmpty()
                ? work.apply(job.orElseThrow(), shop)
                : new JobOutcome.BadInput(List.copyOf(problems));
    }

    /**
     * Looks for what every fault and slip of a plan comes to, and for the tests that notice them; nothing is written.
     *
     * @param pairs whether every two at once are tried as well
     */
    public Checked<TriedFaults> faults(Path plan, boolean pairs, FaultWatch watch) {
        told.accept(Stage.READING);
        return switch (new PlanFileReader(briefs, messages).read(plan)) {
            case Checked.Bad<PlanFile>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<PlanFile>(var file) -> {
                Brief brief = file.given().brief();
                if (!pairs) {
                    yield new Checked.Good<>(new TriedFaults(brief, tried(file, watch), Optional.empty()));
                }
                told.accept(Stage.TRYING_FAULTS);
                FaultProver.Pairwise all = FaultProver.provePairs(brief, file.plan(), watch);
                yield new Checked.Good<>(new TriedFaults(brief, all.faults(), Optional.of(all.pairs())));
            }
        };
    }

    private FaultProof tried(PlanFile file, FaultWatch watch) {
        told.accept(Stage.TRYING_FAULTS);
        return FaultProver.prove(file.given().brief(), file.plan(), watch);
    }

    /** What a meter must show at every circuit of a plan; nothing is proven and nothing written. */
    public Checked<CarReadings> readings(Path plan) {
        told.accept(Stage.READING);
        return switch (new PlanFileReader(briefs, messages).read(plan)) {
            case Checked.Bad<PlanFile>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<PlanFile>(var file) -> {
                Brief brief = file.given().brief();
                yield new Checked.Good<>(new CarReadings(brief, ExpectedReadings.of(brief, file.plan())));
            }
        };
    }

    /**
     * What is behind a comeback of a car that was fitted by a plan.
     *
     * @param said the words for what the owner complains of
     * @param readings what was measured at the finished car
     */
    public Checked<Diagnosis> comeback(
            Path plan, List<String> said, boolean nowAndThen, Optional<Path> readings, FaultWatch watch) {
        told.accept(Stage.READING);
        List<Problem> problems = new ArrayList<>();
        Set<Symptom> symptoms = symptoms(said, problems);
        Optional<PlanFile> file =
                new PlanFileReader(briefs, messages).read(plan).orTell(problems);
        if (!problems.isEmpty()) {
            return new Checked.Bad<>(List.copyOf(problems));
        }
        told.accept(Stage.TRYING_FAULTS);
        Brief brief = file.orElseThrow().given().brief();
        Plan fitted = file.orElseThrow().plan();
        Comeback comeback = Comeback.of(brief, fitted, FaultProver.prove(brief, fitted, watch));
        List<Taken> taken = readings.flatMap(
                        path -> new TakenReader(comeback).read(path).orTell(problems))
                .orElse(List.of());
        return problems.isEmpty()
                ? new Checked.Good<>(new Diagnosis(
                        brief,
                        symptoms,
                        nowAndThen,
                        taken.size(),
                        comeback.words(),
                        comeback.find(symptoms, nowAndThen, taken)))
                : new Checked.Bad<>(List.copyOf(problems));
    }

    /** What a log of the current after locking says of a car that was fitted by a plan. */
    public Checked<DrainFinding> drain(Path plan, Path readings) {
        told.accept(Stage.READING);
        return switch (new PlanFileReader(briefs, messages).read(plan)) {
            case Checked.Bad<PlanFile>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<PlanFile>(var file) -> drain(file.given().brief(), file.plan(), readings);
        };
    }

    private static Checked<DrainFinding> drain(Brief brief, Plan fitted, Path readings) {
        return switch (DrainReader.read(readings, brief, fitted)) {
            case Checked.Bad<DrainLog>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<DrainLog>(var log) -> new Checked.Good<>(DrainFinding.of(brief, fitted, log));
        };
    }

    private static Set<Symptom> symptoms(List<String> said, List<Problem> problems) {
        Map<String, Symptom> words = Words.all(Symptom.class);
        Set<Symptom> symptoms = EnumSet.noneOf(Symptom.class);
        for (String word : said) {
            Optional<Symptom> symptom = Optional.ofNullable(words.get(word.strip()));
            symptom.ifPresentOrElse(
                    symptoms::add,
                    () -> problems.add(new Problem(
                            Place.nowhere("--symptoms"),
                            ProblemKind.NOT_ONE_OF,
                            word,
                            Phrase.of("problem.wanted.one-of", List.copyOf(words.keySet())),
                            Words.hint(word, List.copyOf(words.keySet())))));
        }
        return symptoms;
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

    private JobOutcome written(
            ReadBrief given,
            Plan plan,
            Proof proof,
            Search search,
            Optional<FaultProof> faults,
            PapersWanted wanted,
            ShopFacts shop) {
        told.accept(Stage.WRITING);
        String planText = new PlanFileWriter(messages).write(new PlanFile(given, plan));
        List<Paper> papers =
                Papers.of(new Material(given.brief(), plan, proof, faults, planText), shop, wanted.print(), messages);
        return switch (PaperFolder.write(wanted.folder(), papers)) {
            case FolderOutcome.Written written ->
                new JobOutcome.Judged(
                        given.brief(),
                        plan,
                        proof,
                        search,
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
