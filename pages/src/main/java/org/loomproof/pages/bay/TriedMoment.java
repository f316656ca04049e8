package org.loomproof.pages.bay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.papers.schematic.LiveSchematic;
import org.loomproof.workshop.prover.explore.Standing;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Phrase;

/**
 * A car at one stand of its controls.
 *
 * @param rows everything that a meter reaches, in the order of sheet, plan and kit
 * @param drawn what is on each conductor of the schematic
 * @param controller what the controller makes of it; empty when the fitted car does not come to rest
 * @param claims where the claims stand here
 * @param unsettled why a vehicle has no answer
 * @param otherPoints at how many further points the fitted car's contacts may rest as well, by what went before
 */
public record TriedMoment(
        List<Metered> rows,
        Map<String, LiveSchematic.On> drawn,
        Optional<Thinks> controller,
        Standing.Found claims,
        List<Phrase> unsettled,
        int otherPoints) {

    public TriedMoment {
        rows = List.copyOf(rows);
        drawn = Map.copyOf(drawn);
        unsettled = List.copyOf(unsettled);
    }

    /**
     * The controller.
     *
     * @param supply volts that it lives on
     * @param least under this it is without supply
     * @param isAlive whether it has enough
     * @param drives the leads that it drives now
     */
    public record Thinks(Volts supply, Volts least, boolean isAlive, List<String> drives) {
        public Thinks {
            drives = List.copyOf(drives);
        }
    }

    /** The claims that are broken here, in the order in which claims are reported. */
    public List<Standing.Stand> broken() {
        return claims.stands().stream().filter(s -> !s.margin().isKept()).toList();
    }

    /** The claims that are kept here. */
    public List<Standing.Stand> kept() {
        return claims.stands().stream().filter(s -> s.margin().isKept()).toList();
    }

    /** The rows of one sort. */
    public List<Metered> rows(String sort) {
        return rows.stream().filter(row -> row.sort().equals(sort)).toList();
    }
}
