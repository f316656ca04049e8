package org.loomproof.workshop.meter.drain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.standby.Standby;
import org.loomproof.workshop.trade.battery.StandbyDrain;

/**
 * What a log of the current after locking says.
 *
 * @param plateaus the levels it went through
 * @param chances what may be behind it, with probabilities that sum to 1
 * @param isLongEnough whether it rested long enough for a verdict
 * @param isWatched whether it was looked at often enough, while it rested, to see a thing that wakes for a minute
 * @param expected what car and plan draw asleep: nine in ten of such cars, amps
 * @param drawn what the battery gives at rest, wakings spread over the time; amps
 * @param waking how it wakes again, when it does
 * @param mild days until the engine no longer cranks at +20 °C; empty while nobody knows what is drawn in the end
 * @param cold the same at -10 °C
 * @param hunt through which branch, as long as a drain is likely; while nothing is settled it says where to look, not what was found
 */
public record DrainFinding(
        List<Plateau> plateaus,
        Map<Behind, Double> chances,
        boolean isLongEnough,
        boolean isWatched,
        Band expected,
        Band drawn,
        Optional<Waking> waking,
        Optional<Band> mild,
        Optional<Band> cold,
        Optional<Hunt> hunt) {

    /** From here on something is said to be behind it. */
    public static final double SURE = 0.9;

    /** Fewer samples than this, or a shorter time, are no plateau that a verdict may lean on. */
    private static final int LEAST_SAMPLES = 4;

    private static final double LEAST_MINUTES = 5;

    /** From one look to the next, on average: what wakes for less a hand at the clamp does not see. Common practice. */
    private static final double MOST_MINUTES_APART = 1.2;

    private static final double BATTERY_SPREAD = 0.1;
    private static final double DRAWN_SPREAD = 0.15;
    private static final double MOST_OFF = 0.9;
    private static final double LIKELY = 0.5;

    /** From least to most. */
    public record Band(double low, double typical, double high) {}

    /**
     * How it wakes.
     *
     * @param times how often in the log
     * @param everyMinutes from one waking to the next, in the middle; empty with a single one
     * @param isRegular whether they follow each other by the clock
     * @param amps the most it drew then
     */
    public record Waking(int times, OptionalDouble everyMinutes, boolean isRegular, double amps) {}

    public DrainFinding {
        plateaus = List.copyOf(plateaus);
        chances = Map.copyOf(chances);
    }

    /** What is behind it, when that is certain enough to be said. */
    public Optional<Behind> settled() {
        return chances.entrySet().stream()
                .filter(e -> e.getValue() >= SURE && (isLongEnough || e.getKey() == Behind.NONE_OF_THESE))
                .filter(e -> isWatched || e.getKey() != Behind.IN_ORDER)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The probability of one. */
    public double chance(Behind behind) {
        return chances.getOrDefault(behind, 0.0);
    }

    /** The probability that something empties the battery that should not. */
    public double drainChance() {
        return chances.entrySet().stream()
                .filter(e -> e.getKey().isDrain())
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /** What a log says of a car with its plan carried out, armed and locked. */
    public static DrainFinding of(Brief brief, Plan plan, DrainLog log) {
        Resting resting = Resting.of(brief, plan);
        Course course = Course.of(Plateaus.of(log.samples()));
        double end = log.samples().getLast().minutes();
        boolean isLongEnough = course.floor().samples() >= LEAST_SAMPLES
                && end - course.floor().sinceMinutes() >= LEAST_MINUTES;
        double rested = end - course.floor().sinceMinutes();
        boolean isWatched = rested <= MOST_MINUTES_APART * (course.floor().samples() - 1);
        Map<Behind, Double> chances = new EnumMap<>(new Weighing(resting, course, log.samples()).chances());
        double drawn = AtRest.meanAmps(log.samples(), course);
        double off = Math.min(MOST_OFF, DRAWN_SPREAD + AtRest.wakingError(log.samples(), course, drawn));
        Band band = new Band(drawn * (1 - off), drawn, drawn * (1 + off));
        boolean isKnown = isLongEnough
                && (isWatched || chances.getOrDefault(Behind.IN_ORDER, 0.0) < LIKELY)
                && chances.getOrDefault(Behind.GOING_TO_SLEEP, 0.0) + chances.getOrDefault(Behind.NONE_OF_THESE, 0.0)
                        < LIKELY;
        DrainFinding finding = new DrainFinding(
                course.plateaus(),
                chances,
                isLongEnough,
                isWatched,
                new Band(resting.lowAmps(), resting.typicalAmps(), resting.highAmps()),
                band,
                AtRest.waking(course),
                isKnown ? Optional.of(days(brief, band, StandbyDrain.MILD)) : Optional.empty(),
                isKnown ? Optional.of(days(brief, band, StandbyDrain.COLD)) : Optional.empty(),
                Optional.empty());
        return finding.drainChance() > LIKELY ? finding.hunting(log, resting) : finding;
    }

    /** A waker is hunted at its most, a steady drain at what it draws all the time. */
    private DrainFinding hunting(DrainLog log, Resting resting) {
        double least = 0.01;
        double steady = chance(Behind.STEADY_DRAIN) + chance(Behind.STEADY_AND_WAKES) > chance(Behind.WAKES_AGAIN)
                ? drawn.typical()
                : waking.map(Waking::amps).orElse(drawn.typical());
        double more = Math.max(least, steady - resting.typicalAmps());
        return new DrainFinding(
                plateaus,
                chances,
                isLongEnough,
                isWatched,
                expected,
                drawn,
                waking,
                mild,
                cold,
                Optional.of(Hunt.of(log.branches(), more, resting.typicalAmps())));
    }

    private static Band days(Brief brief, Band amps, Celsius temperature) {
        VehicleFacts vehicle = brief.sheet().vehicle();
        Figure<AmpHours> battery = vehicle.batteryCapacity();
        return new Band(
                days(vehicle, battery.low().value() * (1 - BATTERY_SPREAD), amps.high(), temperature),
                days(vehicle, battery.typical().value(), amps.typical(), temperature),
                days(vehicle, battery.high().value() * (1 + BATTERY_SPREAD), amps.low(), temperature));
    }

    private static double days(VehicleFacts vehicle, double ampHours, double amps, Celsius temperature) {
        return Standby.days(vehicle, new AmpHours(ampHours), temperature, new Amps(amps));
    }
}
