package org.loomproof.workshop.meter.drain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.meter.evidence.Bell;

/**
 * The probability of everything that may be behind a log, by Bayes' rule over three questions that are taken to be independent:
 * is the level where it rests the one of a sleeping car, more, or nothing a car shows; how long a module may still be awake; how
 * often something woke. Sums over grids, nothing drawn. The figures are common practice with no published source.
 */
final class Weighing {

    private static final double PRIOR_ASLEEP = 0.45;
    private static final double PRIOR_MORE = 0.45;
    private static final double PRIOR_LESS = 0.05;
    private static final double PRIOR_STRANGE = 0.05;

    /** How well a level is known: the meter's gain and the cold. */
    private static final double LEVEL_SPREAD = 0.08;

    /** The least and the most that is called a drain, amps. */
    private static final double LEAST_MORE = 0.03;

    private static final double MOST_MORE = 30;

    /** What no car draws asleep: from so small a share of it up to half of it. */
    private static final double LEAST_SHARE = 0.005;

    /** A level of anything at all: evenly in logarithms from 0.5 mA to 1000 A. */
    private static final double ANYTHING = 1 / Math.log(1000 / Plateaus.NOTHING_AMPS);

    private static final int GRID = 60;

    /** A module sleeps after twenty seconds to forty minutes, evenly in logarithms; three in a hundred take up to three hours. */
    private static final double FIRST_SLEEP_MINUTES = 1 / 3.0;

    private static final double LAST_SLEEP_MINUTES = 40;
    private static final double LATE_SLEEP_MINUTES = 180;
    private static final double LATE_SHARE = 0.03;
    private static final double NEVER_RULED_OUT = 0.0005;

    private static final double PRIOR_WAKES = 0.15;

    /** Wakings an hour of a car with nothing wrong: someone passes with the key. */
    private static final double CHANCE_WAKINGS = 0.2;

    private static final double LEAST_WAKINGS = 0.5;
    private static final double MOST_WAKINGS = 60;

    /** How long a car that woke stays awake. */
    private static final double AWAKE_MINUTES = 2;

    /** One sample of a logger in so many is nonsense. */
    private static final double SLIPS = 1 / 300.0;

    /** A car falls or comes back to its floor; strays speak for something that is no car. */
    private static final double FALL_ODDS = 0.6;

    private static final double BURST_ODDS = 1 / 24.0;
    private static final double STRAY_ODDS = 6;

    private final Resting resting;
    private final Course course;
    private final List<Sample> samples;

    Weighing(Resting resting, Course course, List<Sample> samples) {
        this.resting = resting;
        this.course = course;
        this.samples = samples;
    }

    /** The probabilities, which sum to 1. */
    Map<Behind, Double> chances() {
        double asleep = PRIOR_ASLEEP * levelOf(0);
        double more = PRIOR_MORE * more();
        double less = PRIOR_LESS * less();
        double strange = PRIOR_STRANGE
                * ANYTHING
                * Math.pow(FALL_ODDS, course.falls())
                * Math.pow(BURST_ODDS, course.bursts().size())
                * Math.pow(STRAY_ODDS, course.strays());
        double awake = stillAwake();
        double wakes = wakes();
        Map<Behind, Double> chances = new EnumMap<>(Behind.class);
        chances.put(Behind.IN_ORDER, asleep * (1 - wakes));
        chances.put(Behind.WAKES_AGAIN, asleep * wakes);
        chances.put(Behind.GOING_TO_SLEEP, more * awake);
        chances.put(Behind.STEADY_DRAIN, more * (1 - awake) * (1 - wakes));
        chances.put(Behind.STEADY_AND_WAKES, more * (1 - awake) * wakes);
        chances.put(Behind.NONE_OF_THESE, less + strange);
        double sum = chances.values().stream().mapToDouble(Double::doubleValue).sum();
        chances.replaceAll((behind, chance) -> chance / sum);
        return chances;
    }

