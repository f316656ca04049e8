package org.loomproof.workshop.prover.claim;

import java.util.List;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/** About the instant at which an output lets go of a coil that it holds: asked wherever it acts. */
interface LetGoCase extends Case {

    /**
     * A coil and the output that may hold it.
     *
     * @param output the output's part of the network
     */
    record Held(Fitting fitting, LeadId lead, PartId output, PartId coil) {
        private Acting acting() {
            return Acting.of(fitting.brief().kit().behaviour(), lead);
        }
    }

    /** What is let go of, and by what. */
    Held held();

    @Override
    default PartId about() {
        return held().output();
    }

    @Override
    default boolean concerns(ControllerState state, ControllerFeed feed) {
        return held().acting().isIn(state, feed);
    }

    @Override
    default boolean concerns(Condition.Doing doing) {
        return held().acting().isIn(doing);
    }

    @Override
    default boolean fallsAwayUnasked() {
        return true;
    }

    @Override
    default boolean looksBeyondRest() {
        return true;
    }

    @Override
    default List<Observation> observations(Pair pair) {
        PartId coil = held().coil();
        return LoadCase.withControllerSupply(
                pair,
                new Observation(
                        Phrase.of("meter.coil-amps-before", pair.fitted().words(coil)),
                        Shown.amps(Math.abs(pair.fitted().point().amps(coil))).toString()));
    }
}
