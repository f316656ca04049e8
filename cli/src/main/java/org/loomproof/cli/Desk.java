package org.loomproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomproof.cli.report.ComebackReport;
import org.loomproof.cli.report.DrainReport;
import org.loomproof.cli.report.FaultReport;
import org.loomproof.cli.report.JobReport;
import org.loomproof.cli.report.ProblemReport;
import org.loomproof.cli.report.ReadingsReport;
import org.loomproof.cli.report.ShockReport;
import org.loomproof.cli.report.WireReport;
import org.loomproof.shop.job.Answer;
import org.loomproof.shop.job.CarReadings;
import org.loomproof.shop.job.ComebackJson;
import org.loomproof.shop.job.Diagnosis;
import org.loomproof.shop.job.DrainJson;
import org.loomproof.shop.job.FaultsJson;
import org.loomproof.shop.job.JobOutcome;
import org.loomproof.shop.job.JobRun;
import org.loomproof.shop.job.PapersWanted;
import org.loomproof.shop.job.ReadingsJson;
import org.loomproof.shop.job.ResultJson;
import org.loomproof.shop.job.TriedFaults;
import org.loomproof.shop.meter.FindingJson;
import org.loomproof.shop.meter.MeterRun;
import org.loomproof.shop.meter.ShockJson;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.drain.DrainFinding;
import org.loomproof.workshop.meter.shock.Wanted;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Model.CommandSpec;

/** What every command that judges a job shares: run it, show the outcome as text or JSON, and answer with its code. */
final class Desk {

    /** Stands in the next command for the plan that was written. */
    static final String PLAN = "{plan}";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Messages messages;

    Desk(CommandSpec spec, Messages messages) {
        this.out = spec.commandLine().getOut();
        this.err = spec.commandLine().getErr();
        this.messages = messages;
    }

    /** Runs the job, shows how it ended, and gives the exit code. */
    int judge(Function<JobRun, JobOutcome> work, boolean json, String next) {
        try (Progress progress = progress()) {
            return judge(work, progress, json, next);
        }
    }

    /**
     * Writes the papers of a plan, shows how that ended, and gives the exit code. An interrupt ends only the search for faults.
     *
     * @param tests whether every fault is tried for the test order
     */
    int papers(Path plan, PapersWanted wanted, boolean tests, boolean json) {
        String next = "./loomproof prove " + plan;
        if (!tests) {
            return judge(run -> run.papers(plan, wanted, Optional.empty()), json, next);
        }
        try (Progress progress = progress();
                Patience patience = new Patience(progress::counted)) {
            return patience.told(judge(run -> run.papers(plan, wanted, Optional.of(patience)), progress, json, next));
        }
    }

    /** Proves a plan, shows how it stands, and gives the exit code. An interrupt ends the search only: the rest is open. */
    int prove(Path plan, boolean json) {
        String next = "./loomproof papers " + plan + " --out DIR";
        try (Progress progress = progress();
                Patience patience = new Patience(progress::counted)) {
            return patience.told(judge(run -> run.prove(plan, patience::isEnough), progress, json, next));
        }
    }

    private Progress progress() {
        return new Progress(err, messages, Boolean.getBoolean("loomproof.terminal"));
    }

    private int judge(Function<JobRun, JobOutcome> work, Progress progress, boolean json, String next) {
        long began = System.nanoTime();
        JobOutcome outcome = work.apply(new JobRun(messages, progress));
        progress.wipe();
        double seconds = (System.nanoTime() - began) / 1e9;
        return switch (outcome) {
            case JobOutcome.BadInput bad -> problems(bad.problems(), json);
            case JobOutcome.Judged judged -> {
                if (json) {
                    out.print(new ResultJson(messages)
                            .ofResult(
                                    judged.brief().kit(),
                                    judged.plan(),
                                    judged.proof(),
                                    judged.search(),
                                    judged.folder().map(Path::toString).orElse(""),
                                    judged.files()));
                } else {
                    show(judged, seconds, next);
                }
                out.flush();
                yield Answer.of(judged.plan(), judged.proof()).code();
            }
        };
    }

    /** Looks for what faults and slips of a plan come to, shows it, and gives the exit code. An interrupt ends the search only. */
    int tryFaults(Path plan, boolean pairs, boolean json, boolean all) {
        long began = System.nanoTime();
        try (Progress progress = progress();
                Patience patience = new Patience(progress::counted)) {
            Checked<TriedFaults> tried = new JobRun(messages, progress).faults(plan, pairs, patience);
            progress.wipe();
            return patience.told(show(tried, (System.nanoTime() - began) / 1e9, json, all));
        }
    }

