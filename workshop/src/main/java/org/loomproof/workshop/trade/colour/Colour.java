package org.loomproof.workshop.trade.colour;

import java.util.Set;

/**
 * A basic insulation colour. The codes are those of IEC 60757; TQ is from memory, the rest were read (see
 * {@code docs/sources.md}).
 */
public enum Colour {
    BLACK("BK"),
    BROWN("BN"),
    RED("RD"),
    ORANGE("OG"),
    YELLOW("YE"),
    GREEN("GN"),
    BLUE("BU"),
    VIOLET("VT"),
    GREY("GY"),
    WHITE("WH"),
    PINK("PK"),
    TURQUOISE("TQ");

    private static final Set<Set<Colour>> HARD_TO_TELL = Set.of(
            Set.of(BLACK, BROWN),
            Set.of(BLUE, VIOLET),
            Set.of(GREEN, TURQUOISE),
            Set.of(ORANGE, RED),
            Set.of(GREY, WHITE));

    private final String code;

    Colour(String code) {
        this.code = code;
    }

    /**
     * True when the two are the same, or are taken for each other under a dash by a hand lamp: common practice, no published
     * source.
     */
    public boolean looksLike(Colour other) {
        return this == other || HARD_TO_TELL.contains(Set.of(this, other));
    }

    /** The two letters of IEC 60757. */
    public String code() {
        return code;
    }
}
