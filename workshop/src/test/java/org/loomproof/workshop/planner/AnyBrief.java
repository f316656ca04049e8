package org.loomproof.workshop.planner;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.kit.Survival;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;

/** Draws any valid brief from a seed: any roles, levels, sureness, ports and wishes, sensible or not. */
public final class AnyBrief {

    private final Random random;

    private AnyBrief(long seed) {
        random = new Random(seed);
    }

    public static Brief from(long seed) {
        AnyBrief any = new AnyBrief(seed);
        Sheet sheet = any.sheet();
        return new Brief(sheet, any.kit(), any.order(sheet));
    }

    private <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private <E extends Enum<E>> E oneOf(Class<E> kind) {
        return oneOf(List.of(kind.getEnumConstants()));
    }

    /** True once in so many times. */
    private boolean onceIn(int times) {
        return random.nextInt(times) == 0;
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private Sheet sheet() {
        List<Operable> operables = new ArrayList<>();
        operables.add(new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS));
        int openings = random.nextInt(6);
        for (int i = 0; i < openings; i++) {
            Operable.Kind kind = oneOf(List.of(
                    Operable.Kind.DOOR,
                    Operable.Kind.DOOR,
                    Operable.Kind.DOOR,
                    Operable.Kind.HOOD,
                    Operable.Kind.TRUNK));
            operables.add(new Operable(new OperableId("opening-" + i), kind, Operable.OPENING_POSITIONS));
        }
        operables.add(new Operable(new OperableId("switch"), Operable.Kind.CONTROL, List.of("rest", "pressed")));
        List<Circuit> circuits = new ArrayList<>();
        int number = random.nextInt(18);
        for (int i = 0; i < number; i++) {
            circuits.add(circuit(i, oneOf(CircuitRole.class), operables));
        }
        if (!onceIn(8)) {
            circuits.add(circuit(100, CircuitRole.CONSTANT_SUPPLY, operables));
        }
        if (!onceIn(4)) {
            circuits.add(circuit(101, CircuitRole.IGNITION, operables));
            circuits.add(circuit(102, CircuitRole.STARTER, operables));
            circuits.add(circuit(103, CircuitRole.DOOR_TRIGGER, operables));
        }
        return new Sheet(vehicle(), operables, circuits);
    }

    private VehicleFacts vehicle() {
        return new VehicleFacts(
                "any",
                new Volts(onceIn(20) ? 24 : 12),
                onceIn(20) ? VehicleFacts.GroundPolarity.POSITIVE : VehicleFacts.GroundPolarity.NEGATIVE,
                oneOf(VehicleFacts.Gearbox.class),
                onceIn(6) ? oneOf(VehicleFacts.Drive.class) : VehicleFacts.Drive.COMBUSTION,
                onceIn(6) ? oneOf(VehicleFacts.Start.class) : VehicleFacts.Start.KEY,
                oneOf(VehicleFacts.Key.class),
                oneOf(VehicleFacts.Steering.class),
                onceIn(2) ? "" : "under the seat",
                onceIn(2) ? "" : "a pair",
                onceIn(2) ? "" : "horn",
                Figured.assumed("battery", AmpHours::new, 40, 60, 80),
                onceIn(2) ? Optional.empty() : Optional.of(between(0, 9)),
                Figured.amps(onceIn(5) ? 0 : between(0.005, 0.08)));
    }

