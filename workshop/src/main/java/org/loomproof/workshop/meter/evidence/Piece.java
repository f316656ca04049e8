package org.loomproof.workshop.meter.evidence;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.role.WireRole;

/** Sorts of evidence that are independent of each other: an error in one is no error in another. */
public enum Piece {
    /** An entry of the sheet. */
    PAPER,
    /** Volts by the key. */
    KEY_VOLTS,
    /** Volts while something is worked. */
    WORKED_VOLTS,
    /** Volts with the car asleep. */
    ASLEEP_VOLTS,
    /** Volts in the alternating range. */
    ALTERNATING_VOLTS,
    /** Volts with a resistor to the body. */
    LOADED_VOLTS,
    /** Ohms to the body. */
    OHMS;

    /** A piece speaks for a role when it alone makes its odds this much better. */
    static final double SPEAKS_FOR = 3;

    /** The sort a reading belongs to. */
    static Piece of(Reading reading) {
        if (reading.measured() == Measured.OHMS) {
            return OHMS;
        }
        if (reading.shown() instanceof Shown.Alternating) {
            return ALTERNATING_VOLTS;
        }
        return switch (reading.step().aid()) {
            case RESISTOR -> LOADED_VOLTS;
            case BATTERY_OFF -> OHMS;
            case NONE ->
                switch (reading.step().worked()) {
                    case NOTHING -> reading.step().asleep() ? ASLEEP_VOLTS : KEY_VOLTS;
                    default -> WORKED_VOLTS;
                };
        };
    }

    /** The sorts of readings that speak for a role, each by itself; cranking samples of slow meters do not count. */
    public static List<Piece> speakingFor(WireRole role, Belief prior, List<Reading> readings) {
        Map<Piece, Belief> alone = new EnumMap<>(Piece.class);
        Map<Piece, List<Reading>> taken = new EnumMap<>(Piece.class);
        for (Reading reading : readings) {
            if (!Likelihood.isTooSlow(reading)) {
                Piece piece = of(reading);
                Belief before = alone.getOrDefault(piece, prior);
                List<Reading> earlier = taken.computeIfAbsent(piece, p -> new ArrayList<>());
                alone.put(piece, before.after(prior.fleet().likelihood(reading, earlier)));
                earlier.add(reading);
            }
        }
        List<Piece> speaking = new ArrayList<>();
        alone.forEach((piece, belief) -> {
            if (odds(belief, role) >= SPEAKS_FOR * odds(prior, role)) {
                speaking.add(piece);
            }
        });
        return speaking;
    }

    private static double odds(Belief belief, WireRole role) {
        return belief.chance(role) / Math.max(1e-12, 1 - belief.chance(role));
    }
}
