package org.loomproof.papers;

import static org.loomproof.papers.SampleJob.exactly;
import static org.loomproof.papers.SampleJob.said;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.PointId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;

/** An invented van: enough of it for a plan with two relays. */
final class SampleSheet {

    static final OperableId LAMP_SWITCH = new OperableId("light-switch");

    private SampleSheet() {}

    static Sheet sheet() {
        return new Sheet(facts(), operables(), circuits());
    }

    private static VehicleFacts facts() {
        return new VehicleFacts(
                "Larkspur Crumb 1.6 panel van",
                new Volts(12),
                VehicleFacts.GroundPolarity.NEGATIVE,
                VehicleFacts.Gearbox.MANUAL,
                VehicleFacts.Drive.COMBUSTION,
                VehicleFacts.Start.KEY,
                VehicleFacts.Key.PLAIN,
                VehicleFacts.Steering.LEFT,
                "yellow loom along the left sill",
                "",
                "",
                exactly(new AmpHours(70)),
                Optional.of(3.0),
                exactly(new Amps(0.018)));
    }

    private static List<Operable> operables() {
        return List.of(
                new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS),
                opening("left-door", Operable.Kind.DOOR),
                opening("right-door", Operable.Kind.DOOR),
                opening("side-door", Operable.Kind.DOOR),
                opening("rear-doors", Operable.Kind.TRUNK),
                opening("hood", Operable.Kind.HOOD),
                new Operable(LAMP_SWITCH, Operable.Kind.CONTROL, List.of("off", "side", "head")));
    }

    private static Operable opening(String id, Operable.Kind kind) {
        return new Operable(new OperableId(id), kind, Operable.OPENING_POSITIONS);
    }

    private static List<Circuit> circuits() {
        return List.of(
                circuit(
                        "battery",
                        CircuitRole.CONSTANT_SUPPLY,
                        colour(Colour.RED),
                        6,
                        new Where("fuse box", "X1", "2", ""),
                        List.of(),
                        Access.MAY_BE_TAPPED,
                        List.of(List.of(
                                new PathStep.Supply(),
                                fuse("F1", 60),
                                new PathStep.Here(),
                                new PathStep.Point(new PointId("box-feed"))))),
                circuit(
                        "ignition",
                        CircuitRole.IGNITION,
                        colour(Colour.BLACK, Colour.YELLOW),
                        2.5,
                        new Where("column shroud", "C21", "3", ""),
                        List.of(Operable.KEY),
                        Access.MAY_BE_TAPPED,
                        List.of(List.of(
                                new PathStep.Point(new PointId("box-feed")),
                                keyContact("ignition-switch-15", "on", "start"),
                                new PathStep.Here(),
                                load("engine-computer", PathStep.LoadKind.ELECTRONIC, 8),
                                new PathStep.Ground()))),
                circuit(
                        "starter",
                        CircuitRole.STARTER,
                        colour(Colour.VIOLET, Colour.WHITE),
                        4,
                        new Where("column shroud", "C21", "5", ""),
                        List.of(Operable.KEY),
                        Access.MAY_BE_CUT,
                        List.of(List.of(
                                new PathStep.Point(new PointId("box-feed")),
                                keyContact("ignition-switch-50", "start"),
                                new PathStep.Here(),
                                load("starter-solenoid", PathStep.LoadKind.SOLENOID, 0.4),
                                new PathStep.Ground()))),
                door("left-door", colour(Colour.BROWN, Colour.WHITE)),
                door("right-door", colour(Colour.BROWN, Colour.BLUE)),
                door("side-door", colour(Colour.BROWN, Colour.GREEN)),
                circuit(
                        "rear-doors",
                        CircuitRole.TRUNK_TRIGGER,
                        colour(Colour.GREY, Colour.RED),
                        0.5,
                        new Where("left rear trim", "C80", "1", ""),
                        List.of(new OperableId("rear-doors")),
                        Access.MAY_BE_TAPPED,
                        List.of(List.of(
                                new PathStep.Supply(),
                                fuse("F9", 10),
                                new PathStep.Switch(
                                        new ElementId("rear-door-switch"),
                                        new OperableId("rear-doors"),
                                        Set.of("open"),
                                        exactly(new Ohms(0.05))),
                                new PathStep.Here(),
                                lamp("load-lamp", 10),
                                new PathStep.Ground()))),
                circuit(
                        "side-lamps",
                        CircuitRole.PARKING_LAMP,
                        colour(Colour.GREY, Colour.VIOLET),
                        1,
                        new Where("lower dash", "C14", "7", ""),
                        List.of(LAMP_SWITCH),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                List.of(
                                        new PathStep.Supply(),
                                        fuse("F12", 10),
                                        new PathStep.Switch(
                                                new ElementId("light-switch-58"),
                                                LAMP_SWITCH,
                                                Set.of("side", "head"),
                                                exactly(new Ohms(0.03))),
                                        new PathStep.Here(),
                                        lamp("side-lamps-left", 10),
                                        new PathStep.Ground()),
                                List.of(new PathStep.Here(), lamp("side-lamps-right", 10), new PathStep.Ground()))),
                command("lock", CircuitRole.LOCK, colour(Colour.GREEN)),
                command("unlock", CircuitRole.UNLOCK, colour(Colour.BLUE)),
                circuit(
                        "horn",
                        CircuitRole.HORN,
                        colour(Colour.YELLOW, Colour.GREEN),
                        1,
                        new Where("column shroud", "C22", "1", ""),
                        List.of(),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                List.of(
                                        new PathStep.Supply(),
                                        new PathStep.Coil(
                                                new ElementId("horn-relay-coil"),
                                                new PathStep.RelayId("R4"),
                                                exactly(new Ohms(85)),
                                                exactly(new Volts(8)),
                                                exactly(new Volts(1.2))),
                                        new PathStep.Here(),
                                        new PathStep.Switch(
                                                new ElementId("horn-button"),
                                                LAMP_SWITCH,
                                                Set.of("head"),
                                                exactly(new Ohms(0.1))),
                                        new PathStep.Ground()),
                                List.of(
                                        new PathStep.Supply(),
                                        fuse("F3", 15),
                                        new PathStep.Contact(
                                                new ElementId("horn-relay-contact"),
                                                new PathStep.RelayId("R4"),
                                                true,
                                                exactly(new Ohms(0.02))),
                                        load("horn", PathStep.LoadKind.SOLENOID, 2.4),
                                        new PathStep.Ground()))));
    }

    private static Circuit door(String id, WireColour colour) {
        return circuit(
                id,
                CircuitRole.DOOR_TRIGGER,
                colour,
                0.5,
                new Where("left kick panel", "C31", String.valueOf(id.length()), ""),
                List.of(new OperableId(id)),
                Access.MAY_BE_TAPPED,
                List.of(List.of(
                        new PathStep.Ground(),
                        new PathStep.Switch(
                                new ElementId(id + "-switch"),
                                new OperableId(id),
                                Set.of("open"),
                                exactly(new Ohms(0.1))),
                        new PathStep.Here(),
                        input(id + "-input"))));
    }

    private static Circuit command(String id, CircuitRole role, WireColour colour) {
        return circuit(
                id,
                role,
                colour,
                0.75,
                new Where("right kick panel", "C40", id.equals("lock") ? "4" : "6", ""),
                List.of(),
                Access.MAY_BE_TAPPED,
                List.of(List.of(new PathStep.Here(), input(id + "-input"))));
    }

    private static PathStep input(String id) {
        return new PathStep.Input(
                new ElementId(id),
                Optional.of(exactly(new Ohms(4700))),
                Optional.empty(),
                Optional.empty(),
                exactly(new Volts(2)),
                exactly(new Volts(6)));
    }

    static Circuit circuit(
            String id,
            CircuitRole role,
            WireColour colour,
            double size,
            Where where,
            List<OperableId> follows,
            Access access,
            List<List<PathStep>> paths) {
        return new Circuit(
                new CircuitId(id),
                role,
                where,
                Optional.of(colour),
                Optional.of(exactly(new SquareMillimetres(size))),
                new Switching(new Level.Open(), new Level.Supply()),
                follows,
                paths,
                access,
                said("circuits." + id),
                "hand-written example",
                "");
    }

    private static PathStep keyContact(String id, String... closedAt) {
        return new PathStep.Switch(new ElementId(id), Operable.KEY, Set.of(closedAt), exactly(new Ohms(0.01)));
    }

    private static PathStep fuse(String id, double amps) {
        return new PathStep.Fuse(new ElementId(id), exactly(new Amps(amps)), exactly(new Ohms(0.003)));
    }

    private static PathStep load(String id, PathStep.LoadKind kind, double ohms) {
        return new PathStep.Load(new ElementId(id), kind, exactly(new Ohms(ohms)));
    }

    private static PathStep lamp(String id, double watts) {
        return new PathStep.Lamp(new ElementId(id), exactly(new Watts(watts)));
    }

    static WireColour colour(Colour base) {
        return new WireColour(base, Optional.empty(), "");
    }

    static WireColour colour(Colour base, Colour tracer) {
        return new WireColour(base, Optional.of(tracer), "");
    }
}
