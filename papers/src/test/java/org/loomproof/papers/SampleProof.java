package org.loomproof.papers;

import static org.loomproof.papers.SampleJob.positions;
import static org.loomproof.papers.SampleJob.written;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/** A proof written by hand, with a claim of each sort. */
final class SampleProof {

    private static final Assumption SOLENOID = new Assumption(
            "circuits.starter.path[3].load.resistance",
            "0.3 Ω",
            "1.2 Ω",
            new Measurement(
                    "ohms-of starter-solenoid", written("the ohms from the starter wire to the body, key off")));

    private static final Assumption PULL_UP = new Assumption(
            "circuits.left-door.path[3].input.pull-up",
            "1 kΩ",
            "10 kΩ",
            new Measurement(
                    "amps-of left-door", written("the current to the body from the left door's wire, door shut")));

    private SampleProof() {}

    static Proof proof() {
        List<ClaimResult> results = new ArrayList<>();
        results.add(holds(
                "starts-when-disarmed starter",
                "With the controller disarmed the starter gets what it got before.",
                0.14,
                "0.06 V less than before",
                "at most 0.2 V less",
                starting(ControllerFeed.WHOLE)));
        for (ControllerFeed feed :
                List.of(ControllerFeed.SUPPLY_LOST, ControllerFeed.GROUND_LOST, ControllerFeed.FUSE_OUT)) {
            results.add(holds(
                    "starts-with-controller-dead " + feed.word(),
                    "The starter gets what it got before when the controller is dead (" + feed.word() + ").",
                    0.14,
                    "0.06 V less than before",
                    "at most 0.2 V less",
                    starting(feed)));
        }
        results.add(new ClaimResult(
                "opening-seen rear-doors",
                written("Opening the rear doors is seen while armed."),
                new Verdict.Broken(
                        new Margin(-0.6, "V", written("2.6 V at P2-3"), written("under 2.0 V")),
                        new Witness(
                                List.of(
                                        written("Start the engine and let it idle."),
                                        written("Arm the controller; wait 20 s."),
                                        written("Open the rear doors.")),
                                new Situation(
                                        positions("rear-doors", "open"),
                                        SupplyPoint.CHARGING,
                                        ControllerState.ARMED,
                                        ControllerFeed.WHOLE),
                                List.of(
                                        new Observation(written("Lead P2-3 against the body:"), "2.6 V"),
                                        new Observation(written("K2 terminal 86 against the body:"), "6.1 V")))),
                List.of()));
        results.add(new ClaimResult(
                "opening-seen left-door",
                written("Opening the left door is seen while armed."),
                new Verdict.Open(
                        written(
                                "With a pull-up of 1 kΩ the input stays between its two levels; with 10 kΩ it is read low."),
                        List.of(PULL_UP.settledBy())),
                List.of(PULL_UP)));
        results.add(holds(
                "stock-as-before side-lamps",
                "The side lamps draw what they drew before.",
                4.9,
                "1.66 A, 0.1 % less",
                "within 5 % of 1.66 A",
                new Situation(
                        positions("light-switch", "side"),
                        SupplyPoint.HIGH,
                        ControllerState.DISARMED,
                        ControllerFeed.WHOLE)));
        return new Proof(
                results,
                new Proof.Effort(15, 86, 4320, 51840, 96),
                List.of(written("At most two figures were moved to a corner of their ranges at once.")));
    }

    private static ClaimResult holds(
            String id, String statement, double slack, String computed, String allowed, Situation deciding) {
        return new ClaimResult(
                id,
                written(statement),
                new Verdict.Holds(
                        new Margin(slack, statement.contains("lamps") ? "%" : "V", written(computed), written(allowed)),
                        deciding),
                id.contains("starter") ? List.of(SOLENOID, PULL_UP) : List.of(SOLENOID));
    }

    private static Situation starting(ControllerFeed feed) {
        return new Situation(positions("key", "start"), SupplyPoint.CRANKING, ControllerState.DISARMED, feed);
    }
}
