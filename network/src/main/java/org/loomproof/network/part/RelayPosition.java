package org.loomproof.network.part;

/** Where a relay's armature is. */
public enum RelayPosition {
    /** At rest: 30 meets 87a. */
    RELEASED,
    /** Coil energised: 30 meets 87. */
    PULLED_IN
}
