package org.loomproof.workshop.prover.claim;

import java.util.List;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.wiring.ControllerFeed;

/** The starter gets what it got before, less a small drop, whenever the controller is disarmed or overridden. */
final class StartsWhenDisarmed implements Claim {

    @Override
    public String name() {
        return "starts-when-disarmed";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        return StarterCut.cases(this, fitting, load -> new StartsCase(name(), load, fitting) {
            @Override
            public boolean concerns(ControllerState state, ControllerFeed feed) {
                return feed == ControllerFeed.WHOLE
                        && (state == ControllerState.DISARMED || state == ControllerState.OVERRIDE);
            }
        });
    }
}
