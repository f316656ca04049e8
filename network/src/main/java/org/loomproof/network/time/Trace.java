package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.solve.CompanionSolver;

/**
 * What a run in time found, at any moment of it. Between its ends a step is a cubic in time, or a parabola at a loose tolerance.
 * At a jump the value after it stands. Immutable, any thread may share it. Methods throw {@link IllegalArgumentException} for
 * a time outside the run and for nodes and parts the network does not have.
 */
public final class Trace {
    enum Kind {
        /** The instant after a jump. */
        START,
        /** A stage within a step. */
        INNER,
        END
    }

    /**
     * One point: voltages by rank, and the currents of those branches that are not the same resistance all the time between two
     * jumps. The others' currents follow from their voltages.
     */
    static final class Sample {
        private final double seconds;
        private final Kind kind;
        private final double[] volts;
        private final double[] movingAmps;
        private final Steady steady;

        Sample(double seconds, Kind kind, double[] volts, double[] movingAmps, Steady steady) {
            this.seconds = seconds;
            this.kind = kind;
            this.volts = volts;
            this.movingAmps = movingAmps;
            this.steady = steady;
        }

        double seconds() {
            return seconds;
        }

        Kind kind() {
            return kind;
        }

        double[] volts() {
            return volts;
        }

        double amps(int branch) {
            int moving = steady.moving.indexOf(branch);
            return moving >= 0 ? movingAmps[moving] : steady.amps(branch, volts);
        }
    }

    /** The least and the greatest of a voltage or current, and when. */
    public record Extremes(double least, double leastAtSeconds, double greatest, double greatestAtSeconds) {}

    /** One quantity against time. */
    public interface Curve {
        double at(double seconds);
    }

    private interface Read {
        double from(Sample sample);
    }

    private final CompanionSolver layout;
    private final Method method;
    private final List<Sample> samples;
    private final List<TimeEvent> events;
    private final double storedChange;
    private final double cutJoules;
    private final Set<PartId> passedAtStart;

    Trace(
            CompanionSolver layout,
            Method method,
            List<Sample> samples,
            List<TimeEvent> events,
            double storedChange,
            double cutJoules,
            Set<PartId> passedAtStart) {
        this.layout = layout;
        this.method = method;
        this.samples = List.copyOf(samples);
        this.events = List.copyOf(events);
        this.storedChange = storedChange;
        this.cutJoules = cutJoules;
        this.passedAtStart = Set.copyOf(passedAtStart);
    }

    /** The network that ran. */
    public Network network() {
        return layout.network();
    }

    /** Where the run came to. */
    public double seconds() {
        return samples.getLast().seconds();
    }

    /** Moments at which steps begin and end, in order; at a jump the same moment twice. Between them lie the stages of a step. */
    public List<Double> moments() {
        return samples.stream()
                .filter(sample -> sample.kind() != Kind.INNER)
                .map(Sample::seconds)
                .toList();
    }

    /** Moments at which something was thrown, moved or jumped, in order. */
    public List<Double> jumps() {
        return samples.stream()
                .filter(s -> s.kind() == Kind.START)
                .map(Sample::seconds)
                .toList();
    }

    /** Steps taken. */
    public int steps() {
        return (int) samples.stream().filter(s -> s.kind() == Kind.END).count();
    }

    /** What happened, in order of time. */
    public List<TimeEvent> events() {
        return events;
    }

    /** Where the energy went; added up anew each time it is asked for. */
    public EnergyBalance energy() {
        return new Energies(layout, method, samples).balance(storedChange, cutJoules);
    }

    /** Energy a part took from the network over the whole run, joules; negative for one that gave. */
    public double joules(PartId id) {
        return new Energies(layout, method, samples).ofPart(network().indexOf(id));
    }

    /** Voltage against the chassis. */
    public double volts(Node node, double seconds) {
        int rank = layout.rank(node);
        return at(seconds, sample -> sample.volts()[rank]);
    }

    /** Current into the part's first pin, amps. */
    public double amps(PartId id, double seconds) {
        return at(seconds, into(network().indexOf(id), 0));
    }

    /** Current into one pin of a part, amps. */
    public double ampsInto(PartId id, String pinName, double seconds) {
        int part = network().indexOf(id);
        List<Pin> pins = network().parts().get(part).pins();
        for (int k = 0; k < pins.size(); k++) {
            if (pins.get(k).name().equals(pinName)) {
                return at(seconds, into(part, k));
            }
        }
        throw new IllegalArgumentException(id + " has no pin " + pinName + " but " + pins);
    }

    /** Speed of a motor as a share of that at its rating. */
    public double speedShare(PartId id, double seconds) {
        if (!(network().part(id) instanceof Motor motor)) {
            throw new IllegalArgumentException(id + " is no motor: " + network().part(id));
        }
        int part = network().indexOf(id);
        int branch = layout.firstBranch(part);
        while (!(layout.term(branch) instanceof Term.Capacitance)) {
            branch++;
        }
        int inertia = branch - 2; // the load beside it carries i = g e
        return at(seconds, sample -> sample.amps(inertia)) / motor.loadSiemens() / motor.ratedBackVolts();
    }

