package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.solve.CompanionSolver;

/**
 * How far fuses have come towards opening: 0 cold, 1 open. At a steady current a fuse gets there in the time its band says,
 * dy/dt = 1 / t(i); for currents that vary such shares add up. While it carries less than its band begins with it cools, with
 * the band's longest time as its time constant.
 */
final class FuseStores extends StoreKind {
    private final Fuse[] fuses;
    private final TimeCurrentBand[] bands;
    private final double[] coolingSeconds;
    private final Edge edge;
    private final List<PartId> opened = new ArrayList<>();

    /** The fuses of these branches, all of which have a band. */
    FuseStores(CompanionSolver solver, Method method, List<Integer> branches, Edge edge) {
        super(solver, method, branches, 1);
        this.edge = edge;
        fuses = new Fuse[count];
        bands = new TimeCurrentBand[count];
        coolingSeconds = new double[count];
        for (int k = 0; k < count; k++) {
            fuses[k] = (Fuse) solver.network().parts().get(solver.partOf(branch[k]));
            bands[k] = fuses[k].band().orElseThrow();
            coolingSeconds[k] = bands[k].seconds(bands[k].points().getFirst().multiple(), edge);
        }
    }

    @Override
    void stand(double seconds) {
        // A fuse on its way is the same resistance as before.
    }

    @Override
    boolean read(double seconds) {
        for (int k = 0; k < count; k++) {
            double amps = counts[k] ? Math.abs(solver.branchAmps(branch[k])) : 0;
            double left = bands[k].seconds(amps / fuses[k].ratingAmps(), edge);
            if (Double.isInfinite(left)) {
                found[k] = start[k] / (1 + seconds / coolingSeconds[k]);
                foundRate[k] = -found[k] / coolingSeconds[k];
            } else {
                foundRate[k] = 1 / left;
                found[k] = start[k] + seconds * foundRate[k];
            }
        }
        return false;
    }

    /** How far the nearest whole fuse still is from opening; zero or less once it does. */
    double margin() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < count; k++) {
            if (counts[k]) {
                least = Math.min(least, 1 - found[k]);
            }
        }
        return least;
    }

    /** Fuses that have opened so far. */
    List<PartId> opened() {
        return opened;
    }

    /** Whether some fuse opens where the step begins. */
    boolean opens() {
        for (int k = 0; k < count; k++) {
            if (opens(k)) {
                return true;
            }
        }
        return false;
    }

    private boolean opens(int k) {
        return value[k] >= 1 && !opened.contains(fuses[k].id());
    }

    /** Opens what opens; whether something did. */
    boolean move(double seconds, List<TimeEvent> events) {
        boolean moved = false;
        for (int k = 0; k < count; k++) {
            if (opens(k)) {
                opened.add(fuses[k].id());
                events.add(new TimeEvent.FuseOpened(seconds, fuses[k].id()));
                moved = true;
            }
        }
        return moved;
    }
}
