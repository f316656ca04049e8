package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Change;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.ClaimAgain;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.replay.WitnessInTime;
import org.loomproof.workshop.replay.WitnessInTime.Told;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;

/**
 * Every witness of the examples carried out step by step in time, the controller with its clocks in the network of the whole car: of what
 * is declared of a plan, and of what each fault and slip breaks. Where a fuse opens first, the car is the one in which it has.
 *
 * <p>What is worse in time is counted: a coil cut off without a way for its current, and a controller that its own loads put to sleep again
 * and again. Counted as well is what asks for contacts that none of the steps leaves so: the prover tries every relay pulled in, and not
 * only those that somebody has pulled in.
 */
class WitnessInTimeTest {

    /** What takes figures at the ends of their ranges, a warmth or volts between supply points is not seen in a typical car. */
    private static final String AT_ENDS = "not in a typical car, not carried out";

    @ParameterizedTest
    @MethodSource("folders")
    void everyWitnessCarriedOutInTimeShowsWhatItClaims(Path folder) {
        Tally tally = new Tally();
        Job job = new Job(folder);
        job.planned().forEach(each -> tally.count(each.name(), job.asPlanned().told(each.claim(), each.witness())));
        for (MishapResult result : PlannedExamples.faults(folder).results()) {
            Cars cars = new Cars(job, result);
            for (Break each : result.breaks()) {
                if (each.takesEnds()) {
                    tally.add(AT_ENDS);
                } else {
                    tally.count(result.mishap().id() + ", " + each.claim(), cars.told(each));
                }
            }
        }
        tally.note(ExampleFiles.root().relativize(folder).toString());
        assertThat(tally.others).isEmpty();
        assertThat(tally.notShown()).isLessThanOrEqualTo(tally.counted() / 10);
    }

    /** The alarm bell: without its steps, or with other figures, no witness is shown. */
    @Test
    void aWitnessWithoutItsStepsOrWithOtherFiguresIsNotShown() {
        Job job = new Job(ExampleFiles.root().resolve("circuits/locks-legs-at-ground"));
        MishapResult result = PlannedExamples.faults(job.folder).results().stream()
                .filter(each -> each.mishap().id().equals("wire-open W1"))
                .findFirst()
                .orElseThrow();
        Break each = result.breaks().stream()
                .filter(b -> b.claim().startsWith("does-its-work P1-1"))
                .findFirst()
                .orElseThrow();
        Cars cars = new Cars(job, result);
        Witness witness = each.witness();
        assertThat(cars.told(each)).isInstanceOf(Told.Same.class);
        assertThat(cars.told(with(each, new Witness(List.of(), witness.situation(), witness.seen()))))
                .isInstanceOf(Told.Other.class);
        Observation first = witness.seen().getFirst();
        assertThat(cars.told(with(
                        each,
                        new Witness(
                                witness.steps(), witness.situation(), List.of(new Observation(first.at(), "5 V"))))))
                .isInstanceOf(Told.Other.class);
    }

    private static Break with(Break each, Witness witness) {
        return new Break(
                each.claim(),
                each.statement(),
                each.severity(),
                each.worst(),
                witness,
                each.takesEnds(),
                each.isSure());
    }

    /** What came of the witnesses of one job. */
    private static final class Tally {
        private final Map<String, Integer> counts = new TreeMap<>();
        private final List<String> told = new ArrayList<>();
        private final List<String> others = new ArrayList<>();

        void count(String what, Told of) {
            switch (of) {
                case Told.Same same -> add("shown");
                case Told.SetOff setOff -> add("shown by an alarm that comes first");
                case Told.Worse(TimeOutcome.Reason reason) -> {
                    assertThat(reason)
                            .as(what)
                            .isInstanceOfAny(TimeOutcome.NoWayForCurrent.class, TimeOutcome.Chattering.class);
                    addNotShown("worse in time", what);
                }
                case Told.Elsewhere elsewhere -> addNotShown("contacts left otherwise", what);
                case Told.No(String why) -> others.add(what + ": " + why);
                case Told.Other(String why) -> others.add(what + ": " + why);
            }
        }

        private void add(String what) {
            counts.merge(what, 1, Integer::sum);
        }

