package org.loomproof.workshop.meter.expected;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/** In which situations a wire is tried: at rest, at every position of the key, and with each thing worked that it follows. */
final class Tries {

    private final Sheet sheet;

    Tries(Sheet sheet) {
        this.sheet = sheet;
    }

    /** True where a meter may be put on the wire at all. */
    static boolean mayBeMeasured(Circuit circuit) {
        return switch (circuit.role()) {
            case RESTRAINT, HIGH_VOLTAGE, DATA -> false;
            case CONSTANT_SUPPLY,
                    IGNITION,
                    SECOND_IGNITION,
                    ACCESSORY,
                    STARTER,
                    SECOND_STARTER,
                    GROUND,
                    DOOR_TRIGGER,
                    HOOD_TRIGGER,
                    TRUNK_TRIGGER,
                    INTERIOR_LIGHT,
                    PARKING_LAMP,
                    HORN,
                    LOCK,
                    UNLOCK,
                    LOCK_MOTOR_LEG,
                    ALARM_ARM,
                    ALARM_DISARM,
                    TRUNK_RELEASE,
                    WINDOW,
                    BRAKE,
                    TACHOMETER,
                    FUEL_PUMP,
                    OTHER -> true;
        };
    }

    List<Situation> of(Circuit circuit) {
        List<Situation> all = new ArrayList<>();
        all.add(with(Operable.KEY, "off"));
        Set<OperableId> worked = new LinkedHashSet<>();
        if (takesTheKey(circuit)) {
            worked.add(Operable.KEY);
        }
        worked.addAll(circuit.follows());
        for (OperableId id : worked) {
            Operable operable = sheet.operable(id);
            operable.positions().stream().skip(1).forEach(position -> all.add(with(id, position)));
        }
        return List.copyOf(all);
    }

    /** Feeds and start wires are told from each other by the key alone. */
    private static boolean takesTheKey(Circuit circuit) {
        return circuit.role().kind() != CircuitRole.Kind.PLAIN;
    }

    private Situation with(OperableId operable, String position) {
        boolean cranks = operable.equals(Operable.KEY) && position.equals(Operable.KEY_POSITIONS.getLast());
        TreeMap<OperableId, String> positions = new TreeMap<>();
        sheet.operables().forEach(each -> positions.put(each.id(), each.rest()));
        positions.put(operable, position);
        return new Situation(
                positions,
                cranks ? SupplyPoint.CRANKING : SupplyPoint.REST,
                ControllerState.DISARMED,
                ControllerFeed.WHOLE,
                Moment.SETTLED);
    }
}
