package org.loomproof.workshop.brief.sheet;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Seconds;

/**
 * How a circuit switches, as stated.
 *
 * @param rest what the wire shows when nothing happens
 * @param active what it shows when the circuit does its work
 * @param lingers how long it stays active, or goes to and fro while a light fades, after what works it has come to rest; empty
 *     where it follows at once
 * @param pulsed how long it is active without a break where a module dims it by pulses all the while; empty where it stays active
 */
public record Switching(Level rest, Level active, Optional<Figure<Seconds>> lingers, Optional<Figure<Seconds>> pulsed) {

    /** A circuit that follows at once. */
    public Switching(Level rest, Level active) {
        this(rest, active, Optional.empty(), Optional.empty());
    }

    /** True when the other shows the same levels. */
    public boolean isLike(Switching other) {
        return rest.equals(other.rest) && active.equals(other.active);
    }
}
