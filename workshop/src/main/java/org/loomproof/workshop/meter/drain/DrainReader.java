package org.loomproof.workshop.meter.drain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.meter.drain.Branch.Seen;
import org.loomproof.workshop.meter.drain.Branch.Way;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.ReadingsReader;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.standby.Standby;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads a log of the battery's current from a file of readings: lines of the wire {@code battery} with a step {@code after 20
 * min} and amps; and branches: millivolts across a fuse whose name ends in its rating ({@code F12 10A}) or is one of the plan's,
 * or amps by a clamp. A branch that was {@code not taken} is one that could be measured.
 */
public final class DrainReader {

    /** A log of a night, one sample in twenty seconds; the search for plateaus takes the square of it. */
    public static final int MOST_SAMPLES = 3000;

    private static final int LEAST_SAMPLES = 2;
    private static final double MOST_FUSE_VOLTS = 0.5;

    /** Fuses of one rating differ so much from each other: standard deviation. Common practice, no published source. */
    private static final double FUSE_SPREAD = 0.1;

    /** From a limit of error to its standard deviation: a rectangle. JCGM 100 (GUM), 4.3.7. */
    private static final double RECTANGLE = Math.sqrt(3);

    private static final Pattern RATING = Pattern.compile(".*?(\\d{1,3}(?:[.,]\\d)?)\\s*A");

    private final Map<String, Amps> planned = new LinkedHashMap<>();
    private final List<Sample> samples = new ArrayList<>();
    private final Map<String, Branch> branches = new LinkedHashMap<>();

    /** The plan's fuses that the key does not feed: the others are dead while the car stands. */
    private final Set<String> alive = new LinkedHashSet<>();

    private DrainReader(Brief brief, Plan plan) {
        plan.parts().stream()
                .filter(AddedPart.Fuse.class::isInstance)
                .map(AddedPart.Fuse.class::cast)
                .forEach(fuse -> {
                    planned.put(fuse.id().value(), fuse.rating());
                    if (!Standby.isFedByTheKey(brief, plan, fuse.id())) {
                        alive.add(fuse.id().value());
                    }
                });
    }

    /** The log in a file, or every problem of it. */
    public static Checked<DrainLog> read(Path file, Brief brief, Plan plan) {
        return CsvLines.read(file, text -> read(text, brief, plan));
    }

    /** The log in a text, or every problem of it. */
    public static Checked<DrainLog> read(SourceText text, Brief brief, Plan plan) {
        return new DrainReader(brief, plan).log(text);
    }

    private Checked<DrainLog> log(SourceText text) {
        Problems problems = new Problems(text.name());
        for (Reading reading : new ReadingsReader(Map.of()).read(text, problems).readings()) {
            if (!reading.isOfBattery()) {
                takeBranch(reading, problems);
            } else if (reading.measured() == Measured.AMPS) {
                takeSample(reading, problems);
            }
        }
        if (problems.isEmpty() && (samples.size() < LEAST_SAMPLES || samples.size() > MOST_SAMPLES)) {
            problems.add(
                    Place.file(text.name()),
                    samples.size() < LEAST_SAMPLES ? ProblemKind.MISSING : ProblemKind.OUT_OF_RANGE,
                    String.valueOf(samples.size()),
                    Phrase.of("problem.wanted.log-of-current", LEAST_SAMPLES, MOST_SAMPLES));
        }
        alive.forEach(id -> branches.putIfAbsent(id, new Branch(id, Way.ACROSS_FUSE, true, Optional.empty())));
        samples.sort(Comparator.comparingDouble(Sample::minutes));
        return problems.orElse(new DrainLog(samples, List.copyOf(branches.values())));
    }

    private void takeSample(Reading reading, Problems problems) {
        OptionalDouble amps = value(reading, problems);
        Step step = reading.step();
        boolean isShut = (step.key() == KeyAt.OFF || step.key() == KeyAt.NO_KEY) && step.worked() == Worked.NOTHING;
        if (step.afterSeconds().isEmpty() || !isShut) {
            problems.add(reading.at(), ProblemKind.WRONG_SHAPE, step.word(), Phrase.of("problem.wanted.step-of-log"));
        } else if (amps.isPresent()) {
            if (amps.getAsDouble() < 0) {
                problems.add(
                        reading.at(),
                        ProblemKind.OUT_OF_RANGE,
                        String.valueOf(amps.getAsDouble()),
                        Phrase.of("problem.wanted.drawn-amps"));
                return;
            }
            samples.add(new Sample(
                    step.afterSeconds().getAsDouble() / 60, amps.getAsDouble(), error(reading, amps.getAsDouble())));
        }
    }