    private Circuit circuit(int number, CircuitRole role, List<Operable> operables) {
        String id = "circuit-" + number;
        boolean usual = !onceIn(4);
        Switching switching = usual ? usual(role) : new Switching(level(), level());
        Operable works = onceIn(5) ? oneOf(operables) : worker(role, operables);
        boolean positive = switching.active() instanceof Level.Supply;
        List<List<PathStep>> paths = onceIn(12) ? List.of() : List.of(path(id, role, positive, works));
        return new Circuit(
                new CircuitId(id),
                role,
                new Where("", onceIn(3) ? "plug" : "", onceIn(3) ? "1" : "", ""),
                Optional.empty(),
                onceIn(2) ? Optional.empty() : Optional.of(size(oneOf(List.of(0.5, 1.5, 4.0)))),
                switching,
                onceIn(6) ? List.of() : List.of(works.id()),
                paths,
                onceIn(8) ? oneOf(Access.class) : Access.MAY_BE_CUT,
                new Basis(onceIn(3) ? oneOf(Certainty.class) : Certainty.VERIFIED, Place.nowhere(id)),
                "",
                "");
    }

    private Operable worker(CircuitRole role, List<Operable> operables) {
        return operables.stream()
                .filter(o -> switch (role) {
                    case DOOR_TRIGGER -> o.kind() == Operable.Kind.DOOR;
                    case HOOD_TRIGGER -> o.kind() == Operable.Kind.HOOD;
                    case TRUNK_TRIGGER -> o.kind() == Operable.Kind.TRUNK;
                    case CONSTANT_SUPPLY,
                            IGNITION,
                            SECOND_IGNITION,
                            ACCESSORY,
                            STARTER,
                            SECOND_STARTER,
                            GROUND,
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
                            DATA,
                            RESTRAINT,
                            HIGH_VOLTAGE,
                            OTHER -> o.kind() == Operable.Kind.KEY;
                })
                .findFirst()
                .orElse(operables.getFirst());
    }

    private Switching usual(CircuitRole role) {
        Level ground = new Level.Ground();
        Level supply = new Level.Supply();
        return switch (role) {
            case CONSTANT_SUPPLY -> new Switching(supply, supply);
            case IGNITION, SECOND_IGNITION, ACCESSORY, STARTER, SECOND_STARTER, PARKING_LAMP, BRAKE, FUEL_PUMP ->
                new Switching(ground, supply);
            case DATA, RESTRAINT, HIGH_VOLTAGE -> new Switching(new Level.Data(), new Level.Data());
            case LOCK_MOTOR_LEG -> new Switching(ground, new Level.Reversing());
            case GROUND,
                    DOOR_TRIGGER,
                    HOOD_TRIGGER,
                    TRUNK_TRIGGER,
                    INTERIOR_LIGHT,
                    HORN,
                    LOCK,
                    UNLOCK,
                    ALARM_ARM,
                    ALARM_DISARM,
                    TRUNK_RELEASE,
                    WINDOW,
                    TACHOMETER,
                    OTHER -> onceIn(4) ? new Switching(ground, supply) : new Switching(supply, ground);
        };
    }

    private Level level() {
        return oneOf(List.of(
                new Level.Ground(),
                new Level.Supply(),
                new Level.Open(),
                new Level.Resistance(new Ohms(820)),
                new Level.Voltage(new Volts(5)),
                new Level.Reversing(),
                new Level.Data()));
    }

    private List<PathStep> path(String id, CircuitRole role, boolean positive, Operable works) {
        PathStep contact = Steps.contact(
                id + "-switch", works.id().value(), works.positions().getLast());
        PathStep load = load(id, role);
        if (onceIn(10)) {
            return List.of(Steps.point(id + "-end"), Steps.here(), Steps.moduleInput(id + "-input", 2200));
        }
        if (role == CircuitRole.CONSTANT_SUPPLY && !onceIn(10)) {
            return List.of(Steps.supply(), Steps.fuse(id + "-fuse", oneOf(List.of(5.0, 20.0, 40.0))), Steps.here());
        }
        return positive
                ? List.of(
                        Steps.supply(),
                        Steps.fuse(id + "-fuse", oneOf(List.of(5.0, 15.0, 30.0))),
                        contact,
                        Steps.here(),
                        load,
                        Steps.ground())
                : List.of(Steps.supply(), load, Steps.here(), contact, Steps.ground());
    }

