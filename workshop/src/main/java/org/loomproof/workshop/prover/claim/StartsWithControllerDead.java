package org.loomproof.workshop.prover.claim;

import java.util.List;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.wiring.ControllerFeed;

/** The same when the controller has lost its supply, its ground or its fuse, whatever it was doing. */
final class StartsWithControllerDead implements Claim {

    @Override
    public String name() {
        return "starts-with-controller-dead";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        return StarterCut.cases(this, fitting, load -> new StartsCase(name(), load, fitting) {
            @Override
            public boolean concerns(ControllerState state, ControllerFeed feed) {
                return feed != ControllerFeed.WHOLE;
            }
        });
    }
}
