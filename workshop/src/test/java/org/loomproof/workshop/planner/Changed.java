package org.loomproof.workshop.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;

/** The same brief with one thing changed. */
public final class Changed {

    private Changed() {}

    public static Brief certainty(Brief brief, String circuit, Certainty certainty) {
        return circuit(
                brief,
                circuit,
                c -> with(
                        c,
                        c.switching(),
                        c.access(),
                        new Basis(certainty, c.basis().place())));
    }

    public static Brief access(Brief brief, String circuit, Access access) {
        return circuit(brief, circuit, c -> with(c, c.switching(), access, c.basis()));
    }

    public static Brief switching(Brief brief, String circuit, Switching switching) {
        return circuit(brief, circuit, c -> with(c, switching, c.access(), c.basis()));
    }

    /** The circuit found elsewhere. */
    public static Brief place(Brief brief, String circuit, String panel, String connector, String cavity) {
        return circuit(
                brief,
                circuit,
                c -> told(c, new Where(panel, connector, cavity, ""), c.colour(), c.id(), c.role(), c.origin()));
    }

    /** The circuit found elsewhere, and what carries it there said. */
    public static Brief carried(Brief brief, String circuit, String panel, Where.Carrier by) {
        Where where = new Where(panel, "", "", "", Optional.of(by));
        return circuit(brief, circuit, c -> told(c, where, c.colour(), c.id(), c.role(), c.origin()));
    }

    public static Brief colour(Brief brief, String circuit, Colour base) {
        Optional<WireColour> colour = Optional.of(new WireColour(base, Optional.empty(), ""));
        return circuit(brief, circuit, c -> told(c, c.where(), colour, c.id(), c.role(), c.origin()));
    }

    public static Brief role(Brief brief, String circuit, CircuitRole role) {
        return circuit(brief, circuit, c -> told(c, c.where(), c.colour(), c.id(), role, c.origin()));
    }

    /** The same said once more, by somebody else. */
    public static Brief saidAgain(Brief brief, String circuit, String as, String origin) {
        List<Circuit> circuits = new ArrayList<>(brief.sheet().circuits());
        Circuit c = brief.sheet().circuit(new CircuitId(circuit));
        circuits.add(told(c, c.where(), c.colour(), new CircuitId(as), c.role(), origin));
        return circuits(brief, circuits);
    }

    private static Circuit told(
            Circuit c, Where where, Optional<WireColour> colour, CircuitId id, CircuitRole role, String origin) {
        return new Circuit(
                id,
                role,
                where,
                colour,
                c.size(),
                c.switching(),
                c.follows(),
                c.paths(),
                c.access(),
                c.basis(),
                origin,
                c.note());
    }

    public static Brief shuffled(Brief brief, long seed) {
        List<Circuit> circuits = new ArrayList<>(brief.sheet().circuits());
        Collections.shuffle(circuits, new Random(seed));
        return circuits(brief, circuits);
    }

    public static Brief start(Brief brief, VehicleFacts.Start start) {
        VehicleFacts v = brief.sheet().vehicle();
        return vehicle(brief, v.systemVoltage(), v.groundPolarity(), v.gearbox(), v.drive(), start);
    }

    public static Brief drive(Brief brief, VehicleFacts.Drive drive) {
        VehicleFacts v = brief.sheet().vehicle();
        return vehicle(brief, v.systemVoltage(), v.groundPolarity(), v.gearbox(), drive, v.start());
    }

    public static Brief gearbox(Brief brief, VehicleFacts.Gearbox gearbox) {
        VehicleFacts v = brief.sheet().vehicle();
        return vehicle(brief, v.systemVoltage(), v.groundPolarity(), gearbox, v.drive(), v.start());
    }

    public static Brief systemVoltage(Brief brief, double volts) {
        VehicleFacts v = brief.sheet().vehicle();
        return vehicle(brief, new Volts(volts), v.groundPolarity(), v.gearbox(), v.drive(), v.start());
    }

    public static Brief positiveGround(Brief brief) {
        VehicleFacts v = brief.sheet().vehicle();
        return vehicle(
                brief, v.systemVoltage(), VehicleFacts.GroundPolarity.POSITIVE, v.gearbox(), v.drive(), v.start());
    }

    private static Brief circuit(Brief brief, String id, UnaryOperator<Circuit> change) {
        return circuits(
                brief,
                brief.sheet().circuits().stream()
                        .map(c -> c.id().value().equals(id) ? change.apply(c) : c)
                        .toList());
    }

    private static Brief circuits(Brief brief, List<Circuit> circuits) {
        Sheet sheet = brief.sheet();
        return new Brief(new Sheet(sheet.vehicle(), sheet.operables(), circuits), brief.kit(), brief.order());
    }

    private static Circuit with(Circuit c, Switching switching, Access access, Basis basis) {
        return new Circuit(
                c.id(),
                c.role(),
                c.where(),
                c.colour(),
                c.size(),
                switching,
                c.follows(),
                c.paths(),
                access,
                basis,
                c.origin(),
                c.note());
    }

    private static Brief vehicle(
            Brief brief,
            Volts volts,
            VehicleFacts.GroundPolarity polarity,
            VehicleFacts.Gearbox gearbox,
            VehicleFacts.Drive drive,
            VehicleFacts.Start start) {
        VehicleFacts v = brief.sheet().vehicle();
        VehicleFacts changed = new VehicleFacts(
                v.name(),
                volts,
                polarity,
                gearbox,
                drive,
                start,
                v.key(),
                v.steering(),
                v.restraints(),
                v.dataBus(),
                v.factoryAlarm(),
                v.batteryCapacity(),
                v.batteryAgeYears(),
                v.sleepCurrent());
        Sheet sheet =
                new Sheet(changed, brief.sheet().operables(), brief.sheet().circuits());
        return new Brief(sheet, brief.kit(), brief.order());
    }
}
