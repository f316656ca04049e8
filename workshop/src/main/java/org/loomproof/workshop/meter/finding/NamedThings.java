package org.loomproof.workshop.meter.finding;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.reading.Step.Worked;

/** What a sheet names and a hand works, so that readings may say {@code opened rear-door} or {@code pressed light-switch}. */
public final class NamedThings {

    private NamedThings() {}

    /** Each name with what it is; a switch is what the circuits say that follow it. */
    public static Map<String, Worked> of(Sheet sheet) {
        Map<String, Worked> names = new LinkedHashMap<>();
        for (Operable each : sheet.operables()) {
            switch (each.kind()) {
                case KEY -> {}
                case DOOR -> names.put(each.id().value(), Worked.DOOR);
                case HOOD -> names.put(each.id().value(), Worked.HOOD);
                case TRUNK -> names.put(each.id().value(), Worked.TRUNK);
                case CONTROL -> names.put(each.id().value(), worked(each, sheet));
            }
        }
        return names;
    }

    private static Worked worked(Operable control, Sheet sheet) {
        return sheet.circuits().stream()
                .filter(circuit -> circuit.follows().contains(control.id()))
                .map(NamedThings::worked)
                .filter(worked -> worked != Worked.SWITCH)
                .findFirst()
                .orElse(Worked.SWITCH);
    }

    private static Worked worked(Circuit circuit) {
        return switch (circuit.role()) {
            case PARKING_LAMP -> Worked.LAMPS;
            case INTERIOR_LIGHT -> Worked.DOME;
            case HORN -> Worked.HORN;
            case BRAKE -> Worked.BRAKE;
            case WINDOW -> Worked.WINDOW;
            case TRUNK_RELEASE -> Worked.RELEASE;
            default -> Worked.SWITCH;
        };
    }
}
