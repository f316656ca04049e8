package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.meter.comeback.Cause;
import org.loomproof.workshop.meter.comeback.Comeback;
import org.loomproof.workshop.meter.comeback.Finding;
import org.loomproof.workshop.meter.comeback.Look;
import org.loomproof.workshop.meter.comeback.Symptom;
import org.loomproof.workshop.meter.comeback.Taken;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.VehicleWiring;

/**
 * Every fault and slip of an example is planted in turn in a car drawn from all that its sheet may describe; the owner tells some
 * of what it does, a hand measures what is asked for with a meter that errs, and the cause must come out.
 */
class ComebackOfExamplesTest {

    /** Of so few pairs a share may lie a fifth beside that of all, which is 81 %. */
    private static final int A_FEW = 30;

    private static final int MOST_LOOKS = 12;
    private static final int PAIRS_AN_EXAMPLE = 12;
    private static final List<Corner.Taken> ENDS = List.of(Corner.Taken.values());

    /** What became of one planted cause. */
    private record Ended(int looks, int rank, boolean sure) {}

    @Test
    void everyPlantedCauseComesOut() {
        List<Ended> all = new ArrayList<>();
        for (Path folder : Sample.bySeed(ExampleFiles.list(), 4)) {
            List<Ended> here = planted(folder);
            all.addAll(here);
            tell(folder.getFileName().toString(), here);
        }
        tell("all", all);
        assertThat(share(all, e -> e.rank() == 1)).as("found first").isGreaterThan(0.9);
        assertThat(share(all, e -> e.rank() <= 3)).as("among the first three").isGreaterThan(0.96);
        assertThat(share(all, e -> e.sure() && e.rank() > 1))
                .as("sure and wrong")
                .isLessThan(0.03);
    }

    /** What became of two planted at once. */
    private record EndedTwo(boolean together, boolean oneFirst, boolean bothFirst, boolean afterMending) {}

    /**
     * Two at once, at random. Where no single cause would bring all that the owner tells, both come out; else one does, and the
     * other once the first is mended and the owner comes again.
     */
    @Test
    void ofTwoCausesAtOnceBothComeOut() {
        List<EndedTwo> all = new ArrayList<>();
        for (Path folder : Sample.bySeed(ExampleFiles.list(), 4)) {
            all.addAll(plantedByTwos(folder));
        }
        List<EndedTwo> together = all.stream().filter(EndedTwo::together).toList();
        List<EndedTwo> apart = all.stream().filter(two -> !two.together()).toList();
        Note.that(String.format(
                Locale.ROOT,
                "comeback by twos: %d pairs; of %d that no single cause explains both first in %d, one in %d; of %d others one first in %d, the other after mending in %d",
                all.size(),
                together.size(),
                together.stream().filter(EndedTwo::bothFirst).count(),
                together.stream().filter(EndedTwo::oneFirst).count(),
                apart.size(),
                apart.stream().filter(EndedTwo::oneFirst).count(),
                apart.stream().filter(EndedTwo::afterMending).count()));
        assertThat(all).isNotEmpty();
        assertThat(share(together, EndedTwo::bothFirst))
                .as("both first")
                .isGreaterThan(together.size() < A_FEW ? 0.5 : 0.7);
        assertThat(share(all, EndedTwo::oneFirst)).as("one of two first").isGreaterThan(0.85);
        assertThat(share(apart, EndedTwo::afterMending))
                .as("the other after mending")
                .isGreaterThan(0.85);
    }

    private static List<EndedTwo> plantedByTwos(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Plan plan = PlannedExamples.job(folder).plan();
        if (plan.wires().isEmpty()) {
            return List.of();
        }
        Comeback comeback = Comeback.of(brief, plan, PlannedExamples.faults(folder));
        Owner owner = new Owner(brief.set(plan.settings()), plan, 5);
        List<Cause> causes = comeback.causes().stream()
                .filter(cause -> !cause.isElsewhere() && !cause.symptoms().isEmpty())
                .toList();
        return IntStream.range(0, PAIRS_AN_EXAMPLE)
                .boxed()
                .flatMap(k -> owner.bringsBoth(comeback, causes).stream())
                .toList();
    }

    private static void tell(String name, List<Ended> ended) {
        if (!ended.isEmpty()) {
            Note.that(String.format(
                    Locale.ROOT,
                    "comeback %s: %d causes planted; first %.0f %%, among three %.0f %%, sure and wrong %.1f %%; %.1f measurements",
                    name,
                    ended.size(),
                    100 * share(ended, e -> e.rank() == 1),
                    100 * share(ended, e -> e.rank() <= 3),
                    100 * share(ended, e -> e.sure() && e.rank() > 1),
                    ended.stream().mapToInt(Ended::looks).average().orElse(0)));
        }
    }

    private static <T> double share(List<T> all, Predicate<T> wanted) {
        return all.stream().filter(wanted).count() / (double) all.size();
    }