    /** Where a relay's contacts are at a time; while they move, where they were. */
    public RelayPosition relayPosition(PartId id, double seconds) {
        if (!(network().part(id) instanceof Relay)) {
            throw new IllegalArgumentException(id + " is no relay: " + network().part(id));
        }
        return isPassed(id, seconds) ? RelayPosition.PULLED_IN : RelayPosition.RELEASED;
    }

    /** Whether an output's controller has supply enough to work its outputs at a time. */
    public boolean isAwake(PartId id, double seconds) {
        Part part = network().part(id);
        if (!(part instanceof LowSideOutput || part instanceof HighSideOutput)) {
            throw new IllegalArgumentException(id + " is no output: " + part);
        }
        return isPassed(id, seconds);
    }

    private boolean isPassed(PartId id, double seconds) {
        requireWithin(seconds);
        boolean passed = passedAtStart.contains(id);
        for (TimeEvent event : events) {
            if (event.seconds() <= seconds) {
                passed = switch (event) {
                    case TimeEvent.ContactsMoved moved when moved.relay().equals(id) -> moved.pulledIn();
                    case TimeEvent.Woke woke when woke.output().equals(id) -> woke.awake();
                    default -> passed;
                };
            }
        }
        return passed;
    }

    /** The least and the greatest voltage of a node. */
    public Extremes voltsExtremes(Node node) {
        int rank = layout.rank(node);
        return extremes(sample -> sample.volts()[rank]);
    }

    /** The least and the greatest current into a part's first pin. */
    public Extremes ampsExtremes(PartId id) {
        return extremes(into(network().indexOf(id), 0));
    }

    private Read into(int part, int pin) {
        int first = layout.firstBranch(part);
        int end = layout.firstBranch(part + 1);
        return sample -> {
            double sum = 0;
            for (int b = first; b < end; b++) {
                if (layout.term(b).from() == pin) {
                    sum += sample.amps(b);
                }
                if (layout.term(b).to() == pin) {
                    sum -= sample.amps(b);
                }
            }
            return sum;
        };
    }

    private void requireWithin(double seconds) {
        if (!(seconds >= 0 && seconds <= seconds())) {
            throw new IllegalArgumentException("the run goes from 0 to " + seconds() + " s, not to " + seconds);
        }
    }

    private double at(double seconds, Read read) {
        requireWithin(seconds);
        int low = 0;
        int high = samples.size() - 1;
        // The last sample at or before the time.
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (samples.get(middle).seconds() <= seconds) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        Sample found = samples.get(low);
        if (found.seconds() == seconds || low == samples.size() - 1) {
            return read.from(found);
        }
        int start = low;
        while (samples.get(start).kind() == Kind.INNER) {
            start--;
        }
        return new Cubic(start, read).at(seconds);
    }

    private Extremes extremes(Read read) {
        double least = Double.POSITIVE_INFINITY;
        double leastAt = 0;
        double greatest = Double.NEGATIVE_INFINITY;
        double greatestAt = 0;
        List<double[]> candidates = new ArrayList<>();
        for (int k = 0; k < samples.size(); k++) {
            if (samples.get(k).kind() != Kind.INNER) {
                candidates.add(new double[] {samples.get(k).seconds(), read.from(samples.get(k))});
                if (k + 1 < samples.size() && samples.get(k + 1).kind() == Kind.INNER) {
                    new Cubic(k, read).addTurns(candidates);
                }
            }
        }
        for (double[] each : candidates) {
            if (each[1] < least) {
                least = each[1];
                leastAt = each[0];
            }
            if (each[1] > greatest) {
                greatest = each[1];
                greatestAt = each[0];
            }
        }
        return new Extremes(least, leastAt, greatest, greatestAt);
    }

    /** The course of a quantity over the step that begins at a sample. */
    private final class Cubic {
        final double from;
        final double whole;
        final double[] coefficients = new double[4];

        Cubic(int start, Read read) {
            from = samples.get(start).seconds();
            whole = samples.get(start + method.kept.length - 1).seconds() - from;
            for (int k = 0; k < method.kept.length; k++) {
                double value = read.from(samples.get(start + k));
                for (int power = 0; power < method.curve[k].length; power++) {
                    coefficients[power] += method.curve[k][power] * value;
                }
            }
        }

        double at(double seconds) {
            return atPart((seconds - from) / whole);
        }

        private double atPart(double part) {
            double[] c = coefficients;
            return c[0] + part * (c[1] + part * (c[2] + part * c[3]));
        }

        /** Adds the moments within the step at which the quantity turns, with its values there. */
        void addTurns(List<double[]> found) {
            double b = coefficients[2];
            double root = Math.sqrt(b * b - 3 * coefficients[1] * coefficients[3]);
            double sum = -(b + Math.copySign(root, b));
            for (double part : new double[] {sum / (3 * coefficients[3]), coefficients[1] / sum}) {
                if (part > 0 && part < 1) {
                    found.add(new double[] {from + part * whole, atPart(part)});
                }
            }
        }
    }
}
