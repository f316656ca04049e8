package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.SeenAtACorner;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Onlooker;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;

/**
 * Faults and slips at the ends of ranged figures, by brute force: the small examples with every combination of all ends, cold, at
 * room temperature and hot, each claim asked in every situation of the damaged vehicle, nothing screened and nothing taken over. The
 * claims broken somewhere are those that the fault search says are broken, and a test that notices shows something in each of these
 * cars.
 */
class FaultsAtEndsTest {

    private static final int MOST_FIGURES = 4;

    /** What an open case is open for, where a damage makes it so: all of these count as broken by the damage. */
    private static final Set<String> BROKEN_IN_EFFECT =
            Set.of("open.between-supply-points", "open.pulse-left", "open.on-hold");

    @ParameterizedTest
    @MethodSource("folders")
    void whatIsBrokenAtAnyEndIsFoundAndWhatIsNoticedIsNoticedAtAll(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        Brief brief = ExamplesAreReadTest.brief(folder).set(plan.settings());
        Whole whole = new Whole(brief, plan);
        if (whole.figures().size() > MOST_FIGURES) {
            return;
        }
        FaultProof proof = PlannedExamples.faults(folder);
        List<Integer> comparable = new ArrayList<>();
        for (int k = 0; k < proof.results().size(); k++) {
            MishapResult result = proof.results().get(k);
            if (result.opens().isEmpty() && result.undecided().isEmpty()) {
                comparable.add(k);
            }
        }
        int atEnds = 0;
        int noticed = 0;
        for (int k : Sample.of(comparable, 8)) {
            MishapResult result = proof.results().get(k);
            Damage damage = Damage.of(
                    result.mishap(), plan, whole.planned(Corner.TYPICAL).wired());
            assertThat(ids(result.breaks(), whole.lasting()))
                    .as(folder + ": " + result.mishap().id())
                    .isEqualTo(whole.broken(damage));
            atEnds += (int) result.breaks().stream().filter(Break::takesEnds).count();
            for (int t : proof.testOrder().noticedBy().get(k)) {
                HandTest test = proof.testOrder().tests().get(t);
                noticed += whole.assertShown(test, damage, result.mishap().id()) ? 1 : 0;
            }
        }
        Note.that(
                ExampleFiles.root().relativize(folder) + ": " + whole.corners().size()
                        + " corners, broken at ends only " + atEnds + ", tests that notice " + noticed);
    }

    private static Set<String> ids(List<Break> breaks, Set<String> among) {
        return breaks.stream().map(Break::claim).filter(among::contains).collect(Collectors.toCollection(TreeSet::new));
    }

    /** A job at every corner. */
    private static final class Whole {
        private final Brief brief;
        private final Plan plan;
        private final List<Corner> corners = new ArrayList<>();
        private final Set<String> figures = new TreeSet<>();
        private final Set<String> lasting;
        private final Map<Corner, SeenAtACorner> asPlanned = new LinkedHashMap<>();

        Whole(Brief brief, Plan plan) {
            this.brief = brief;
            this.plan = plan;
            Vehicle stock = Vehicle.stock(brief, Corner.TYPICAL);
            Vehicle planned = planned(Corner.TYPICAL);
            Variations.all(brief, plan, stock, planned)
                    .all()
                    .forEach(each -> figures.add(each.figure().key()));
            figures.remove(Warmth.KEY);
            List<Corner> all = new ArrayList<>(List.of(Corner.TYPICAL));
            for (String figure : figures) {
                List<Corner> more = new ArrayList<>();
                for (Corner corner : figures.size() > MOST_FIGURES ? List.<Corner>of() : all) {
                    more.add(corner.with(figure, Corner.Taken.LOW));
                    more.add(corner.with(figure, Corner.Taken.HIGH));
                }
                all = more;
            }
            for (Corner.Taken warmth : Corner.Taken.values()) {
                all.forEach(corner -> corners.add(corner.with(Warmth.KEY, warmth)));
            }
            corners.add(Corner.TYPICAL);
            List<Case> cases = cases(plan, stock, planned);
            Explorer explorer = Explorer.ofWholeRanges(brief, plan, stock, planned, Onlooker.NONE)
                    .decide(cases);
            Explorer typical =
                    Explorer.ofTypicalValues(brief, plan, stock, planned).decide(cases);
            this.lasting = cases.stream()
                    .filter(each -> holds(explorer, each) && holds(typical, each))
                    .map(Case::id)
                    .collect(Collectors.toCollection(TreeSet::new));
        }

