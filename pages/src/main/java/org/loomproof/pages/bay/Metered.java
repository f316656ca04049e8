package org.loomproof.pages.bay;

import java.util.Optional;
import org.loomproof.workshop.words.Phrase;

/**
 * One thing with what a meter shows at it in either vehicle.
 *
 * @param id stable: its sort and its name, such as {@code wire W3}
 * @param name as sheet, kit or plan call it, with where the meter goes
 * @param stock in the vehicle as it came; empty where it has no such thing
 * @param fitted in the fitted vehicle; empty where the thing is gone from it
 */
public record Metered(String id, Phrase name, Optional<Meter> stock, Optional<Meter> fitted) {

    /** Whether a meter shows something else in the fitted vehicle; what it cannot tell apart is alike. */
    public boolean isChanged() {
        return stock.isPresent()
                && fitted.isPresent()
                && !stock.get().shown().equals(fitted.get().shown());
    }

    /** Its sort, which is the first word of its id. */
    public String sort() {
        return id.substring(0, id.indexOf(' '));
    }
}
