package org.loomproof.workshop.brief.sheet;

/**
 * How a circuit switches, as stated.
 *
 * @param rest what the wire shows when nothing happens
 * @param active what it shows when the circuit does its work
 */
public record Switching(Level rest, Level active) {}
