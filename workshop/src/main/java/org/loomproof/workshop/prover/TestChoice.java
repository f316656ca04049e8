package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.prover.claim.CoilKick;
import org.loomproof.workshop.prover.damage.AsPlanned;
import org.loomproof.workshop.prover.damage.ColdLoom;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.DamageLook;
import org.loomproof.workshop.prover.damage.DamageSearch;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.damage.Showing;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.prover.testorder.TestOrder;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/** Chooses the tests: which notices what, further ones for what no usual test notices, and then as few as will do. */
final class TestChoice {

    private final AsPlanned job;
    private final List<HandTest> usual;
    private final List<Sign> signs = new ArrayList<>();
    private final ColdLoom cold;
    private final DamageSearch search;
    private final List<Damage> damages;

    /**
     * @param usual tests by hand
     * @param search where the damages are looked for
     * @param damages all of them, by their numbers
     */
    TestChoice(AsPlanned job, List<HandTest> usual, ColdLoom cold, DamageSearch search, List<Damage> damages) {
        this.job = job;
        this.usual = usual;
        this.signs.addAll(job.signs().list());
        this.cold = cold;
        this.search = search;
        this.damages = damages;
    }

    /**
     * The order that was chosen.
     *
     * @param signs all that is looked at, by their places
     * @param shown for each result and each test of the order the signs that surely differ
     */
    record Chosen(FaultProof proof, List<Sign> signs, List<List<BitSet>> shown) {}

    /** For each result and each test what surely differs; empty where the test does not notice it. */
    private record Differences(List<HandTest> tests, List<List<BitSet>> byResult) {

        BitSet noticedBy(int test) {
            BitSet noticed = new BitSet();
            for (int r = 0; r < byResult.size(); r++) {
                noticed.set(r, !byResult.get(r).get(test).isEmpty());
            }
            return noticed;
        }
    }

    Chosen choose(
            List<MishapResult> results,
            List<Integer> numbers,
            List<Optional<Outcome>> outcomes,
            int left,
            Outcome.Effort effort,
            List<Phrase> bounds) {
        Differences living = kicks(further(usual(numbers, outcomes), numbers, outcomes), results);
        Differences differences = measuredDead(living, results, numbers);
        List<HandTest> tests = differences.tests();
        BitSet always = new BitSet();
        List<BitSet> notices = new ArrayList<>();
        for (int t = 0; t < tests.size(); t++) {
            notices.add(differences.noticedBy(t));
            always.set(t, HandTests.isCustomary(tests.get(t), job.brief().order()));
        }
        int arming = (int)
                Math.ceil(job.brief().kit().behaviour().armingDelay().high().value());
        TestOrder order = TestOrder.of(tests, notices, always, results.size(), arming);
        FaultProof proof = new FaultProof(
                results,
                order,
                mayBeNoticed(order, numbers, outcomes),
                watch(order, differences),
                expected(order),
                left,
                effort,
                bounds);
        return new Chosen(proof, List.copyOf(signs), shown(order, differences));
    }

    /** What some usual test of the order shows at typical figures, and none surely. */
    private Set<Integer> mayBeNoticed(TestOrder order, List<Integer> numbers, List<Optional<Outcome>> outcomes) {
        Set<Integer> mayBe = new TreeSet<>();
        for (int r = 0; r < numbers.size(); r++) {
            Map<Integer, BitSet> typically =
                    outcomes.get(numbers.get(r)).orElseThrow().typically();
            boolean isNoticed = !order.noticedBy().get(r).isEmpty();
            if (!isNoticed
                    && usual.stream()
                            .filter(order.tests()::contains)
                            .anyMatch(test -> !differing(test, typically).isEmpty())) {
                mayBe.add(r);
            }
        }
        return mayBe;
    }

    private static List<List<BitSet>> shown(TestOrder order, Differences differences) {
        int[] places =
                order.tests().stream().mapToInt(differences.tests()::indexOf).toArray();
        return differences.byResult().stream()
                .map(row -> Arrays.stream(places).mapToObj(row::get).toList())
                .toList();
    }

    private List<List<Showing>> expected(TestOrder order) {
        return order.tests().stream()
                .map(test -> test.situations().stream()
                        .map(search::asPlanned)
                        .map(showing -> showing.only(test::looksAt))
                        .toList())
                .toList();
    }

    private Differences usual(List<Integer> numbers, List<Optional<Outcome>> outcomes) {
        List<List<BitSet>> byResult = numbers.stream()
                .map(number -> {
                    Map<Integer, BitSet> noticed =
                            outcomes.get(number).orElseThrow().noticed();
                    return usual.stream().map(test -> differing(test, noticed)).toList();
                })
                .toList();
        return new Differences(usual, byResult);
    }

    private BitSet differing(HandTest test, Map<Integer, BitSet> noticed) {
        BitSet differing = new BitSet();
        for (Situation situation : test.situations()) {
            differing.or(noticed.getOrDefault(job.watched().indexOf(situation), new BitSet()));
        }
        return looked(test, differing);
    }

