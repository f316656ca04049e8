package org.loomproof.workshop.brief.order;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;

/**
 * What the shop has decided.
 *
 * @param joint how joints are made
 * @param sizes in which sizes wire is bought
 * @param coldest the lowest ambient temperature to reckon with
 * @param hottest the highest
 * @param insulation what the insulation of the wire bought bears for long, where it is said
 * @param runs the length of wire from the controller to a circuit, where measured or known
 * @param usualRun the length taken for a run that is not in {@code runs}
 */
public record ShopChoices(
        Joint joint,
        Sizes sizes,
        Celsius coldest,
        Celsius hottest,
        Optional<Celsius> insulation,
        Map<CircuitId, Figure<Metres>> runs,
        Figure<Metres> usualRun) {

    public ShopChoices {
        runs = Collections.unmodifiableMap(new TreeMap<>(runs));
    }

    /** How joints are made. */
    public enum Joint {
        SOLDER,
        CRIMP
    }

    /** In which sizes wire is bought. */
    public enum Sizes {
        AWG,
        MM2
    }
}
