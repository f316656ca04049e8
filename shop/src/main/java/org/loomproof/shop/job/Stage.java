package org.loomproof.shop.job;

/** The stages of a job's run, told as each begins. */
public enum Stage {
    READING,
    PLANNING,
    PROVING,
    TRYING_FAULTS,
    WRITING
}
