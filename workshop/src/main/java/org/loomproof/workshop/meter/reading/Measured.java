package org.loomproof.workshop.meter.reading;

/** What was measured. */
public enum Measured {
    VOLTS("V"),
    OHMS("Ω"),
    AMPS("A");

    private final String symbol;

    Measured(String symbol) {
        this.symbol = symbol;
    }

    /** The unit's symbol. */
    public String symbol() {
        return symbol;
    }
}
