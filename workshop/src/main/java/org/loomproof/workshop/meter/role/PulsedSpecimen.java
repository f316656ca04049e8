package org.loomproof.workshop.meter.role;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.wiring.VehicleWiring;

/** A wire that goes to and fro, in one car. A meter shows the average. */
final class PulsedSpecimen implements Specimen {

    private static final Node POST = new Node("battery plus");
    private static final Node WIRE = new Node("wire");
    private static final Node SOURCE = new Node("driver");
    private static final Node REST = new Node("rest");
    private static final PartId BATTERY = new PartId("battery");
    private static final PartId DRIVER = new PartId("driver");
    private static final PartId HELD = new PartId("held");
    private static final PartId DRIVING = new PartId("driving");
    private static final PartId RESTING = new PartId("resting");
    private static final double CONTACT_OHMS = 1e-3;
    private static final double REST_OHMS = 2e3;
    /** Cold filaments of 60 W to 5 W: a tenth of what they have when lit. Common practice, no published source. */
    private static final double LEAST_COLD_OHMS = 0.25;

    private static final double MOST_COLD_OHMS = 3.5;
    private static final double HERTZ = 1000;
    private static final double REFERENCE_VOLTS = 12.6;

    private final PulsedWire wire;
    private final double top;
    private final double bottom;
    private final double duty;
    private final double coldOhms;
    private final Bench bench;

    PulsedSpecimen(PulsedWire wire, Chance chance) {
        this.wire = wire;
        this.top = chance.between(wire.topLow(), wire.topHigh());
        this.bottom = chance.between(wire.bottomLow(), wire.bottomHigh());
        this.duty = chance.between(wire.dutyLow(), wire.dutyHigh());
        this.coldOhms = chance.magnitude(LEAST_COLD_OHMS, MOST_COLD_OHMS);
        double inner = chance.magnitude(wire.ohmsLow(), wire.ohmsHigh());
        List<Part> car = new ArrayList<>();
        car.add(new Battery(BATTERY, POST, Node.CHASSIS, REFERENCE_VOLTS, VehicleWiring.POST_OHMS));
        car.add(new PulsedSource(DRIVER, SOURCE, Node.CHASSIS, top(REFERENCE_VOLTS), bottom, HERTZ, duty, inner));
        car.add(new Switch(DRIVING, SOURCE, WIRE, CONTACT_OHMS));
        car.add(new Battery(HELD, REST, Node.CHASSIS, 0, REST_OHMS));
        car.add(new Switch(RESTING, REST, WIRE, CONTACT_OHMS));
        car.add(new Resistor(new PartId("plug"), SOURCE, new Node("plug"), REST_OHMS));
        this.bench = new Bench(car, POST, WIRE, chance.magnitude(Bench.LEAST_LEAK_OHMS, Bench.MOST_LEAK_OHMS));
    }

    private double top(double battery) {
        return wire.topIsShare() ? top * battery : top;
    }

    @Override
    public Shows at(Setup setup) {
        boolean active = isActive(setup);
        Setting setting = bench.with(setup);
        if (active) {
            setting = setting.closed(DRIVING);
        } else if (!wire.idle().equals("open")) {
            setting = setting.closed(RESTING);
        }
        double swing = 0;
        if (active) {
            swing = bench.volts(at(setting, REFERENCE_VOLTS).emf(DRIVER, top(REFERENCE_VOLTS)))
                    - bench.volts(at(setting, REFERENCE_VOLTS).emf(DRIVER, bottom));
        }
        return new Shows(bench.volts(at(setting, 10)), bench.volts(at(setting, 14)), swing, bench.floats(setting));
    }

    /**
     * Cold filaments, where a module dims lamps. Else nobody can say what electronics without supply show; as good as an open
     * line.
     */
    @Override
    public OptionalDouble ohms(Setup setup) {
        return wire.when() == PulsedWire.When.WORKED ? OptionalDouble.of(coldOhms) : OptionalDouble.empty();
    }

    private Setting at(Setting setting, double battery) {
        double idle = switch (wire.idle()) {
            case "ground", "open" -> 0;
            case "supply" -> battery;
            default -> Double.parseDouble(wire.idle());
        };
        return setting.emf(BATTERY, battery)
                .emf(DRIVER, duty * top(battery) + (1 - duty) * bottom)
                .emf(HELD, idle);
    }

    private boolean isActive(Setup setup) {
        return switch (wire.when()) {
            case AWAKE -> !setup.asleep();
            case TURNING -> !setup.position(MiniSheet.ENGINE, MiniSheet.STOPPED).equals(MiniSheet.STOPPED);
            case WORKED ->
                !setup.position(MiniSheet.CONTROL, MiniSheet.REST).equals(MiniSheet.REST)
                        || setup.position(MiniSheet.OPENING, "closed").equals(Operable.OPENING_POSITIONS.getLast());
        };
    }
}
