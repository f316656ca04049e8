package org.loomproof.workshop.planner.search;

import java.util.Collection;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.rule.Decision;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.StandbyDrain;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/** What is drawn with the key out and the system armed, and how long the battery bears that. */
final class Drain {

    private Drain() {}

    /** The sum as a sentence: a plain one when it outlasts the longest time unused, otherwise a caution. */
    static Phrase phrase(Job job, Collection<Decision> decisions) {
        VehicleFacts vehicle = job.brief().sheet().vehicle();
        Amps added = new Amps(job.brief().kit().standby().typical().value() + coils(job, decisions));
        Amps all = new Amps(added.value() + vehicle.sleepCurrent().typical().value());
        double share = StandbyDrain.usableShare(vehicle.batteryAgeYears().orElse(0.0));
        double days = StandbyDrain.days(vehicle.batteryCapacity().typical(), share, all);
        long whole = (long) Math.min(days, 9999);
        int longest = job.brief().order().longestUnusedDays();
        return Phrase.of(
                days < longest ? "caution.drain" : "info.drain", added, all, whole, longest, Math.round(share * 100));
    }

    /** Coils that an output holds for as long as the system is armed, and that do not hang on the ignition. */
    private static double coils(Job job, Collection<Decision> decisions) {
        Behaviour behaviour = job.brief().kit().behaviour();
        double amps = 0;
        for (Decision decision : decisions) {
            if (decision instanceof Decision.Join join && isHeldWhileArmed(join, behaviour)) {
                amps += coilAmps(join.draft());
            }
        }
        return amps;
    }

    private static boolean isHeldWhileArmed(Decision.Join join, Behaviour behaviour) {
        return behaviour.outputs().stream()
                .anyMatch(o -> o.lead().equals(join.lead())
                        && o.timing() == OutputTiming.STEADY
                        && o.onIn().contains(ControllerState.ARMED));
    }

    private static double coilAmps(Draft draft) {
        boolean onIgnition = draft.runs().stream().anyMatch(Drain::isOnIgnition);
        return onIgnition
                ? 0
                : draft.pieces().stream()
                        .mapToDouble(p -> p instanceof Piece.Relay relay
                                ? SupplyPoint.REST.volts().value()
                                        / relay.type().coil().value()
                                : 0)
                        .sum();
    }

    private static boolean isOnIgnition(Run run) {
        return run.behind().filter(Job.IGNITION_FUSE::equals).isPresent();
    }
}
