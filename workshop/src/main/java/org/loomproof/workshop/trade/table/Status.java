package org.loomproof.workshop.trade.table;

import java.util.Locale;

/** How a figure of our own data files came to be there. */
public enum Status {
    /** Seen in a copy of the published source. */
    READ,
    /** Worked out from a formula that stands beside it. */
    COMPUTED,
    /** Remembered from a published source that could not be opened. */
    MEMORY,
    /** What the trade does; no published source. */
    COMMON_PRACTICE;

    /** The word used in data files, such as {@code common-practice}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Status of(String word, String where) {
        for (Status status : values()) {
            if (status.word().equals(word)) {
                return status;
            }
        }
        throw new IllegalStateException(where + ": no status " + word);
    }
}
