package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;

/** The factory inputs that read a circuit's wire, whichever entry of the sheet names them: nothing but wire lies between. */
public final class Readers {

    private record Reader(PathStep.Input input, String at) {}

    private final Ties ties = new Ties();
    private final List<Reader> readers = new ArrayList<>();

    private Readers(Sheet sheet) {
        sheet.circuits().forEach(circuit -> circuit.paths().forEach(path -> lay(circuit, path)));
    }

    /** Those inputs, in the sheet's order. */
    public static List<PathStep.Input> of(Sheet sheet, Circuit circuit) {
        Readers all = new Readers(sheet);
        String wire = all.ties.root(here(circuit));
        return all.readers.stream()
                .filter(reader -> all.ties.root(reader.at()).equals(wire))
                .map(Reader::input)
                .toList();
    }

    private void lay(Circuit circuit, List<PathStep> path) {
        String at = "";
        for (PathStep step : path) {
            switch (step) {
                case PathStep.Point(var id) -> at = arrive(at, "point " + id);
                case PathStep.Here() -> at = arrive(at, here(circuit));
                case PathStep.Wire wire -> {}
                case PathStep.Input input -> {
                    readers.add(new Reader(input, at));
                    at = "";
                }
                case PathStep.Supply s -> at = "";
                case PathStep.Ground g -> at = "";
                case PathStep.Part other -> at = "";
            }
        }
    }

    private String arrive(String from, String place) {
        if (!from.isEmpty()) {
            ties.tie(from, place);
        }
        return place;
    }

    private static String here(Circuit circuit) {
        return "here " + circuit.id();
    }
}