        private void addNotShown(String why, String what) {
            add(why);
            told.add(why + ": " + what);
        }

        int counted() {
            return counts.values().stream().mapToInt(n -> n).sum();
        }

        int notShown() {
            return told.size();
        }

        void note(String name) {
            Note.that(name + ": witnesses in time " + counts + (told.isEmpty() ? "" : " " + told));
        }
    }

    /** One example, planned. */
    private static final class Job {
        private final Path folder;
        private final Plan plan;
        private final Brief brief;
        private final Wired wired;

        Job(Path folder) {
            this.folder = folder;
            this.plan = PlannedExamples.job(folder).plan();
            this.brief = ExamplesAreReadTest.brief(folder).set(plan.settings());
            this.wired = Vehicle.fitted(brief, plan, Corner.TYPICAL).wired();
        }

        record Planned(String name, String claim, Witness witness) {}

        /** Whatever was found broken or declared. */
        List<Planned> planned() {
            List<Planned> planned = new ArrayList<>();
            for (ClaimResult result : PlannedExamples.job(folder).proof().results()) {
                switch (result.verdict()) {
                    case Verdict.Broken broken -> planned.add(new Planned("as planned", result.id(), broken.witness()));
                    case Verdict.Declared declared ->
                        planned.add(new Planned("declared", result.id(), declared.witness()));
                    case Verdict.Holds holds -> {}
                    case Verdict.Open open -> {}
                }
            }
            return planned;
        }

        WitnessInTime asPlanned() {
            return new WitnessInTime(brief, new ClaimAgain(brief, plan, Optional.empty()));
        }
    }

    /** The damaged car, and what becomes of it as fuses open. */
    private static final class Cars {
        private final Job job;
        private final List<Damage> damages = new ArrayList<>();
        private final List<ClaimAgain> claims = new ArrayList<>();
        private final List<WitnessInTime> cars = new ArrayList<>();

        Cars(Job job, MishapResult result) {
            this.job = job;
            Damage damage = Damage.of(result.mishap(), job.plan, job.wired);
            damages.add(damage);
            List<PartId> fuses = opened(job.wired, result);
            fuses.forEach(fuse -> damages.add(broken(damage, List.of(fuse))));
            if (fuses.size() > 1) {
                damages.add(broken(damage, fuses));
            }
            fuses.forEach(fuse -> damages.add(Damage.openedFuse(job.plan, fuse)));
        }

        private static List<PartId> opened(Wired wired, MishapResult result) {
            Set<PartId> fuses = new LinkedHashSet<>();
            wired.network().parts().stream()
                    .filter(Fuse.class::isInstance)
                    .map(Part::id)
                    .forEach(fuses::add);
            wired.added().parts().values().stream().map(Reach::part).forEach(fuses::add);
            fuses.removeIf(part -> !result.opens().contains(wired.words(part)));
            return List.copyOf(fuses);
        }

        private static Damage broken(Damage damage, List<PartId> fuses) {
            List<Change> changes = new ArrayList<>(damage.changes());
            fuses.forEach(fuse -> changes.add(new Change.Broken(fuse)));
            return new Damage(damage.plan(), changes);
        }

        /** What the car shows that shows most of it. */
        Told told(Break each) {
            Told best = told(0, each);
            for (int car = 1; car < damages.size() && !(best instanceof Told.Same); car++) {
                Told later = told(car, each);
                best = rank(later) < rank(best) ? later : best;
            }
            return best;
        }

        private static int rank(Told told) {
            return switch (told) {
                case Told.Same same -> 0;
                case Told.SetOff setOff -> 1;
                case Told.Worse worse -> 2;
                case Told.Elsewhere elsewhere -> 3;
                case Told.Other other -> 4;
                case Told.No no -> 5;
            };
        }

        private Told told(int car, Break each) {
            if (car == cars.size()) {
                claims.add(new ClaimAgain(job.brief, job.plan, Optional.of(damages.get(car))));
                cars.add(new WitnessInTime(job.brief, claims.get(car)));
            }
            return claims.get(car).isAsked(each.claim())
                    ? cars.get(car).told(each.claim(), each.witness())
                    : new Told.No("not asked of that car");
        }
    }

    static List<Path> folders() {
        return Sample.of(ExampleFiles.list(), 3);
    }
}