    private void takeBranch(Reading reading, Problems problems) {
        OptionalDouble value = value(reading, problems);
        Optional<Amps> rating = rating(reading.wire());
        switch (reading.measured()) {
            case AMPS ->
                put(reading, Way.CLAMP, value.isPresent() ? Optional.of(clamped(reading, value)) : Optional.empty());
            case VOLTS -> {
                if (rating.isEmpty()) {
                    problems.add(
                            reading.at(),
                            ProblemKind.MISSING,
                            reading.wire(),
                            Phrase.of("problem.wanted.fuse-rating", List.copyOf(planned.keySet())));
                } else if (value.isPresent() && Math.abs(value.getAsDouble()) > MOST_FUSE_VOLTS) {
                    problems.add(
                            reading.at(),
                            ProblemKind.OUT_OF_RANGE,
                            value.getAsDouble() + " V",
                            Phrase.of("problem.wanted.across-fuse"));
                } else {
                    put(
                            reading,
                            Way.ACROSS_FUSE,
                            value.isPresent() ? Optional.of(across(reading, value, rating.get())) : Optional.empty());
                }
            }
            case OHMS ->
                problems.add(reading.at(), ProblemKind.WRONG_UNIT, "Ω", Phrase.of("problem.wanted.amps-or-millivolts"));
        }
    }

    private void put(Reading reading, Way way, Optional<Seen> seen) {
        branches.merge(
                reading.wire(),
                new Branch(reading.wire(), way, planned.containsKey(reading.wire()), seen),
                (before, now) -> now.seen().isPresent() ? now : before);
    }

    private static Seen clamped(Reading reading, OptionalDouble amps) {
        double drawn = Math.abs(amps.getAsDouble());
        return new Seen(drawn, error(reading, drawn));
    }

    /** Which way round the leads were is of no account across a fuse. */
    private static Seen across(Reading reading, OptionalDouble volts, Amps rating) {
        double ohms = Fuses.coldResistance(rating).value();
        double amps = Math.abs(volts.getAsDouble()) / ohms;
        return new Seen(amps, Math.hypot(error(reading, Math.abs(volts.getAsDouble())) / ohms, FUSE_SPREAD * amps));
    }

    private static double error(Reading reading, double value) {
        double digit = switch (reading.shown()) {
            case Shown.Steady(double shown, double resolution) -> resolution;
            case Shown.Moving(double low, double high) -> high - low;
            case Shown.Alternating a -> 0;
            case Shown.Floating f -> 0;
            case Shown.Overload o -> 0;
            case Shown.NotTaken n -> 0;
        };
        // The meter's last digit is the one that was written down: ranges of amps and millivolts differ too much to
        // guess.
        double limit =
                reading.meter().percent() / 100 * value + (reading.meter().counts() + 0.5) * digit;
        return Math.max(limit, 1e-6) / RECTANGLE;
    }

    private OptionalDouble value(Reading reading, Problems problems) {
        return switch (reading.shown()) {
            case Shown.Steady(double value, double resolution) -> OptionalDouble.of(value);
            case Shown.Moving(double low, double high) -> OptionalDouble.of((low + high) / 2);
            case Shown.NotTaken not -> OptionalDouble.empty();
            case Shown.Alternating a -> unusable(reading, problems);
            case Shown.Floating f -> unusable(reading, problems);
            case Shown.Overload o -> unusable(reading, problems);
        };
    }

    private static OptionalDouble unusable(Reading reading, Problems problems) {
        problems.add(
                reading.at(), ProblemKind.WRONG_SHAPE, reading.wire(), Phrase.of("problem.wanted.figure-of-current"));
        return OptionalDouble.empty();
    }

    private Optional<Amps> rating(String name) {
        Amps own = planned.get(name);
        if (own != null) {
            return Optional.of(own);
        }
        Matcher rating = RATING.matcher(name.strip());
        return rating.matches()
                ? Optional.of(new Amps(Double.parseDouble(rating.group(1).replace(',', '.'))))
                        .filter(amps -> amps.value() >= 1)
                : Optional.empty();
    }
}
