package org.loomproof.workshop.meter.comeback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.reading.StepWords;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/**
 * The steps of one car's looks as they are written in a file of readings: what the controller does, and what is not at rest, such
 * as {@code armed + opened driver-door}. Only situations that may be looked at have words.
 */
public final class LookWords implements StepWords<Situation> {

    private final Sheet sheet;
    private final Map<String, Situation> known = new LinkedHashMap<>();

    /** Words for every situation of these looks. */
    LookWords(Sheet sheet, List<Look> looks) {
        this.sheet = sheet;
        looks.forEach(look -> known.putIfAbsent(word(look.when()), look.when()));
    }

    /** The step as it is written. */
    public String word(Situation when) {
        List<String> parts = new ArrayList<>();
        parts.add(controller(when));
        when.positions().forEach((id, position) -> {
            Operable operable = sheet.operable(id);
            if (!position.equals(operable.rest())) {
                parts.add(
                        switch (operable.kind()) {
                            case KEY -> "key " + position;
                            case DOOR, HOOD, TRUNK -> "opened " + id;
                            case CONTROL -> id + " " + position;
                        });
            }
        });
        return String.join(" + ", parts);
    }

    private static String controller(Situation when) {
        if (when.feed() == ControllerFeed.SUPPLY_LOST) {
            return "unplugged";
        }
        String state = when.controller().word();
        boolean lasts = when.controller() == ControllerState.SOUNDING;
        return switch (when.moment()) {
            case SETTLED -> lasts ? state + " (silent)" : state;
            case ACTING -> lasts ? state : state + " (pulse)";
            case AGAIN -> state + " (second pulse)";
        };
    }

    @Override
    public Optional<Situation> read(String text) {
        String plain =
                text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replaceAll(" ?\\+ ?", " + ");
        return known.entrySet().stream()
                .filter(each -> each.getKey().toLowerCase(Locale.ROOT).equals(plain))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    @Override
    public List<String> accepted() {
        return List.copyOf(known.keySet());
    }
}
