package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.solve.CompanionSolver;

/** Sources whose voltage changes by itself: batteries with a waveform, pulsed sources. */
final class Sources {
    private abstract static sealed class Source {
        final int branch;
        final double siemens;

        Source(int branch, double siemens) {
            this.branch = branch;
            this.siemens = siemens;
        }

        abstract double volts(double seconds, boolean afterJump);

        abstract double nextCorner(double seconds);

        /** Whether it jumps at this time, rather than only bends. */
        abstract boolean jumps(double seconds);
    }

    private static final class Shaped extends Source {
        final Waveform shape;

        Shaped(int branch, double siemens, Waveform shape) {
            super(branch, siemens);
            this.shape = shape;
        }

        @Override
        double volts(double seconds, boolean afterJump) {
            return afterJump ? shape.volts(seconds) : shape.voltsBefore(seconds);
        }

        @Override
        double nextCorner(double seconds) {
            return shape.nextCorner(seconds);
        }

        @Override
        boolean jumps(double seconds) {
            return shape.volts(seconds) != shape.voltsBefore(seconds);
        }
    }

    /** Edges are counted, so that the n-th falls at the same instant however the run came there. */
    private static final class Pulsed extends Source {
        final PulsedSource source;
        final int part;
        boolean stated;

        Pulsed(int branch, double siemens, PulsedSource source, int part) {
            super(branch, siemens);
            this.source = source;
            this.part = part;
        }

        private boolean stands() {
            return stated || source.duty() == 0 || source.duty() == 1;
        }

        private double edge(long number) {
            double periods = Math.floorDiv(number, 2) + (number % 2 == 0 ? 0 : source.duty());
            return periods / source.hertz();
        }

        /** The last edge at or before a time, or only before it. */
        private long lastEdge(double seconds, boolean atIt) {
            long number = Math.max(0, 2 * (long) Math.floor(seconds * source.hertz()) - 2);
            while (edge(number + 1) < seconds || (atIt && edge(number + 1) == seconds)) {
                number++;
            }
            return number;
        }

        @Override
        double volts(double seconds, boolean afterJump) {
            if (source.duty() == 0 || source.duty() == 1) {
                return source.averageVolts();
            }
            return lastEdge(seconds, afterJump) % 2 == 0 ? source.highVolts() : source.lowVolts();
        }

        @Override
        double nextCorner(double seconds) {
            return stands() ? Double.POSITIVE_INFINITY : edge(lastEdge(seconds, true) + 1);
        }

        @Override
        boolean jumps(double seconds) {
            return !stands() && seconds > 0 && edge(lastEdge(seconds, true)) == seconds;
        }
    }

    private final List<Source> sources = new ArrayList<>();
    private final List<Shaped> shaped = new ArrayList<>();

    /** The next corner after any time from one until then; empty before it is first asked for. */
    private double cornersFrom = Double.POSITIVE_INFINITY;

    private double nextCorner = Double.NEGATIVE_INFINITY;

    Sources(CompanionSolver solver, Map<PartId, Waveform> supplies) {
        Network network = solver.network();
        for (int part = 0; part < network.parts().size(); part++) {
            Part each = network.parts().get(part);
            int branch = solver.firstBranch(part);
            Waveform shape = supplies.get(each.id());
            if (shape != null) {
                shaped.add(new Shaped(branch, siemens(solver, branch), shape));
                sources.add(shaped.getLast());
            } else if (each instanceof PulsedSource pulsed) {
                sources.add(new Pulsed(branch, siemens(solver, branch), pulsed, part));
            }
        }
    }

    private static double siemens(CompanionSolver solver, int branch) {
        return ((Term.Conductance) solver.term(branch)).siemens();
    }

    void configure(Setting setting) {
        nextCorner = Double.NEGATIVE_INFINITY;
        for (Source source : sources) {
            if (source instanceof Pulsed pulsed) {
                pulsed.stated = !Double.isNaN(setting.stated(pulsed.part));
            }
        }
    }

    /** Puts every source at its voltage just after a time. */
    void jump(CompanionSolver solver, double seconds) {
        for (Source source : sources) {
            stand(solver, source, source.volts(seconds, true));
        }
    }

    /** Puts every source that changes between its jumps at its voltage of a time; at a jump that before it. */
    void follow(CompanionSolver solver, double seconds) {
        for (Shaped source : shaped) {
            stand(solver, source, source.volts(seconds, false));
        }
    }

    private static void stand(CompanionSolver solver, Source source, double volts) {
        boolean free = !(source instanceof Pulsed pulsed && pulsed.stated);
        if (free && solver.counts(source.branch)) {
            solver.stand(source.branch, source.siemens, -source.siemens * volts);
        }
    }

    /** The next time at which some source jumps or bends, or infinity. */
    double nextCorner(double seconds) {
        if (!(cornersFrom <= seconds && seconds < nextCorner)) {
            cornersFrom = seconds;
            nextCorner = Double.POSITIVE_INFINITY;
            for (Source source : sources) {
                nextCorner = Math.min(nextCorner, source.nextCorner(seconds));
            }
        }
        return nextCorner;
    }

    boolean jumps(double seconds) {
        for (Source source : sources) {
            if (source.jumps(seconds)) {
                return true;
            }
        }
        return false;
    }
}
