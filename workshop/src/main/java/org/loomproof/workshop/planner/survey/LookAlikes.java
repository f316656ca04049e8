package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.words.Phrase;

/** Wires that are joined and might be taken for others: of the same colour in the same loom, or like those of the restraints. */
public final class LookAlikes {

    private LookAlikes() {}

    /** A caution for each pair, the joined one first, and for each joined wire that is plain yellow. */
    public static List<Phrase> cautions(Sheet sheet, List<CircuitId> joined) {
        List<Phrase> cautions = new ArrayList<>();
        for (CircuitId id : joined.stream().distinct().sorted().toList()) {
            Circuit circuit = sheet.circuit(id);
            sheet.circuits().stream()
                    .filter(other -> looksLike(other, circuit))
                    .map(other -> Phrase.of(
                            "caution.same-colour",
                            id,
                            other.id(),
                            circuit.colour().orElseThrow()))
                    .forEach(cautions::add);
            if (ForbiddenLooms.isPlain(circuit, Colour.YELLOW)) {
                cautions.add(Phrase.of("caution.yellow-wire", id));
            }
        }
        return cautions;
    }

    /** Another wire of that colour in that connector, or behind the same panel where no connector is said. */
    private static boolean looksLike(Circuit other, Circuit circuit) {
        return !other.id().equals(circuit.id())
                && circuit.colour().isPresent()
                && other.colour().equals(circuit.colour())
                && isSameLoom(other.where(), circuit.where())
                && !Finder.isSamePlace(other, circuit);
    }

    private static boolean isSameLoom(Where one, Where other) {
        boolean sameConnector = !one.connector().isBlank() && one.connector().equals(other.connector());
        boolean samePanel = !one.panel().isBlank() && one.panel().equals(other.panel());
        return sameConnector || samePanel;
    }
}
