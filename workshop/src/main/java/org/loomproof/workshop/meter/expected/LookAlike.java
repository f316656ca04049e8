package org.loomproof.workshop.meter.expected;

import java.util.Optional;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * Another wire of the sheet that may show the same in every situation in which a circuit is tried.
 *
 * @param other the wire that may be taken for it
 * @param split what the wire itself shows, and the other does not, where the other is tried; empty when a meter on volts
 *     cannot tell them apart
 */
public record LookAlike(CircuitId other, Optional<ExpectedReading> split) {}