    private PathStep load(String id, CircuitRole role) {
        if (role == CircuitRole.STARTER || role == CircuitRole.SECOND_STARTER) {
            double ohms = between(0.1, 2);
            return onceIn(3)
                    ? Steps.load(
                            id + "-load",
                            PathStep.LoadKind.SOLENOID,
                            Figured.assumed(id, Ohms::new, ohms / 2, ohms, ohms * 2))
                    : Steps.solenoid(id + "-load", ohms);
        }
        return switch (random.nextInt(4)) {
            case 0 -> Steps.lamp(id + "-lamp", between(1, 60));
            case 1 -> Steps.coil(id + "-coil", id + "-relay", between(30, 300));
            case 2 -> Steps.electronic(id + "-load", between(1, 5000));
            default -> Steps.resistor(id + "-resistor", between(1, 50_000));
        };
    }

    private Kit kit() {
        List<Lead> leads = new ArrayList<>();
        List<OutputBehaviour> outputs = new ArrayList<>();
        int number = 1 + random.nextInt(30);
        for (int i = 0; i < number; i++) {
            LeadRole role = i == 0 ? LeadRole.SUPPLY : i == 1 ? LeadRole.GROUND : oneOf(LeadRole.class);
            Lead lead = lead(i, role);
            leads.add(lead);
            if (lead.port() instanceof Port.LowSide || lead.port() instanceof Port.HighSide) {
                outputs.add(new OutputBehaviour(lead.id(), states(role), oneOf(OutputTiming.class)));
            }
        }
        List<Extra> extras = new ArrayList<>();
        int boxed = random.nextInt(5);
        for (int i = 0; i < boxed; i++) {
            extras.add(new Extra(
                    "extra-" + i,
                    oneOf(Extra.Kind.class),
                    maybe(Figured.amps(between(0.01, 4))),
                    maybe(Figured.ohms(between(40, 200))),
                    maybe(Figured.amps(between(5, 60))),
                    maybe(Figured.amps(between(5, 60)))));
        }
        Set<LeadId> triggers = Set.of(leads.getLast().id());
        return new Kit(
                "any kit",
                Figured.volts(8),
                Figured.volts(16),
                Survival.UNSAID,
                Figured.amps(between(0.001, 0.05)),
                leads,
                options(leads),
                extras,
                new Behaviour(Figure.exactly(new Seconds(20), Figured.STATED), triggers, Set.of(), outputs));
    }

    private List<KitOption> options(List<Lead> leads) {
        List<KitOption> options = new ArrayList<>();
        for (Lead lead : leads) {
            if (onceIn(8)) {
                otherWayRound(lead.port())
                        .ifPresent(other -> options.add(new KitOption(
                                "option-" + lead.id(),
                                List.of(
                                        new KitOption.Setting("as it comes", Map.of()),
                                        new KitOption.Setting("turned", Map.of(lead.id(), other))))));
            }
        }
        return options;
    }

    private static Optional<Port> otherWayRound(Port port) {
        return switch (port) {
            case Port.Input in ->
                Optional.of(new Port.Input(
                        in.active() == Port.Active.LOW ? Port.Active.HIGH : Port.Active.LOW,
                        in.lowBelow(),
                        in.highAbove(),
                        /* pullUp= */ in.pullDown(),
                        /* pullDown= */ in.pullUp(),
                        in.clamps()));
            case Port.LowSide out ->
                Optional.of(new Port.HighSide(out.rating(), out.saturation(), out.pulse(), out.bodyDiode()));
            case Port.HighSide out ->
                Optional.of(new Port.LowSide(out.rating(), out.saturation(), out.pulse(), out.bodyDiode(), false));
            case Port.Supply supply -> Optional.empty();
            case Port.Ground ground -> Optional.empty();
            case Port.ToExtra extra -> Optional.empty();
        };
    }

