package org.loomproof.workshop.prover.claim;

import java.util.List;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.explore.Pair;

/** The starter gets next to nothing while the controller is armed, warns or sounds. */
final class DoesNotStartWhenArmed implements Claim {

    @Override
    public String name() {
        return "does-not-start-when-armed";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        return StarterCut.cases(this, fitting, load -> new ArmedCase(name(), load, fitting));
    }

    private static final class ArmedCase extends GuardedCase {

        ArmedCase(String claim, ElementId load, Fitting fitting) {
            super(claim, load, fitting);
        }

        @Override
        double workingAmps(Pair pair) {
            return worksInStock(pair) ? amps(pair.stock()) : Double.NaN;
        }
    }
}
