package org.loomproof.intake.role;

import java.util.List;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/**
 * A role with the words it was read from: "read as door-trigger because of 'door' and 'pin'".
 *
 * @param role what the circuit is for
 * @param because the words that say so, as written
 */
public record RoleReading(CircuitRole role, List<String> because) {

    public RoleReading {
        because = List.copyOf(because);
    }
}
