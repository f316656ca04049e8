package org.loomproof.workshop.brief.path;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.PathStep.LoadKind;
import org.loomproof.workshop.brief.sheet.PathStep.RelayId;
import org.loomproof.workshop.brief.sheet.PointId;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads one step of a path: a place, or a part with its figures. A part of which nothing is said is its bare word; a part
 * without a name of its own gets one.
 */
final class StepReader {

    /** The words a step may start with, in the order a reader meets them. */
    private static final List<String> WORDS = List.of(
            "supply",
            "ground",
            "here",
            "point",
            "fuse",
            "wire",
            "switch",
            "coil",
            "contact",
            "lamp",
            "load",
            "resistor",
            "diode",
            "input");

    private static final Map<String, PathStep> PLACES =
            Map.of("supply", new PathStep.Supply(), "ground", new PathStep.Ground(), "here", new PathStep.Here());

    private final String circuit;
    private final FigureReader figures;
    private final SheetNames names;
    private final Map<String, Integer> unnamed = new LinkedHashMap<>();

    /** @param circuit the id of the circuit, from which the names of nameless parts are made */
    StepReader(String circuit, FigureReader figures, SheetNames names) {
        this.circuit = circuit;
        this.figures = figures;
        this.names = names;
    }

    /** The step; empty, with a problem noted, when it is none. */
    Optional<PathStep> read(Cursor at) {
        if (at.isText()) {
            return place(at);
        }
        if (!at.isMapping() || at.mapping().keys().size() != 1) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.step"), Phrase.of("problem.hint.step"));
            return Optional.empty();
        }
        MappingCursor step = at.mapping();
        String word = step.keys().getFirst();
        if (!WORDS.contains(word)) {
            step.listKeyed()
                    .getFirst()
                    .key()
                    .problem(
                            ProblemKind.NOT_ONE_OF, Phrase.of("problem.wanted.one-of", WORDS), Words.hint(word, WORDS));
            return Optional.empty();
        }
        if (PLACES.containsKey(word)) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.bare-word", word));
            return Optional.empty();
        }
        return word.equals("point") ? step.need(word).flatMap(this::point) : part(word, step.mappingOrEmpty(word));
    }

    private Optional<PathStep> place(Cursor at) {
        String word = at.text();
        PathStep place = PLACES.get(word);
        if (place == null && WORDS.contains(word)) {
            return word.equals("point") ? pointWithoutName(at) : part(word, at.withNothingSaid());
        }
        if (place == null) {
            at.problem(ProblemKind.NOT_ONE_OF, Phrase.of("problem.wanted.one-of", WORDS), Words.hint(word, WORDS));
        }
        return Optional.ofNullable(place);
    }

    private Optional<PathStep> pointWithoutName(Cursor at) {
        at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.point-name"));
        return Optional.empty();
    }

    private Optional<PathStep> point(Cursor at) {
        String id = at.id();
        if (id.equals(Cursor.UNREADABLE)) {
            return Optional.empty();
        }
        names.point(at);
        return Optional.of(new PathStep.Point(new PointId(id)));
    }

    private Optional<PathStep> part(String word, MappingCursor in) {
        ElementId id = elementId(word, in);
        PathStep part = switch (word) {
            case "fuse" -> {
                Figure<Amps> rating = figures.orUsual(in, "rating", Unit.AMPS, "fuse.rating");
                yield new PathStep.Fuse(id, rating, figures.fuseResistance(in, "resistance", rating));
            }
            case "wire" -> new PathStep.Wire(id, WireResistance.read(in, figures));
            case "switch" -> handSwitch(id, in);
            case "coil" ->
                new PathStep.Coil(
                        id,
                        relay(in, true),
                        figures.orUsual(in, "resistance", Unit.OHMS, "coil.resistance"),
                        figures.orUsual(in, "pull-in", Unit.VOLTS, "coil.pull-in"),
                        figures.orUsual(in, "drop-out", Unit.VOLTS, "coil.drop-out"));
            case "contact" ->
                new PathStep.Contact(
                        id,
                        relay(in, false),
                        in.word("closed", ContactClosed.class) == ContactClosed.ENERGISED,
                        figures.orUsual(in, "closed-resistance", Unit.OHMS, "contact.closed-resistance"));
            case "lamp" -> new PathStep.Lamp(id, figures.orUsual(in, "power", Unit.WATTS, "lamp.power"));
            case "load" -> load(id, in);
            case "resistor" -> new PathStep.Resistor(id, figures.need(in, "resistance", Unit.OHMS));
            case "diode" -> new PathStep.Diode(id, in.word("conducts", DiodeConducts.class) == DiodeConducts.FORWARDS);
            case "input" -> input(id, in);
            default -> throw new IllegalStateException("no part is called " + word);
        };
        in.close();
        return Optional.of(part);
    }

    private ElementId elementId(String word, MappingCursor in) {
        Optional<Cursor> said = in.find("id");
        String id =
                said.map(Cursor::id).orElseGet(() -> circuit + "/" + word + "-" + unnamed.merge(word, 1, Integer::sum));
        said.ifPresent(at -> names.element(id, at));
        return new ElementId(id);
    }

    private PathStep handSwitch(ElementId id, MappingCursor in) {
        Optional<Operable> operable = in.need("operated-by").flatMap(names::operable);
        Set<String> closedAt = new LinkedHashSet<>();
        for (Cursor position : in.itemsNeeded("closed-at")) {
            Map<String, String> positions = new LinkedHashMap<>();
            operable.ifPresent(o -> o.positions().forEach(name -> positions.put(name, name)));
            // Without a known operable nothing can be said of its positions.
            if (operable.isPresent()) {
                position.reference(positions).ifPresent(closedAt::add);
            }
        }
        Figure<Ohms> closed = figures.orUsual(in, "closed-resistance", Unit.OHMS, "switch.closed-resistance");
        OperableId by = operable.map(Operable::id).orElse(Operable.KEY);
        return new PathStep.Switch(id, by, closedAt, closed);
    }

    private RelayId relay(MappingCursor in, boolean coil) {
        Optional<Cursor> said = in.need("relay");
        String id = said.map(Cursor::id).orElse(Cursor.UNREADABLE);
        if (said.isPresent() && !id.equals(Cursor.UNREADABLE)) {
            if (coil) {
                names.coil(id, said.get());
            } else {
                names.contact(id, said.get());
            }
        }
        return new RelayId(id);
    }

    private PathStep load(ElementId id, MappingCursor in) {
        LoadKind kind = in.word("kind", LoadKind.class);
        return new PathStep.Load(
                id, kind, figures.orUsual(in, "resistance", Unit.OHMS, "load." + Words.of(kind) + ".resistance"));
    }

    private PathStep input(ElementId id, MappingCursor in) {
        return new PathStep.Input(
                id,
                figures.find(in, "pull-up", Unit.OHMS),
                figures.find(in, "pull-up-to", Unit.VOLTS),
                figures.find(in, "pull-down", Unit.OHMS),
                figures.orUsual(in, "low-below", Unit.VOLTS, "input.low-below"),
                figures.orUsual(in, "high-above", Unit.VOLTS, "input.high-above"));
    }

    private enum ContactClosed {
        ENERGISED,
        RELEASED
    }

    private enum DiodeConducts {
        FORWARDS,
        BACKWARDS
    }
}