    private int show(Checked<TriedFaults> tried, double seconds, boolean json, boolean all) {
        return switch (tried) {
            case Checked.Bad<TriedFaults>(var problems) -> problems(problems, json);
            case Checked.Good<TriedFaults>(TriedFaults faults) -> {
                if (json) {
                    out.print(new FaultsJson(messages).of(faults));
                } else {
                    new FaultReport(messages).lines(faults, all).forEach(out::println);
                    out.println(messages.text("report.took", seconds));
                }
                out.flush();
                yield faults.isWhole() ? 0 : ExitCode.STOPPED;
            }
        };
    }

    /** Shows what a meter must show at a plan's circuits, and gives the exit code. */
    int expect(Path plan, boolean json) {
        Checked<CarReadings> readings;
        try (Progress progress = progress()) {
            readings = new JobRun(messages, progress).readings(plan);
        }
        return answer(readings, json, new ReadingsJson(messages)::of, new ReadingsReport(messages)::lines);
    }

    /** Shows what each wire of a file of readings is, and gives the exit code. */
    int identify(Path readings, Optional<Path> sheet, Costs costs, boolean json) {
        return answer(
                new MeterRun().identify(readings, sheet, costs),
                json,
                findings -> new FindingJson(messages).of(findings, costs),
                findings -> new WireReport(messages).lines(findings, costs));
    }

    /** Shows what a log of the current after locking says, and gives the exit code. */
    int drain(Path plan, Path readings, boolean json) {
        Checked<DrainFinding> looked;
        try (Progress progress = progress()) {
            looked = new JobRun(messages, progress).drain(plan, readings);
        }
        return answer(looked, json, new DrainJson(messages)::of, new DrainReport(messages)::lines);
    }

    /** Shows how the setting of a shock sensor stands, and gives the exit code. */
    int shock(Path blows, Wanted wanted, boolean json) {
        return answer(
                new MeterRun().shock(blows, wanted),
                json,
                new ShockJson()::of,
                finding -> new ShockReport(messages).lines(finding, wanted));
    }

    /** Looks into a comeback, shows how it stands, and gives the exit code. */
    int comeback(Path plan, List<String> symptoms, boolean nowAndThen, Optional<Path> readings, boolean json) {
        try (Progress progress = progress();
                Patience patience = new Patience(progress::counted)) {
            Checked<Diagnosis> looked =
                    new JobRun(messages, progress).comeback(plan, symptoms, nowAndThen, readings, patience);
            progress.wipe();
            return patience.told(
                    answer(looked, json, new ComebackJson(messages)::of, new ComebackReport(messages)::lines));
        }
    }

    /** Shows an answer as JSON or as lines, or every problem, and gives the exit code. */
    private <T> int answer(
            Checked<T> answer, boolean json, Function<T, String> asJson, Function<T, List<String>> asLines) {
        return switch (answer) {
            case Checked.Bad<T>(var problems) -> problems(problems, json);
            case Checked.Good<T>(T value) -> {
                if (json) {
                    out.print(asJson.apply(value));
                } else {
                    asLines.apply(value).forEach(out::println);
                }
                out.flush();
                yield 0;
            }
        };
    }

    /** Shows every problem and gives the exit code of bad input. */
    int problems(List<Problem> problems, boolean json) {
        if (json) {
            out.print(new ResultJson(messages).ofProblems(problems));
            out.flush();
        } else {
            new ProblemReport(messages).lines(problems).forEach(err::println);
            err.flush();
        }
        return ExitCode.BAD_INPUT;
    }

    private void show(JobOutcome.Judged judged, double seconds, String next) {
        JobReport report = new JobReport(messages);
        report.body(judged.brief(), judged.plan(), judged.proof(), judged.search(), judged.proofReport())
                .forEach(out::println);
        out.println();
        report.summary(judged.plan(), judged.proof()).forEach(out::println);
        out.println(messages.text("report.took", seconds));
        judged.planFile().ifPresent(file -> out.println(messages.text("report.plan", file)));
        judged.folder().ifPresent(folder -> out.println(messages.text("report.papers", folder)));
        String plan = judged.planFile().map(Path::toString).orElse("");
        out.println(messages.text("report.next", next.replace(PLAN, plan)));
    }
}
