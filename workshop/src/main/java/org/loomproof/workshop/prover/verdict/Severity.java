package org.loomproof.workshop.prover.verdict;

import java.util.Locale;

/** What it comes to when something is not as it should be, the worst first. */
public enum Severity {
    /** Something may burn, the engine may stop while driving, or the starter turn by itself. */
    FIRE_OR_LOSS_OF_CONTROL,
    /** The car does not start. */
    STRANDED,
    /** The car starts and is not guarded as it should be. */
    UNPROTECTED,
    /** Something does not do what it should, and no harm comes of it. */
    NUISANCE,
    /** Nothing that is claimed is touched. */
    NONE;

    /** The word used in files, such as {@code fire-or-loss-of-control}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The worse of the two. */
    public Severity or(Severity other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
