package org.loomproof.workshop.prover.explore;

import org.loomproof.workshop.prover.state.Space;

/** Is told of every answer that a walk at typical values finds, so that nothing has to be solved a second time. */
@FunctionalInterface
public interface Onlooker {

    /** Looks away. */
    Onlooker NONE = (space, fitted) -> (key, answers) -> {};

    /** A walk through the space of one area begins. */
    Watch begins(Space space, Vehicle fitted);

    /** Watches one walk. */
    @FunctionalInterface
    interface Watch {

        /** The fitted vehicle was solved there; told by several threads, at most once a place. */
        void saw(Key key, Answers answers);
    }
}
