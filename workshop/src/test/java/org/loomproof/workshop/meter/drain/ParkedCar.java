package org.loomproof.workshop.meter.drain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;

/**
 * A made-up car after locking, by physics of its own: modules that each draw until they go to sleep, a resistance that leaks,
 * something that wakes by a clock, someone who passes with the key, and a logger that is off, coarse, seldom or slips. Knows
 * nothing of the tool.
 */
final class ParkedCar {

    /** What is planted. */
    enum Planted {
        NOTHING,
        LEAK,
        WAKER,
        LEAK_AND_WAKER;

        boolean leaks() {
            return this == LEAK || this == LEAK_AND_WAKER;
        }

        boolean wakes() {
            return this == WAKER || this == LEAK_AND_WAKER;
        }
    }

    private record Module(double amps, double awakeMinutes) {}

    private final SplittableRandom chance;
    private final Planted planted;
    private final double asleepAmps;
    private final List<Module> modules = new ArrayList<>();
    private final double leakOhms;
    private final double turnMinutes;
    private final double awakeMinutes;
    private final double wakeAmps;
    private final double passesAt;
    private final List<Double> wakings = new ArrayList<>();

    /**
     * A car.
     *
     * @param typicalAmps what its sheet says it draws asleep; it differs from that by up to a third
     */
    ParkedCar(long seed, Planted planted, double typicalAmps) {
        this.chance = new SplittableRandom(seed);
        this.planted = planted;
        asleepAmps = typicalAmps * between(0.75, 1.33);
        int count = 2 + chance.nextInt(4);
        for (int k = 0; k < count; k++) {
            boolean late = chance.nextDouble() < 0.02;
            modules.add(new Module(inDecades(0.08, 5), late ? between(40, 120) : inDecades(0.4, 38)));
        }
        leakOhms = 12.5 / inDecades(0.05, 3);
        turnMinutes = inDecades(3, 20);
        awakeMinutes = between(0.7, 2.5);
        wakeAmps = inDecades(0.3, 4);
        passesAt = chance.nextDouble() < 0.1 ? between(5, 120) : -1;
        double at = between(2, 2 + turnMinutes);
        while (at < 600) {
            wakings.add(at);
            at += turnMinutes * between(0.9, 1.1);
        }
    }

    private double between(double low, double high) {
        return low + (high - low) * chance.nextDouble();
    }

    private double inDecades(double low, double high) {
        return low * Math.pow(high / low, chance.nextDouble());
    }

    /** Amps at a moment, in minutes after locking. */
    double amps(double minutes) {
        double amps = asleepAmps;
        for (Module module : modules) {
            amps += minutes < module.awakeMinutes() ? module.amps() : 0;
        }
        if (planted.leaks()) {
            amps += (12.75 - 0.15 * Math.min(1, minutes / 60)) / leakOhms;
        }
        if (planted.wakes() && wakings.stream().anyMatch(at -> minutes >= at && minutes < at + awakeMinutes)) {
            amps += wakeAmps;
        }
        if (passesAt >= 0 && minutes >= passesAt && minutes < passesAt + 1.5) {
            amps += 2.2;
        }
        return amps;
    }

    /** Whether all modules sleep so long after locking. */
    boolean sleepsBy(double minutes) {
        return modules.stream().allMatch(module -> module.awakeMinutes() < minutes);
    }

    /** What is drawn for days, wakings spread over the time. */
    double lastingAmps() {
        double leak = planted.leaks() ? 12.6 / leakOhms : 0;
        double wakes = planted.wakes() ? wakeAmps * awakeMinutes / turnMinutes : 0;
        return asleepAmps + leak + wakes;
    }

    /** A log as a logger writes it: a sample in so many minutes. */
    String log(double everyMinutes, double lengthMinutes) {
        double first = Math.max(0.2, everyMinutes / 2);
        return log(DoubleStream.iterate(first, at -> at <= lengthMinutes, at -> at + everyMinutes));
    }

    /** A log of these moments, in minutes, with the meter's gain, digits and slips. */
    String log(DoubleStream moments) {
        StringBuilder log = new StringBuilder("wire,step,value,unit\n");
        double gain = between(0.985, 1.015);
        moments.forEach(at -> {
            double ripple = 1 + 0.01 * (chance.nextDouble() + chance.nextDouble() - 1);
            double amps = amps(at) * gain * ripple * (chance.nextDouble() < 0.003 ? 10 : 1);
            log.append(String.format(Locale.ROOT, "battery,after %.2f min,%.3f,A%n", at, amps));
        });
        return log.toString();
    }
}