    private <T> Optional<T> maybe(T value) {
        return onceIn(4) ? Optional.empty() : Optional.of(value);
    }

    private Set<ControllerState> states(LeadRole role) {
        if (role == LeadRole.STARTER_INTERRUPT && !onceIn(4)) {
            return Set.of(ControllerState.ARMED, ControllerState.WARNING, ControllerState.SOUNDING);
        }
        Set<ControllerState> states = EnumSet.noneOf(ControllerState.class);
        for (ControllerState state : ControllerState.values()) {
            if (state != ControllerState.WITHOUT_SUPPLY && onceIn(3)) {
                states.add(state);
            }
        }
        return states;
    }

    private Lead lead(int number, LeadRole role) {
        return new Lead(
                new LeadId("lead-" + number),
                "P1",
                Integer.toString(number),
                Optional.empty(),
                size(oneOf(List.of(0.35, 0.5, 0.75, 1.5, 2.5))),
                role,
                onceIn(6) ? port(oneOf(LeadRole.class)) : port(role),
                onceIn(5),
                "",
                Figured.STATED);
    }

    private static Figure<SquareMillimetres> size(double area) {
        return Figure.exactly(new SquareMillimetres(area), Figured.STATED);
    }

    private Port port(LeadRole role) {
        return switch (role) {
            case SUPPLY -> new Port.Supply();
            case GROUND -> new Port.Ground();
            case IGNITION_SENSE, DOOR_INPUT, HOOD_INPUT, TRUNK_INPUT, BRAKE_INPUT ->
                new Port.Input(
                        oneOf(Port.Active.class),
                        Figured.volts(2),
                        Figured.volts(4),
                        maybe(Figured.ohms(10_000)),
                        maybe(Figured.ohms(10_000)),
                        onceIn(2));
            case SENSOR_INPUT, INDICATOR, OVERRIDE_BUTTON, TRACKER, OTHER ->
                onceIn(2) ? new Port.ToExtra("extra-0") : port(LeadRole.DOOR_INPUT);
            case STARTER_INTERRUPT,
                    HORN,
                    INTERIOR_LIGHT,
                    LOCK,
                    UNLOCK,
                    DRIVER_UNLOCK,
                    TRUNK_RELEASE,
                    WINDOW,
                    REMOTE_START -> onceIn(5) ? highSide() : lowSide();
            case SIREN, LAMPS -> onceIn(3) ? lowSide() : highSide();
        };
    }

    private Port lowSide() {
        return new Port.LowSide(
                Figured.amps(between(0.05, 1)), Figured.volts(0.3), Optional.empty(), onceIn(2), onceIn(2));
    }

    private Port highSide() {
        return new Port.HighSide(Figured.amps(between(0.2, 15)), Figured.volts(0.2), Optional.empty(), onceIn(2));
    }

    private Order order(Sheet sheet) {
        Set<Wish> wishes = EnumSet.noneOf(Wish.class);
        for (Wish wish : Wish.values()) {
            if (wish != Wish.BASICS && onceIn(2)) {
                wishes.add(wish);
            }
        }
        List<OperableId> watched = wishes.contains(Wish.WATCH_OPENINGS)
                ? sheet.operables().stream()
                        .filter(o -> o.isOpening() && !onceIn(4))
                        .map(Operable::id)
                        .toList()
                : List.of();
        ShopChoices shop = new ShopChoices(
                oneOf(ShopChoices.Joint.class),
                oneOf(ShopChoices.Sizes.class),
                new Celsius(-20),
                new Celsius(between(30, 85)),
                Optional.empty(),
                Map.of(),
                Figure.exactly(new Metres(between(0.3, 6)), Figured.STATED));
        return new Order(
                "any job",
                wishes,
                watched,
                Optional.empty(),
                oneOf(Order.RuleSet.class),
                random.nextInt(90),
                shop,
                onceIn(2) ? Set.of() : Set.of("cube-40"));
    }
}
