package org.loomproof.workshop.trade.colour;

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

    private final String code;

    Colour(String code) {
        this.code = code;
    }

    /** The two letters of IEC 60757. */
    public String code() {
        return code;
    }
}