    /** What of that is looked at in the test. */
    private BitSet looked(HandTest test, BitSet differing) {
        BitSet looked = new BitSet();
        differing.stream().filter(k -> test.looksAt(signs.get(k))).forEach(looked::set);
        return looked;
    }

    /** Adds a test for each situation that alone shows what no usual test by hand notices. */
    private Differences further(Differences usual, List<Integer> numbers, List<Optional<Outcome>> outcomes) {
        Set<Situation> situations = new LinkedHashSet<>();
        List<Integer> unnoticed = new ArrayList<>();
        for (int r = 0; r < numbers.size(); r++) {
            Optional<Outcome.Elsewhere> elsewhere =
                    outcomes.get(numbers.get(r)).orElseThrow().elsewhere();
            if (!isNoticedByHand(usual, r) && elsewhere.isPresent()) {
                situations.add(elsewhere.get().situation());
                unnoticed.add(r);
            }
        }
        List<Situation> each = List.copyOf(situations);
        List<HandTest> tests = new ArrayList<>(usual.tests());
        for (int k = 0; k < each.size(); k++) {
            tests.add(HandTests.of(each.get(k), job.brief(), k + 1));
        }
        List<List<BitSet>> byResult = new ArrayList<>();
        for (int r = 0; r < numbers.size(); r++) {
            List<BitSet> row = new ArrayList<>(usual.byResult().get(r));
            Optional<DamageLook> look =
                    unnoticed.contains(r) ? Optional.of(search.look(damages.get(numbers.get(r)))) : Optional.empty();
            for (int k = 0; k < each.size(); k++) {
                Situation situation = each.get(k);
                BitSet differing = look.map(l -> l.surelyAt(situation)).orElseGet(BitSet::new);
                row.add(looked(tests.get(usual.tests().size() + k), differing));
            }
            byResult.add(row);
        }
        return new Differences(tests, byResult);
    }

    /** Adds a test for each lead whose kick is held as planned: it notices just what breaks that claim. */
    private Differences kicks(Differences steady, List<MishapResult> results) {
        List<HandTest> tests = new ArrayList<>(steady.tests());
        List<List<BitSet>> byResult = new ArrayList<>();
        steady.byResult().forEach(row -> byResult.add(new ArrayList<>(row)));
        for (Lead lead : job.brief().kit().leads()) {
            if (job.margins().keySet().stream().anyMatch(id -> CoilKick.isCaseOf(lead.id(), id))) {
                Sign.Kick kick = new Sign.Kick(lead.id());
                tests.add(HandTests.of(kick, lead));
                for (int r = 0; r < results.size(); r++) {
                    BitSet differing = new BitSet();
                    differing.set(
                            signs.size(),
                            results.get(r).breaks().stream()
                                    .anyMatch(b -> b.isSure() && CoilKick.isCaseOf(lead.id(), b.claim())));
                    byResult.get(r).add(differing);
                }
                signs.add(kick);
            }
        }
        return new Differences(tests, byResult);
    }

    /** Adds a test for each place of the dead loom; it is looked at for what touches a claim and shows in no other test. */
    private Differences measuredDead(Differences living, List<MishapResult> results, List<Integer> numbers) {
        int first = signs.size();
        List<HandTest> tests = new ArrayList<>(living.tests());
        for (Sign.Cold sign : cold.signs()) {
            signs.add(sign);
            tests.add(HandTests.of(sign));
        }
        List<List<BitSet>> byResult = IntStream.range(0, results.size())
                .parallel()
                .mapToObj(r -> {
                    List<BitSet> row = new ArrayList<>(living.byResult().get(r));
                    boolean asked = results.get(r).severity() != Severity.NONE
                            && row.stream().allMatch(BitSet::isEmpty);
                    BitSet differing =
                            asked ? cold.surelyDiffering(damages.get(numbers.get(r)), job.variations()) : new BitSet();
                    for (int place = 0; first + place < signs.size(); place++) {
                        BitSet here = new BitSet();
                        here.set(first + place, differing.get(place));
                        row.add(here);
                    }
                    return row;
                })
                .toList();
        return new Differences(tests, byResult);
    }

    private static boolean isNoticedByHand(Differences usual, int result) {
        for (int t = 0; t < usual.tests().size(); t++) {
            if (usual.tests().get(t).kind() == HandTest.Kind.BY_HAND
                    && !usual.byResult().get(result).get(t).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What to watch in each test: for each mishap that no earlier test has noticed, one sign of it. */
    private List<List<Sign>> watch(TestOrder order, Differences differences) {
        List<List<Sign>> watch = new ArrayList<>();
        BitSet known = new BitSet();
        for (HandTest test : order.tests()) {
            int place = differences.tests().indexOf(test);
            BitSet here = new BitSet();
            for (int r = 0; r < differences.byResult().size(); r++) {
                BitSet differing = differences.byResult().get(r).get(place);
                if (!known.get(r) && !differing.isEmpty()) {
                    known.set(r);
                    if (!differing.intersects(here)) {
                        here.set(differing.nextSetBit(0));
                    }
                }
            }
            watch.add(here.stream().mapToObj(signs::get).toList());
        }
        return watch;
    }
}
