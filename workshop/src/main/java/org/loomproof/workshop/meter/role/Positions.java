package org.loomproof.workshop.meter.role;

import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.Worked;

/** Where everything in a car of one circuit stands in a step, as seen from that circuit's wire. */
final class Positions {

    private Positions() {}

    static Setup setup(Step step, Sheet sheet, Circuit circuit, double meterOhms) {
        SortedMap<OperableId, String> positions = new TreeMap<>();
        for (Operable each : sheet.operables()) {
            String at = position(each, step, circuit);
            if (!at.equals(each.rest())) {
                positions.put(each.id(), at);
            }
        }
        return new Setup(positions, step.asleep(), step.resistorOhms(), meterOhms);
    }

    private static String position(Operable each, Step step, Circuit circuit) {
        return switch (each.kind()) {
            case KEY -> key(step.key());
            case DOOR, HOOD, TRUNK ->
                isOpened(each.kind(), step.worked()) ? Operable.OPENING_POSITIONS.getLast() : each.rest();
            case CONTROL -> each.id().equals(MiniSheet.ENGINE) ? engine(step.key()) : worked(each, step, circuit);
        };
    }

    private static String key(Step.KeyAt key) {
        return switch (key) {
            case NO_KEY, OFF -> "off";
            case ACCESSORY -> "accessory";
            case ON, RUNNING -> "on";
            case CRANKING -> "start";
        };
    }

    private static String engine(Step.KeyAt key) {
        return switch (key) {
            case NO_KEY, OFF, ACCESSORY, ON -> MiniSheet.STOPPED;
            case CRANKING -> "cranked";
            case RUNNING -> "running";
        };
    }

    private static boolean isOpened(Operable.Kind opening, Worked worked) {
        return switch (worked) {
            case OPENING -> true;
            case DOOR -> opening == Operable.Kind.DOOR;
            case HOOD -> opening == Operable.Kind.HOOD;
            case TRUNK -> opening == Operable.Kind.TRUNK;
            case NOTHING, SWITCH, LOCK, UNLOCK, HORN, BRAKE, RELEASE, WINDOW, DOME, LAMPS -> false;
        };
    }

    /**
     * The position that is named like what is worked; for a bare "pressed" the first beside rest, if the wire follows the switch. A
     * switch that the sheet names and no usual wire follows works nothing here.
     */
    private static String worked(Operable control, Step step, Circuit circuit) {
        boolean itsOwn = step.worked() == Worked.SWITCH
                && step.named().isEmpty()
                && circuit.follows().contains(control.id());
        String word = itsOwn ? control.positions().get(1) : step.worked().name().toLowerCase(Locale.ROOT);
        return control.positions().contains(word) ? word : control.rest();
    }
}
