package org.loomproof.workshop.meter.role;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.loomproof.network.part.Meter;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.reading.Step;

/**
 * One way in which a wire of a role is built, as many drawn cars. What they show is solved when it is first asked for and
 * kept. Not for sharing between threads.
 */
public final class WireModel {

    private static final long BATTERY_SEED = 12;

    private final WireRole role;
    private final double share;
    private final double sleeps;
    private final double looseVolts;
    private final Sheet sheet;
    private final Circuit circuit;
    private final Optional<PulsedWire> pulsed;
    private final int cars;
    private final List<Specimen> specimens = new ArrayList<>();
    private final double[] batteryShares;
    private final Map<Setup, List<Shows>> solved = new HashMap<>();
    private final Map<Setup, List<OptionalDouble>> solvedOhms = new HashMap<>();

    WireModel(
            WireRole role,
            double share,
            double sleeps,
            double looseVolts,
            Sheet sheet,
            Circuit circuit,
            Optional<PulsedWire> pulsed,
            int cars) {
        this.role = role;
        this.share = share;
        this.sleeps = sleeps;
        this.looseVolts = looseVolts;
        this.sheet = sheet;
        this.circuit = circuit;
        this.pulsed = pulsed;
        this.cars = cars;
        this.batteryShares =
                new SplittableRandom(BATTERY_SEED).doubles(2L * cars).toArray();
    }

    /** What such a wire is. */
    public WireRole role() {
        return role;
    }

    /** The circuit it stands for: of the sheet, or of a car of our own with this one circuit. */
    public Circuit circuit() {
        return circuit;
    }

    /** How common it is among the wires of its role; 1 in all. */
    public double share() {
        return share;
    }

    /** The share of cars whose modules let the wire go when they sleep. */
    double sleepShare() {
        return sleeps;
    }

    /** How far apart drawn cars lie at a level that is neither pole, where several resistances together make it. */
    public double looseVolts() {
        return looseVolts;
    }

    /** How many drawn cars. */
    public int cars() {
        return cars;
    }

    /** True when a module's electronics hang on the wire, into which no current may be sent. */
    public boolean isOfModule() {
        return pulsed.isPresent()
                || circuit.paths().stream().flatMap(List::stream).anyMatch(PathStep.Input.class::isInstance);
    }

    /** Volts at the battery of one of the cars, where nobody measured them. */
    public double battery(int car, Step.KeyAt key) {
        boolean turns = key == Step.KeyAt.CRANKING || key == Step.KeyAt.RUNNING;
        return Specimen.battery(key, batteryShares[2 * car + (turns ? 1 : 0)]);
    }

    /** What each of the cars shows in a step, to a meter of that input resistance. */
    public List<Shows> shows(Step step, double meterOhms) {
        return solved.computeIfAbsent(Positions.setup(step, sheet, circuit, meterOhms), this::solve);
    }

    /** Ohms to the body in a step with the batteries out, for each of the cars; empty for an open line. */
    public List<OptionalDouble> ohms(Step step) {
        Setup setup = Positions.setup(step, sheet, circuit, Meter.USUAL_OHMS);
        return solvedOhms.computeIfAbsent(
                setup, s -> specimens().stream().map(each -> each.ohms(s)).toList());
    }

    private List<Shows> solve(Setup setup) {
        return specimens().stream().map(each -> each.at(setup)).toList();
    }

    private List<Specimen> specimens() {
        if (specimens.isEmpty()) {
            for (int car = 0; car < cars; car++) {
                specimens.add(specimen(car));
            }
        }
        return specimens;
    }

    private Specimen specimen(int car) {
        Chance chance = Chance.usual(car, cars);
        return pulsed.isPresent()
                ? new PulsedSpecimen(pulsed.get(), chance)
                : new PathSpecimen(sheet, circuit.id(), sleeps, chance);
    }
}
