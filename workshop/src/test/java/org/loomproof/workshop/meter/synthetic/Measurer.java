package org.loomproof.workshop.meter.synthetic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.meter.advice.Foresight;
import org.loomproof.workshop.meter.advice.Harm;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Fleet;
import org.loomproof.workshop.meter.evidence.Priors;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.role.WireModels;
import org.loomproof.workshop.meter.role.WireRole;

/** Identifies made-up wires: as advised, in a fixed order, by readings in any order, and by an oracle who knows them all. */
final class Measurer {

    private static final double ROW_IS_WRONG = 0.1;
    private static final int MOST_TESTS = 14;
    private static final int MOST_SHUFFLED = 10;
    private static final int MOST_OF_THE_ORACLE = 3;

    private final Fleet fleet = new Fleet(WireModels.usual());
    private final Foresight foresight = new Foresight(fleet);
    private final Sheet sheet;
    private final Random random;

    Measurer(Random random) {
        this.random = random;
        Sheet empty = AVehicle.named("made up").sheet();
        this.sheet = new Sheet(
                empty.vehicle(),
                empty.operables(),
                Arrays.stream(CircuitRole.values()).map(Papers::entry).toList());
    }

    private Belief prior(WireRole role, boolean onSheet) {
        if (!onSheet || role.circuits().isEmpty()) {
            return Priors.withoutSheet(fleet);
        }
        CircuitRole[] all = CircuitRole.values();
        CircuitRole right = role.circuits().getFirst();
        CircuitRole said = random.nextDouble() < ROW_IS_WRONG ? all[random.nextInt(all.length)] : right;
        return Priors.named(fleet, sheet, Papers.entry(said), Priors.trust(Certainty.STATED));
    }

    Trial measure(WireRole role, boolean onSheet, boolean askTheOracle) {
        MadeWire wire = new WireMaker(random).make(role);
        Hand hand = new Hand(wire, random);
        Map<MeterTest, Reading> taken = new HashMap<>();
        Belief prior = prior(role, onSheet);
        List<MeterTest> advised = new ArrayList<>();
        List<String> hurts = new ArrayList<>();
        Belief belief = prior;
        // As for a lead that is to be joined: by a paper alone nothing is certain enough.
        while ((advised.isEmpty() || !isCertain(belief)) && advised.size() < MOST_TESTS) {
            Optional<Foresight.Choice> next = foresight.next(belief, advised);
            if (next.isEmpty()) {
                break;
            }
            MeterTest test = next.get().test();
            if (wire.isHurtBy(test.kind())) {
                hurts.add(role.word() + " " + test.kind().word());
            }
            advised.add(test);
            belief = belief(prior, advised, hand, taken);
        }
        List<MeterTest> fixed = new ArrayList<>();
        Belief inOrder = prior;
        for (MeterTest test : MeterTest.ALL) {
            if (!isCertain(inOrder) && Harm.isSafe(test.kind(), inOrder)) {
                fixed.add(test);
                inOrder = belief(prior, fixed, hand, taken);
            }
        }
        List<MeterTest> any = new ArrayList<>(MeterTest.ALL);
        Collections.shuffle(any, random);
        any = any.subList(0, random.nextInt(1, MOST_SHUFFLED));
        return new Trial(
                role,
                onSheet && !role.circuits().isEmpty(),
                answer(belief, role, advised),
                answer(inOrder, role, fixed),
                answer(belief(prior, any, hand, taken), role, any),
                askTheOracle ? OptionalInt.of(fewest(prior, hand, taken)) : OptionalInt.empty(),
                advised.size(),
                hurts);
    }

    /** A test is made once: whoever asks again is shown the same. */
    private Belief belief(Belief prior, List<MeterTest> tests, Hand hand, Map<MeterTest, Reading> taken) {
        return prior.afterReadings(tests.stream()
                .map(test -> taken.computeIfAbsent(test, hand::take))
                .toList());
    }

    private static boolean isCertain(Belief belief) {
        return belief.chance(belief.best()) >= Trial.CERTAIN;
    }

    private static Trial.Answer answer(Belief belief, WireRole role, List<MeterTest> tests) {
        return new Trial.Answer(
                belief.chance(belief.best()),
                belief.best() == role,
                tests.size(),
                tests.stream().mapToDouble(MeterTest::seconds).sum());
    }

    /**
     * The least number of readings that makes certain of anything: no order of tests, however wise, stops earlier. Sets of more than
     * three are not tried; then it is one more than that.
     */
    private int fewest(Belief prior, Hand hand, Map<MeterTest, Reading> taken) {
        for (int size = 0; size <= MOST_OF_THE_ORACLE; size++) {
            if (makesCertain(prior, List.of(), 0, size, hand, taken)) {
                return size;
            }
        }
        return MOST_OF_THE_ORACLE + 1;
    }

    private boolean makesCertain(
            Belief belief, List<Reading> earlier, int from, int left, Hand hand, Map<MeterTest, Reading> taken) {
        if (left == 0) {
            return isCertain(belief);
        }
        for (int k = from; k < MeterTest.ALL.size(); k++) {
            Reading reading = taken.computeIfAbsent(MeterTest.ALL.get(k), hand::take);
            List<Reading> with = new ArrayList<>(earlier);
            with.add(reading);
            if (makesCertain(belief.after(fleet.likelihood(reading, earlier)), with, k + 1, left - 1, hand, taken)) {
                return true;
            }
        }
        return false;
    }
}
