package org.loomproof.workshop.plan.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Reads where a wire ends. */
final class EndReader {

    private final PlanNames names;
    private final boolean briefIsKnown;

    EndReader(PlanNames names, boolean briefIsKnown) {
        this.names = names;
        this.briefIsKnown = briefIsKnown;
    }

    /** The end; empty, with a problem noted, when there is no such end. */
    Optional<End> read(Cursor at) {
        if (!at.isText()) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.end"));
            return Optional.empty();
        }
        List<String> words = List.of(at.text().split("\\s+"));
        String first = words.getFirst();
        if (first.equals(EndText.BODY) && words.size() == 1) {
            return Optional.of(new End.Body());
        }
        if (first.equals(EndText.LEAD) && words.size() == 2) {
            return isKnown(at, words.get(1), names.leads())
                    ? Optional.of(new End.OfLead(new LeadId(words.get(1))))
                    : Optional.empty();
        }
        if (first.equals(EndText.CIRCUIT) && words.size() == 3) {
            return circuit(at, words.get(1), words.get(2));
        }
        if (words.size() == 2 && !first.equals(EndText.CIRCUIT)) {
            return part(at, first, words.get(1));
        }
        at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.end"), Phrase.of("problem.hint.end"));
        return Optional.empty();
    }

    private Optional<End> circuit(Cursor at, String name, String how) {
        if (!isKnown(at, name, names.circuits())) {
            return Optional.empty();
        }
        CircuitId id = new CircuitId(name);
        Map<String, End> ways = new LinkedHashMap<>();
        ways.put(EndText.TAP, new End.Tap(id));
        ways.put(EndText.BEFORE, new End.CutBefore(id));
        ways.put(EndText.AFTER, new End.CutAfter(id));
        Optional<End> end = at.part(how, ProblemKind.NOT_ONE_OF, ways);
        names.findCircuit(name).ifPresent(circuit -> end.ifPresent(joint -> checkAccess(at, circuit, joint)));
        return end;
    }

    /** What the sheet forbids is not left to a proof: a wire not to be touched is not touched, whatever it would do. */
    private static void checkAccess(Cursor at, Circuit circuit, End joint) {
        boolean allowed = switch (circuit.access()) {
            case MAY_BE_CUT -> true;
            case MAY_BE_TAPPED -> joint instanceof End.Tap;
            case NOT_TO_BE_TOUCHED -> false;
        };
        if (!allowed) {
            String wanted = circuit.access() == Access.MAY_BE_TAPPED
                    ? "problem.wanted.only-tapped"
                    : "problem.wanted.not-touched";
            at.problem(ProblemKind.CONTRADICTION, Phrase.of(wanted, circuit.id()));
        }
    }

    private Optional<End> part(Cursor at, String name, String terminal) {
        Optional<AddedPart> part = at.part(name, ProblemKind.UNKNOWN_REFERENCE, names.parts());
        Map<String, String> terminals = new LinkedHashMap<>();
        part.ifPresent(known -> known.terminals().forEach(t -> terminals.put(t, t)));
        return part.flatMap(known -> at.part(terminal, ProblemKind.NOT_ONE_OF, terminals))
                .map(known -> new End.OfPart(new AddedPartId(name), known));
    }

    private boolean isKnown(Cursor at, String name, Map<String, ?> named) {
        return !briefIsKnown
                || at.part(name, ProblemKind.UNKNOWN_REFERENCE, named).isPresent();
    }
}
