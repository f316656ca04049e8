package org.loomproof.intake.field;

import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Level;

/**
 * How a wire switches, as far as a text says.
 *
 * @param kind what sort of switching
 * @param rest what the wire shows at rest, when said
 * @param active what it shows when the circuit does its work, when said
 */
public record Behaviour(Kind kind, Optional<Level> rest, Optional<Level> active) {

    /** Sorts of switching. */
    public enum Kind {
        /** Becomes active by going to the body. */
        NEGATIVE,
        /** Becomes active by going to the battery's plus. */
        POSITIVE,
        /** A motor leg or its switch, either pole by turns. */
        REVERSING,
        /** Resistances to the body, one a command. */
        STEPPED,
        /** A voltage of its own that a module watches. */
        MODULE_VOLTAGE,
        /** Messages. */
        DATA
    }

    /** Which pole makes it active. */
    static Behaviour of(Kind kind, Level active) {
        return new Behaviour(kind, Optional.empty(), Optional.of(active));
    }

    Behaviour restingAt(Level level) {
        return new Behaviour(kind, Optional.of(level), active);
    }
}