        private static boolean holds(Explorer explorer, Case each) {
            return explorer.result(each)
                    .map(ClaimResult::verdict)
                    .filter(Verdict.Holds.class::isInstance)
                    .isPresent();
        }

        private List<Case> cases(Plan inTheCar, Vehicle stock, Vehicle fitted) {
            Fitting fitting = new Fitting(brief, inTheCar, stock, fitted);
            return Claim.all().stream()
                    .filter(Claim::isWalked)
                    .flatMap(claim -> claim.in(fitting).stream())
                    .filter(Claimed.ToShow.class::isInstance)
                    .map(claimed -> ((Claimed.ToShow) claimed).toShow())
                    .toList();
        }

        Vehicle planned(Corner corner) {
            return Vehicle.fitted(brief, plan, corner);
        }

        Set<String> figures() {
            return figures;
        }

        List<Corner> corners() {
            return corners;
        }

        Set<String> lasting() {
            return lasting;
        }

        Set<String> broken(Damage damage) {
            Set<String> broken = new TreeSet<>();
            for (Corner corner : corners) {
                Vehicle stock = Vehicle.stock(brief, corner);
                Vehicle damaged = damage.vehicle(brief, corner);
                List<Case> asked = cases(
                                damage.plan(),
                                Vehicle.stock(brief, Corner.TYPICAL),
                                Vehicle.fitted(brief, damage.plan(), Corner.TYPICAL))
                        .stream()
                        .filter(each -> lasting.contains(each.id()))
                        .toList();
                Explorer explorer = Explorer.ofTypicalValues(brief, damage.plan(), stock, damaged)
                        .decide(asked);
                asked.stream()
                        .filter(each -> explorer.result(each)
                                .map(ClaimResult::verdict)
                                .filter(Whole::isBroken)
                                .isPresent())
                        .forEach(each -> broken.add(each.id()));
            }
            return broken;
        }

        private static boolean isBroken(Verdict verdict) {
            return switch (verdict) {
                case Verdict.Broken broken -> true;
                case Verdict.Open open ->
                    BROKEN_IN_EFFECT.contains(open.because().key());
                case Verdict.Holds holds -> false;
                case Verdict.Declared declared -> false;
            };
        }

        /** Whether the test has situations; then something it looks at differs in each of the cars. */
        boolean assertShown(HandTest test, Damage damage, String mishap) {
            if (test.situations().isEmpty()) {
                return false;
            }
            for (Corner corner : corners) {
                SeenAtACorner before =
                        asPlanned.computeIfAbsent(corner, c -> SeenAtACorner.of(brief, plan, c, Optional.empty()));
                SeenAtACorner now = SeenAtACorner.of(brief, plan, corner, Optional.of(damage));
                BitSet differing = new BitSet();
                test.situations().forEach(situation -> differing.or(now.differing(before, situation)));
                assertThat(differing.stream()
                                .anyMatch(k -> test.looksAt(before.signs().get(k))))
                        .as(mishap + " in " + test.id() + " at " + corner)
                        .isTrue();
            }
            return true;
        }
    }

    static List<Path> folders() {
        return Sample.of(
                ExampleFiles.list().stream()
                        .filter(folder -> folder.startsWith(ExampleFiles.root().resolve("circuits")))
                        .toList(),
                4);
    }
}
