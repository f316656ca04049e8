package org.loomproof.network.part;

/** How a logic input reads its lead. */
public enum LogicLevel {
    LOW,
    /** Between the thresholds: the data sheet promises nothing. */
    BETWEEN,
    HIGH
}
