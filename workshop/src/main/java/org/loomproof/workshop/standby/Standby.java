package org.loomproof.workshop.standby;

import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.battery.StandbyDrain;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * What is drawn with the key out in each state in which the car is left standing, and how long the battery bears the worst of
 * them, in mild weather and in the cold.
 */
public final class Standby {

    /** The states in which a car is left standing, the usual one first. */
    private static final List<ControllerState> STANDING =
            List.of(ControllerState.ARMED, ControllerState.DISARMED, ControllerState.OVERRIDE);

    private static final double MOST_DAYS_TOLD = 9999;

    private final Brief brief;
    private final Plan plan;

    private Standby(Brief brief, Plan plan) {
        this.brief = brief;
        this.plan = plan;
    }

    /** The worst state as a sentence: a plain one when the battery outlasts the longest time unused, otherwise a caution. */
    public static Phrase phrase(Brief brief, Plan plan) {
        return new Standby(brief, plan).phrase();
    }

    private Phrase phrase() {
        VehicleFacts vehicle = brief.sheet().vehicle();
        Comparator<ControllerState> byDraw = Comparator.comparingDouble(this::added);
        ControllerState worst = STANDING.stream()
                .reduce((one, other) -> byDraw.compare(other, one) > 0 ? other : one)
                .orElseThrow();
        Amps added = new Amps(added(worst));
        Amps all = new Amps(added.value() + vehicle.sleepCurrent().typical().value());
        int longest = brief.order().longestUnusedDays();
        boolean cold = brief.order().shop().coldest().value() <= StandbyDrain.COLD.value();
        double mildDays = days(vehicle, vehicle.batteryCapacity().typical(), StandbyDrain.MILD, all);
        double coldDays = days(vehicle, vehicle.batteryCapacity().typical(), StandbyDrain.COLD, all);
        boolean tooShort = mildDays < longest || (cold && coldDays < longest);
        return Phrase.of(
                tooShort ? "caution.drain" : "info.drain",
                added,
                all,
                Math.round(Math.floor(mildDays)),
                longest,
                Math.round(Math.floor(coldDays)),
                Phrase.of("term.state." + worst.word()),
                StandbyDrain.MILD.signed(),
                StandbyDrain.COLD.signed());
    }

    /** What the plan adds to the car's own sleep current with the controller in that state, key out; amps, typical values. */
    public static Amps added(Brief brief, Plan plan, ControllerState state) {
        return new Amps(new Standby(brief, plan).added(state));
    }

    /** Days until the engine no longer cranks at that temperature with so much drawn; at most {@value #MOST_DAYS_TOLD}. */
    public static double days(VehicleFacts vehicle, AmpHours battery, Celsius temperature, Amps all) {
        double share = StandbyDrain.usableShare(vehicle.batteryAgeYears().orElse(0.0), temperature);
        return Math.min(MOST_DAYS_TOLD, StandbyDrain.days(battery, share, all));
    }

    /** The controller itself, and what its outputs hold or feed in that state. */
    private double added(ControllerState state) {
        double amps = brief.kit().standby().typical().value()
                + plan.parts().stream().mapToDouble(Standby::atRest).sum();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                amps += brief.kit().behaviour().shareOn(connect.lead(), state) * amps(connect);
            }
        }
        return amps;
    }

    /** What an added part draws whatever the controller does. */
    private static double atRest(AddedPart part) {
        return part instanceof AddedPart.StandbyBattery battery
                ? battery.charged().value()
                : part instanceof AddedPart.Sender sender
                        ? sender.draws().map(Amps::value).orElse(0.0)
                        : 0;
    }

    /** What the lead works: coils, loads out of the box, and what is plugged in; nothing that the key feeds. */
    private double amps(Hookup.Connect connect) {
        if (plan.wires().stream()
                .filter(wire -> connect.wires().contains(wire.id()))
                .anyMatch(this::isFedByTheKey)) {
            return 0;
        }
        double parts = connect.parts().stream()
                .flatMap(id -> plan.findPart(id).stream())
                .mapToDouble(part -> part instanceof AddedPart.Relay relay
                        ? SupplyPoint.REST.volts().value() / relay.coil().value()
                        : part instanceof AddedPart.Load load ? load.draws().value() : 0)
                .sum();
        return parts
                + (brief.kit().lead(connect.lead()).port() instanceof Port.ToExtra(var extra) ? pluggedIn(extra) : 0);
    }

    private boolean isFedByTheKey(AddedWire wire) {
        return isKeyFeed(wire.from()) || isKeyFeed(wire.to());
    }

    /** Whether a wire joins that part to what the key feeds: such a part is dead while the car stands. */
    public static boolean isFedByTheKey(Brief brief, Plan plan, AddedPartId part) {
        Standby standby = new Standby(brief, plan);
        return plan.wires().stream()
                .filter(wire -> isAt(wire.from(), part) || isAt(wire.to(), part))
                .anyMatch(standby::isFedByTheKey);
    }

    private static boolean isAt(End end, AddedPartId part) {
        return end instanceof End.OfPart(var at, var terminal) && at.equals(part);
    }

    private boolean isKeyFeed(End end) {
        return end instanceof End.Tap(var circuit)
                && brief.sheet().circuit(circuit).role().kind() == CircuitRole.Kind.KEY_FEED;
    }

    private double pluggedIn(String extra) {
        return brief.kit()
                .findExtra(extra)
                .flatMap(Extra::draws)
                .map(draws -> draws.typical().value())
                .orElse(0.0);
    }
}
