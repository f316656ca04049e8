package org.loomproof.network.time;

import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.solve.CompanionSolver;

/**
 * How far a fuse has come towards opening: 0 cold, 1 open. At a steady current it gets there in the time its band says,
 * dy/dt = 1 / t(i); for currents that vary such shares add up. While it carries less than its band begins with it cools, with
 * the band's longest time as its time constant.
 */
final class FuseStore extends Store {
    private final double ratingAmps;
    private final TimeCurrentBand band;
    private final double coolingSeconds;
    private final Edge edge;

    FuseStore(int branch, double ratingAmps, TimeCurrentBand band, Edge edge) {
        super(branch, 1);
        this.ratingAmps = ratingAmps;
        this.band = band;
        this.edge = edge;
        this.coolingSeconds = band.seconds(band.points().getFirst().multiple(), edge);
    }

    @Override
    void stand(CompanionSolver solver, double seconds, double start) {
        // A fuse on its way is the same resistance as before.
    }

    @Override
    boolean read(CompanionSolver solver, double seconds, double start) {
        double amps = solver.counts(branch) ? Math.abs(solver.amps()[branch]) : 0;
        double left = band.seconds(amps / ratingAmps, edge);
        if (Double.isInfinite(left)) {
            foundValue = start / (1 + seconds / coolingSeconds);
            foundRate = -foundValue / coolingSeconds;
        } else {
            foundRate = 1 / left;
            foundValue = start + seconds * foundRate;
        }
        return false;
    }

    @Override
    double joules() {
        return 0;
    }
}
