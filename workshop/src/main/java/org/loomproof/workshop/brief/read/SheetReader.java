package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.path.SheetNames;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Reads a sheet: the vehicle, what a person operates, and the circuits. */
final class SheetReader {

    static final String FORMAT = "loomproof sheet 1";

    private static final Map<String, Operable.Kind> OPENING_KINDS = openingKinds();

    private SheetReader() {}

    /** The sheet as written: a circuit that does not say how current runs has no path. */
    static Sheet read(MappingCursor in, FigureReader figures) {
        VehicleFacts vehicle = VehicleReader.read(in.mapping("vehicle"), figures);
        List<Operable> operables = operables(in);
        SheetNames names = new SheetNames(operables);
        References circuitNames = new References();
        CircuitReader reader = new CircuitReader(figures, names, circuitNames);
        List<Circuit> circuits = new ArrayList<>();
        for (Cursor circuit : in.itemsNeeded("circuits")) {
            circuits.add(reader.read(circuit));
        }
        in.close();
        names.close();
        return new Sheet(vehicle, operables, circuits);
    }

    private static List<Operable> operables(MappingCursor in) {
        References names = new References();
        List<Operable> operables = new ArrayList<>();
        operables.add(new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS));
        for (Cursor item : in.items("openings")) {
            MappingCursor opening = item.mapping();
            OperableId id = operableId(opening, names);
            Optional<Cursor> said = opening.need("kind");
            Operable.Kind kind = said.flatMap(at -> at.word(OPENING_KINDS)).orElse(Operable.Kind.DOOR);
            opening.close();
            operables.add(new Operable(id, kind, Operable.OPENING_POSITIONS));
        }
        for (Cursor item : in.items("controls")) {
            MappingCursor control = item.mapping();
            OperableId id = operableId(control, names);
            operables.add(
                    new Operable(id, Operable.Kind.CONTROL, positions(control), control.findYesNo("moves-with-locks")));
            control.close();
        }
        return operables;
    }

    private static OperableId operableId(MappingCursor in, References names) {
        String id = in.id("id");
        in.find("id").ifPresent(at -> {
            if (id.equals(Operable.KEY.value())) {
                at.problem(ProblemKind.DUPLICATE_ID, Phrase.of("problem.wanted.not-key"));
            } else {
                names.give(id, at);
            }
        });
        return new OperableId(id);
    }

    private static List<String> positions(MappingCursor in) {
        References names = new References();
        List<String> positions = new ArrayList<>();
        for (Cursor item : in.itemsNeeded("positions")) {
            String position = item.id();
            names.give(position, item);
            positions.add(position);
        }
        if (positions.size() == 1) {
            in.find("positions")
                    .ifPresent(at -> at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.two-positions")));
        }
        // With less than two there is a problem already, and the record wants two.
        return positions.size() >= 2 ? positions : List.of(Cursor.UNREADABLE, Cursor.UNREADABLE);
    }

    private static Map<String, Operable.Kind> openingKinds() {
        Map<String, Operable.Kind> kinds = new LinkedHashMap<>();
        kinds.put("door", Operable.Kind.DOOR);
        kinds.put("hood", Operable.Kind.HOOD);
        kinds.put("trunk", Operable.Kind.TRUNK);
        return kinds;
    }
}
