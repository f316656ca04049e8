package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.order.DeclaredChange.Becomes;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads what an order declares to change: lamps, heaters, modules and what a module reads. What moves something may not change by
 * anybody's signature, nor a relay's coil, on which other things hang.
 */
final class ChangeReader {

    /** Up to this a load's current counts as it was, so that nobody need sign for it; see the claim {@code stock-as-before}. */
    private static final int AS_BEFORE_PERCENT = 5;

    private static final int MOST_PERCENT = 100;
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,3}) ?%");
    private static final String CONTROLLER = "controller";
    private static final Map<String, ControllerState> STATES = states();

    private final Optional<Sheet> sheet;
    private final Map<String, PathStep.Part> changeable = new LinkedHashMap<>();

    /** @param sheet complete, with the parts of every path */
    ChangeReader(Optional<Sheet> sheet) {
        this.sheet = sheet;
        sheet.stream()
                .flatMap(known -> known.circuits().stream())
                .flatMap(circuit -> circuit.paths().stream())
                .flatMap(List::stream)
                .filter(PathStep.Part.class::isInstance)
                .map(PathStep.Part.class::cast)
                .filter(ChangeReader::isChangeable)
                .forEach(part -> changeable.putIfAbsent(part.id().value(), part));
    }

    private static boolean isChangeable(PathStep.Part part) {
        return switch (part) {
            case PathStep.Lamp lamp -> true;
            case PathStep.Input input -> true;
            case PathStep.Load load ->
                switch (load.kind()) {
                    case HEATER, ELECTRONIC -> true;
                    case MOTOR, SOLENOID -> false;
                };
            case PathStep.Fuse fuse -> false;
            case PathStep.Wire wire -> false;
            case PathStep.Switch contact -> false;
            case PathStep.Coil coil -> false;
            case PathStep.Contact contact -> false;
            case PathStep.Resistor resistor -> false;
            case PathStep.Diode diode -> false;
        };
    }

    List<DeclaredChange> read(List<Cursor> items) {
        List<DeclaredChange> changes = new ArrayList<>();
        References named = new References();
        for (Cursor item : items) {
            change(item.mapping(), named).ifPresent(changes::add);
        }
        return changes;
    }

    private Optional<DeclaredChange> change(MappingCursor in, References named) {
        Optional<Cursor> of = in.need("of");
        of.filter(Cursor::isText).ifPresent(at -> named.give(at.found().strip(), at));
        Optional<PathStep.Part> part =
                sheet.isPresent() ? of.flatMap(at -> at.reference(changeable)) : Optional.empty();
        String id = sheet.isPresent() ? Cursor.UNREADABLE : of.map(Cursor::id).orElse(Cursor.UNREADABLE);
        Optional<Becomes> becomes = becomes(in, part);
        Map<OperableId, String> positions = new LinkedHashMap<>();
        Optional<ControllerState> controller = Optional.empty();
        for (MappingCursor.KeyedCursor each : in.mappingOrEmpty("when").listKeyed()) {
            if (each.key().found().equals(CONTROLLER)) {
                controller = each.value().word(STATES);
            } else {
                position(each).ifPresent(at -> positions.put(at.operable(), at.position()));
            }
        }
        String told = in.text("told");
        String because = in.text("because");
        in.close();
        ElementId element = part.map(PathStep.Part::id).orElseGet(() -> new ElementId(id));
        Optional<ControllerState> state = controller;
        return becomes.map(b -> new DeclaredChange(element, b, positions, state, told, because));
    }

    private record At(OperableId operable, String position) {}

    private Optional<At> position(MappingCursor.KeyedCursor each) {
        if (sheet.isEmpty()) {
            return Optional.of(
                    new At(new OperableId(each.key().id()), each.value().text()));
        }
        Map<String, Operable> operables = new LinkedHashMap<>();
        sheet.get().operables().forEach(o -> operables.put(o.id().value(), o));
        return each.key().reference(operables).flatMap(operable -> {
            Map<String, String> positions = new LinkedHashMap<>();
            operable.positions().forEach(p -> positions.put(p, p));
            return each.value().word(positions).map(position -> new At(operable.id(), position));
        });
    }

    private Optional<Becomes> becomes(MappingCursor in, Optional<PathStep.Part> part) {
        boolean mayRead = part.map(PathStep.Input.class::isInstance).orElse(true);
        boolean mayDraw = part.map(known -> !(known instanceof PathStep.Input)).orElse(true);
        Map<String, Boolean> draws = mayDraw ? words("more", "less") : Map.of();
        Map<String, Boolean> reads = mayRead ? words("high", "low") : Map.of();
        Map<String, Boolean> all = new LinkedHashMap<>(draws);
        all.putAll(reads);
        Optional<Cursor> said = in.need("becomes");
        Optional<Boolean> first = said.flatMap(at -> at.word(all));
        if (first.isEmpty()) {
            in.find("by");
            return Optional.empty();
        }
        if (reads.containsKey(said.orElseThrow().text())) {
            in.find("by").ifPresent(by -> by.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.no-share")));
            return first.map(Becomes.Reads::new);
        }
        int percent = in.need("by").map(ChangeReader::percent).orElse(MOST_PERCENT);
        return first.map(more -> new Becomes.Draws(more, percent));
    }

    private static int percent(Cursor at) {
        Matcher matcher = PERCENT.matcher(at.text());
        int percent = matcher.matches() ? Integer.parseInt(matcher.group(1)) : -1;
        if (percent <= AS_BEFORE_PERCENT || percent > MOST_PERCENT) {
            at.problem(
                    percent < 0 ? ProblemKind.NOT_A_NUMBER : ProblemKind.OUT_OF_RANGE,
                    Phrase.of("problem.wanted.share", AS_BEFORE_PERCENT, MOST_PERCENT));
        }
        return percent;
    }

    private static Map<String, Boolean> words(String yes, String no) {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put(yes, true);
        words.put(no, false);
        return words;
    }

    /** What a fed controller does. */
    private static Map<String, ControllerState> states() {
        Map<String, ControllerState> states = new LinkedHashMap<>(Words.all(ControllerState.class));
        states.remove(ControllerState.WITHOUT_SUPPLY.word());
        return states;
    }
}
