package org.loomproof.workshop.planner.search;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.rule.Decision;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.sizing.StandbyDrain;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * What is drawn with the key out in each state in which the car is left standing, and how long the battery bears the worst of
 * them, in mild weather and in the cold.
 */
final class Drain {

    /** The states in which a car is left standing, the usual one first. */
    private static final List<ControllerState> STANDING =
            List.of(ControllerState.ARMED, ControllerState.DISARMED, ControllerState.OVERRIDE);

    private static final Celsius MILD = new Celsius(20);
    private static final Celsius COLD = new Celsius(-10);

    /** What flashes is on half of the time. */
    private static final double FLASHING = 0.5;

    private static final double MOST_DAYS_TOLD = 9999;

    private Drain() {}

    /** The worst state as a sentence: a plain one when the battery outlasts the longest time unused, otherwise a caution. */
    static Phrase phrase(Job job, Collection<Decision> decisions) {
        VehicleFacts vehicle = job.brief().sheet().vehicle();
        Comparator<ControllerState> byDraw = Comparator.comparingDouble(s -> added(job, decisions, s));
        ControllerState worst = STANDING.stream()
                .reduce((one, other) -> byDraw.compare(other, one) > 0 ? other : one)
                .orElseThrow();
        Amps added = new Amps(added(job, decisions, worst));
        Amps all = new Amps(added.value() + vehicle.sleepCurrent().typical().value());
        int longest = job.brief().order().longestUnusedDays();
        boolean cold = job.brief().order().shop().coldest().value() <= COLD.value();
        double mildDays = days(vehicle, MILD, all);
        double coldDays = days(vehicle, COLD, all);
        boolean tooShort = mildDays < longest || (cold && coldDays < longest);
        return Phrase.of(
                tooShort ? "caution.drain" : "info.drain",
                added,
                all,
                Math.round(Math.floor(mildDays)),
                longest,
                Math.round(Math.floor(coldDays)),
                Phrase.of("term.state." + worst.word()));
    }

    private static double days(VehicleFacts vehicle, Celsius temperature, Amps all) {
        double share = StandbyDrain.usableShare(vehicle.batteryAgeYears().orElse(0.0), temperature);
        return Math.min(
                MOST_DAYS_TOLD, StandbyDrain.days(vehicle.batteryCapacity().typical(), share, all));
    }

    /** The controller itself, and what its outputs hold or feed in that state. */
    private static double added(Job job, Collection<Decision> decisions, ControllerState state) {
        double amps = job.brief().kit().standby().typical().value();
        for (Decision decision : decisions) {
            if (decision instanceof Decision.Join join) {
                amps += onShare(job, join, state) * amps(job, join);
            }
        }
        return amps;
    }

    /** How much of the time the lead's output is on in a state; pulses are over before the car stands. */
    private static double onShare(Job job, Decision.Join join, ControllerState state) {
        return job.brief().kit().behaviour().outputs().stream()
                .filter(o -> o.lead().equals(join.lead()) && o.onIn().contains(state))
                .mapToDouble(o -> switch (o.timing()) {
                    case STEADY -> 1;
                    case FLASHING -> FLASHING;
                    case PULSE, SECOND_PULSE -> 0;
                })
                .findFirst()
                .orElse(0);
    }

    /** What the lead works: coils, loads out of the box, and what is plugged in; nothing that hangs on the ignition. */
    private static double amps(Job job, Decision.Join join) {
        if (join.draft().runs().stream().anyMatch(Drain::isOnIgnition)) {
            return 0;
        }
        double pieces = join.draft().pieces().stream()
                .mapToDouble(p -> p instanceof Piece.Relay relay
                        ? SupplyPoint.REST.volts().value() / relay.type().coil().value()
                        : p instanceof Piece.Load load ? load.draws().value() : 0)
                .sum();
        return pieces + (join.of().port() instanceof Port.ToExtra(var extra) ? pluggedIn(job, extra) : 0);
    }

    private static double pluggedIn(Job job, String extra) {
        return job.brief()
                .kit()
                .findExtra(extra)
                .flatMap(Extra::draws)
                .map(draws -> draws.typical().value())
                .orElse(0.0);
    }

    private static boolean isOnIgnition(Run run) {
        return run.behind().filter(Job.IGNITION_FUSE::equals).isPresent();
    }
}
