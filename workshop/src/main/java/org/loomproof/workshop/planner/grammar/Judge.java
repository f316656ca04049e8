package org.loomproof.workshop.planner.grammar;

import java.util.Optional;

/** Leaves out words for reasons that need no proof. */
interface Judge {

    /** Why no word with those relays, that buffer and that pull is offered; empty where each must be looked at. */
    Optional<LeftOut> leaveOut(Grammar.Block block);

    /** Why one word is not offered. */
    Optional<LeftOut> leaveOut(Word word);
}
