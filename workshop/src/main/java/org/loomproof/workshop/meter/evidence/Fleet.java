package org.loomproof.workshop.meter.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.Shows;
import org.loomproof.workshop.meter.role.WireModel;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * All drawn wires in a row, one more at the end for what we have no model of. Beliefs and likelihoods are arrays over them. Not for
 * sharing between threads.
 */
public final class Fleet {

    /** A reading is looked at again for every other one of its wire. */
    private static final int MOST_KEPT = 200;

    private final List<WireModel> models;
    private final WireRole[] roles;
    private final Map<Reading, double[]> kept = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Reading, double[]> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** @param models each way in which a wire may be built */
    public Fleet(List<WireModel> models) {
        this.models = List.copyOf(models);
        List<WireRole> all = new ArrayList<>();
        for (WireModel model : models) {
            for (int car = 0; car < model.cars(); car++) {
                all.add(model.role());
            }
        }
        all.add(WireRole.NONE_OF_THESE);
        this.roles = all.toArray(WireRole[]::new);
    }

    /** How many drawn wires, the unknown one included. */
    public int size() {
        return roles.length;
    }

    /** What the wire at that place is. */
    public WireRole role(int at) {
        return roles[at];
    }

    /** Each way of building, in the order of the drawn wires. */
    public List<WireModel> models() {
        return models;
    }

    /**
     * The likelihood of a reading on each drawn wire.
     *
     * @param earlier readings that the belief already holds: a wire of an unknown sort tends to show again what it showed
     */
    public double[] likelihood(Reading reading, List<Reading> earlier) {
        double[] all = kept.computeIfAbsent(reading, this::onDrawnWires).clone();
        if (counts(reading)) {
            all[size() - 1] = Likelihood.counted(Anything.density(reading, earlier));
        }
        return all;
    }

    /** True for a reading that says something of what a wire is: taken, in volts or ohms. */
    public static boolean counts(Reading reading) {
        return reading.isTaken() && reading.measured() != Measured.AMPS;
    }

    private double[] onDrawnWires(Reading reading) {
        double[] all = new double[size()];
        if (!counts(reading)) {
            Arrays.fill(all, 1);
            return all;
        }
        Step step = reading.step();
        double meterOhms = reading.meter().inputOhms();
        int at = 0;
        for (WireModel model : models) {
            List<Shows> shows = model.shows(step, meterOhms);
            List<Shows> before = Likelihood.isTooSlow(reading) ? model.shows(Step.at(Step.KeyAt.ON), meterOhms) : shows;
            for (int car = 0; car < model.cars(); car++) {
                int which = car;
                all[at++] = Likelihood.of(
                        reading,
                        shows.get(car),
                        before.get(car),
                        () -> model.ohms(step).get(which),
                        battery(reading, model, car),
                        model.looseVolts());
            }
        }
        return all;
    }

    private static double battery(Reading reading, WireModel model, int car) {
        OptionalDouble known = reading.batteryVolts();
        return known.isPresent()
                ? known.getAsDouble()
                : model.battery(car, reading.step().key());
    }
}