    /** Density of the level in logarithms when so many amps are drawn beside the sleeping car. */
    private double levelOf(double beside) {
        double level = Plateaus.logAmps(course.floor().amps());
        return resting.mean(amps -> Bell.density(level, Plateaus.logAmps(amps + beside), LEVEL_SPREAD));
    }

    private double more() {
        double sum = 0;
        for (int k = 0; k < GRID; k++) {
            sum += levelOf(LEAST_MORE * Math.pow(MOST_MORE / LEAST_MORE, (k + 0.5) / GRID));
        }
        return sum / GRID;
    }

    private double less() {
        double level = Plateaus.logAmps(course.floor().amps());
        double sum = 0;
        for (int k = 0; k < GRID; k++) {
            double share = LEAST_SHARE * Math.pow(0.5 / LEAST_SHARE, (k + 0.5) / GRID);
            sum += resting.mean(amps -> Bell.density(level, Plateaus.logAmps(amps * share), LEVEL_SPREAD));
        }
        return sum / GRID;
    }

    /** How likely what is too much is a module that has yet to go to sleep, half and half before the log began. */
    private double stillAwake() {
        double waited = samples.getLast().minutes() - course.awakeSinceMinutes();
        double pending = awakeAfter(Math.max(waited, FIRST_SLEEP_MINUTES));
        return pending / (1 + pending);
    }

    /** The share of modules that are awake so long after locking. */
    static double awakeAfter(double minutes) {
        if (minutes >= LATE_SLEEP_MINUTES) {
            return NEVER_RULED_OUT;
        }
        double late = minutes <= LAST_SLEEP_MINUTES
                ? LATE_SHARE
                : LATE_SHARE
                        * Math.log(LATE_SLEEP_MINUTES / minutes)
                        / Math.log(LATE_SLEEP_MINUTES / LAST_SLEEP_MINUTES);
        double usual = minutes >= LAST_SLEEP_MINUTES
                ? 0
                : (1 - LATE_SHARE)
                        * Math.log(LAST_SLEEP_MINUTES / minutes)
                        / Math.log(LAST_SLEEP_MINUTES / FIRST_SLEEP_MINUTES);
        return Math.max(NEVER_RULED_OUT, usual + late);
    }

    /**
     * Wakings are counted by Poisson's law, those of a single sample apart from the longer ones: a slip of the meter is never
     * longer. A log that looks seldom misses some.
     */
    private double wakes() {
        double hours = hoursAtRest();
        double between = (samples.getLast().minutes() - samples.getFirst().minutes()) / (samples.size() - 1);
        double caught = Math.min(1, AWAKE_MINUTES / Math.max(between, 0.01));
        double single = Math.clamp(between / AWAKE_MINUTES, 0.02, 0.98);
        double slips = SLIPS * hours * 60 / Math.max(between, 0.01);
        int singles = (int) course.burstsAtRest().stream()
                .filter(burst -> burst.samples() == 1)
                .count();
        int longer = course.burstsAtRest().size() - singles;
        double often = 0;
        for (int k = 0; k < GRID; k++) {
            double rate = LEAST_WAKINGS * Math.pow(MOST_WAKINGS / LEAST_WAKINGS, (k + 0.5) / GRID);
            double seen = (rate + CHANCE_WAKINGS) * caught * hours;
            often += poisson(singles, single * seen + slips) * poisson(longer, (1 - single) * seen) / GRID;
        }
        double chance = CHANCE_WAKINGS * caught * hours;
        double seldom = poisson(singles, single * chance + slips) * poisson(longer, (1 - single) * chance);
        return PRIOR_WAKES * often / (PRIOR_WAKES * often + (1 - PRIOR_WAKES) * seldom);
    }

    private double hoursAtRest() {
        return Math.max(1 / 60.0, (samples.getLast().minutes() - course.floor().sinceMinutes()) / 60);
    }

    /** Up to the factor that both hypotheses share. */
    private static double poisson(int count, double mean) {
        return Math.exp(-mean + count * Math.log(mean));
    }
}
