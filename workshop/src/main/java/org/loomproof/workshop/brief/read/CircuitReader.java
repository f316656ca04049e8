package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.path.PathReader;
import org.loomproof.workshop.brief.path.SheetNames;
import org.loomproof.workshop.brief.path.Shortcuts;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads one circuit of a sheet. */
final class CircuitReader {

    private final FigureReader figures;
    private final SheetNames names;
    private final References circuits;

    CircuitReader(FigureReader figures, SheetNames names, References circuits) {
        this.figures = figures;
        this.names = names;
        this.circuits = circuits;
    }

    Circuit read(Cursor at) {
        MappingCursor in = at.mapping();
        CircuitId id = new CircuitId(in.id("id"));
        in.find("id").ifPresent(cursor -> circuits.give(id.value(), cursor));
        FigureReader sure = figures.assured(certainty(in));
        String note = in.textOrEmpty("note");
        Circuit circuit = new Circuit(
                id,
                role(in, note),
                where(in.mappingOrEmpty("where")),
                in.find("colour").flatMap(ColourText::read),
                sure.find(in, "size", Unit.SQUARE_MILLIMETRES),
                new Switching(
                        LevelReader.read(in, "rest"),
                        LevelReader.read(in, "active"),
                        sure.find(in, "lingers", Unit.SECONDS),
                        sure.find(in, "pulsed", Unit.SECONDS)),
                follows(in),
                new PathReader(id, sure, names).read(in),
                in.word("access", Access.class),
                sure.basis(in.place()),
                in.textOrEmpty("origin"),
                note);
        in.close();
        circuit.paths().forEach(path -> checkRest(in, circuit.switching().rest(), path));
        return circuit;
    }

    private static Certainty certainty(MappingCursor in) {
        Certainty certainty = in.wordOr("certainty", Certainty.STATED);
        if (certainty == Certainty.ASSUMED) {
            in.find("certainty")
                    .ifPresent(at -> at.problem(
                            ProblemKind.NOT_ONE_OF,
                            Phrase.of("problem.wanted.one-of", List.of("verified", "stated", "guessed")),
                            Phrase.of("problem.hint.assumed")));
        }
        return certainty;
    }

    private static CircuitRole role(MappingCursor in, String note) {
        CircuitRole role = in.word("role", CircuitRole.class);
        if (role == CircuitRole.OTHER && note.isEmpty()) {
            in.missing("note", Phrase.of("problem.wanted.note-of-other"));
        }
        return role;
    }

    private static Where where(MappingCursor in) {
        Where where = new Where(
                in.textOrEmpty("panel"),
                in.textOrEmpty("connector"),
                in.textOrEmpty("cavity"),
                in.textOrEmpty("note"),
                in.find("carried-by").flatMap(at -> at.word(Words.all(Where.Carrier.class))));
        in.close();
        return where;
    }

    private List<OperableId> follows(MappingCursor in) {
        List<OperableId> follows = new ArrayList<>();
        for (Cursor item : in.items("follows")) {
            Optional<Operable> operable = names.operable(item);
            if (operable.isPresent() && follows.contains(operable.get().id())) {
                item.problem(ProblemKind.DUPLICATE_ID, Phrase.of("problem.wanted.named-once"));
            }
            operable.ifPresent(known -> follows.add(known.id()));
        }
        return follows;
    }

    /** A wire that is held fast at one pole cannot rest at the other, nor be open. */
    private static void checkRest(MappingCursor in, Level rest, List<PathStep> path) {
        Optional<PathStep> pole = Shortcuts.poleHeldFast(path);
        boolean contradicts = pole.isPresent()
                && switch (rest) {
                    case Level.Ground ground -> pole.get() instanceof PathStep.Supply;
                    case Level.Supply supply -> pole.get() instanceof PathStep.Ground;
                    case Level.Open open -> true;
                    case Level.Resistance resistance -> false;
                    case Level.Voltage voltage -> false;
                    case Level.Reversing reversing -> true;
                    case Level.Data data -> true;
                };
        if (contradicts) {
            String held = pole.get() instanceof PathStep.Supply ? "supply" : "ground";
            in.find("rest")
                    .ifPresent(at -> at.problem(
                            ProblemKind.CONTRADICTION,
                            Phrase.of("problem.wanted.rest-of-path", held),
                            Phrase.of("problem.hint.rest-of-path")));
        }
    }
}