    private static List<Ended> planted(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Plan plan = PlannedExamples.job(folder).plan();
        if (plan.wires().isEmpty()) {
            return List.of();
        }
        Comeback comeback = Comeback.of(brief, plan, PlannedExamples.faults(folder));
        Owner owner = new Owner(
                brief.set(plan.settings()),
                plan,
                folder.getFileName().toString().hashCode());
        return comeback.causes().stream()
                .filter(cause -> !cause.isElsewhere() && !cause.symptoms().isEmpty())
                .map(cause -> owner.brings(cause, comeback))
                .toList();
    }

    /** Who brings the car, and the hand that measures it. */
    private record Owner(Brief brief, Plan plan, SplittableRandom chance) {

        Owner(Brief brief, Plan plan, long seed) {
            this(brief, plan, new SplittableRandom(seed));
        }

        Ended brings(Cause cause, Comeback comeback) {
            List<Taken> taken = new ArrayList<>();
            Finding last = looked(comeback, said(cause), car(damage(cause)), taken);
            double own = last.suspects().stream()
                    .filter(s -> s.causes().equals(List.of(cause)))
                    .mapToDouble(s -> s.probability())
                    .findFirst()
                    .orElseThrow();
            int rank = (int) IntStream.range(0, last.suspects().size())
                            .filter(k -> last.suspects().get(k).probability() > own * 1.0001)
                            .count()
                    + 1;
            return new Ended(taken.size(), rank, last.isSettled());
        }

        /** Two causes at random; nothing when they are at the same place, so that they cannot be there at once. */
        Optional<EndedTwo> bringsBoth(Comeback comeback, List<Cause> causes) {
            Cause one = causes.get(chance.nextInt(causes.size()));
            Cause other = causes.get(chance.nextInt(causes.size()));
            return damage(one, other).map(damage -> {
                Set<Symptom> said = said(one);
                said.addAll(said(other));
                boolean together =
                        causes.stream().noneMatch(cause -> cause.symptoms().containsAll(said));
                List<Cause> found = first(looked(comeback, said, car(damage), new ArrayList<>()));
                boolean first = found.contains(one);
                Cause left = first ? other : one;
                List<Cause> then = first(looked(comeback, said(left), car(damage(left)), new ArrayList<>()));
                return new EndedTwo(
                        together, first || found.contains(other), first && found.contains(other), then.contains(left));
            });
        }

        private static List<Cause> first(Finding finding) {
            return finding.suspects().getFirst().causes();
        }

        private Finding looked(Comeback comeback, Set<Symptom> said, Vehicle car, List<Taken> taken) {
            double battery = chance.nextDouble(11.9, 12.9);
            Finding finding = comeback.find(said, false, taken);
            while (finding.next().isPresent() && taken.size() < MOST_LOOKS) {
                Look look = finding.next().get().look();
                taken.add(new Taken(look, measured(car, look, battery), battery));
                finding = comeback.find(said, false, taken);
            }
            return finding;
        }

        /** Each of what there is to tell with seven chances in ten; one at least. */
        private Set<Symptom> said(Cause cause) {
            List<Symptom> all = cause.symptoms().stream().sorted().toList();
            Set<Symptom> said = EnumSet.of(all.get(chance.nextInt(all.size())));
            all.stream().filter(s -> chance.nextDouble() < 0.7).forEach(said::add);
            return said;
        }

        private Damage damage(Cause cause) {
            return Damage.of(cause.mishaps().getFirst(), plan, VehicleWiring.fitted(brief, plan, Corner.TYPICAL));
        }

        private Optional<Damage> damage(Cause one, Cause other) {
            return Damage.both(
                    one.mishaps().getFirst(),
                    other.mishaps().getFirst(),
                    brief,
                    plan,
                    VehicleWiring.fitted(brief, plan, Corner.TYPICAL));
        }

        private Vehicle car(Damage damage) {
            Corner corner = Corner.TYPICAL;
            for (RangedFigure figure :
                    VehicleWiring.fitted(brief, plan, Corner.TYPICAL).ranged()) {
                corner = corner.with(figure.key(), ENDS.get(chance.nextInt(ENDS.size())));
            }
            return damage.vehicle(brief, corner);
        }

        /** With half a per cent and a few hundredths of a volt of error; what nothing holds wanders. */
        private double measured(Vehicle car, Look look, double battery) {
            Optional<Node> node = look.at().node(car.wired());
            SolveOutcome outcome = Solver.of(car.wired().network())
                    .solve(car.settings().of(look.when()).emf(car.wired().battery(), battery));
            if (node.isEmpty() || !(outcome instanceof SolveOutcome.Settled settled)) {
                return chance.nextDouble(battery);
            }
            return settled.point().isFloating(node.get())
                    ? chance.nextDouble(0.4)
                    : Objects.requireNonNull(settled).point().volts(node.get()) * chance.nextDouble(0.995, 1.005)
                            + chance.nextDouble(-0.04, 0.04);
        }
    }
}
