package org.loomproof.workshop.planner.grammar;

/** A pairing of a source with a target, as far as poles decide what may stand between them. */
public sealed interface Shape permits Drive, Sense {

    /** What poles alone say of words for it. */
    Judge judge();
}
