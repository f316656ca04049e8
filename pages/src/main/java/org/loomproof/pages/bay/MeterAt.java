package org.loomproof.pages.bay;

import java.util.Set;
import org.loomproof.pages.work.Work.ReadingTaken;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.wiring.Situation;

/**
 * What the car does while a meter is read.
 *
 * @param step in the words of a file of readings
 * @param position what stands otherwise than at rest, as {@code light-switch=head}; empty at rest, and where the words say all
 * @param unit of what is read, in the words of a file of readings
 */
public record MeterAt(String step, String position, String unit) {

    /** Volts of the direct range. */
    public static final String VOLTS = "V";

    private static final Set<String> LOCKING = Set.of("lock", "unlock");

    /** What a proposed test asks for. */
    static MeterAt of(MeterTest test) {
        String unit = switch (test.kind()) {
            case VOLTS, RESISTOR, TEST_LAMP -> VOLTS;
            case ALTERNATING -> "V AC";
            case OHMS -> "ohm";
        };
        return new MeterAt(test.step().word(), "", unit);
    }

    /** What was noted. */
    static MeterAt of(ReadingTaken taken) {
        return new MeterAt(taken.step(), taken.position(), taken.unit());
    }

    /** The situation of an expected reading: at rest but for one thing. */
    public static MeterAt of(Situation situation, Sheet sheet) {
        for (Operable operable : sheet.operables()) {
            String at = situation.positions().getOrDefault(operable.id(), operable.rest());
            if (!at.equals(operable.rest())) {
                return new MeterAt(word(operable, at), operable.id() + "=" + at, VOLTS);
            }
        }
        return new MeterAt(Step.REST.word(), "", VOLTS);
    }

    private static String word(Operable operable, String at) {
        if (operable.id().equals(Operable.KEY)) {
            return switch (Operable.KEY_POSITIONS.indexOf(at)) {
                case 1 -> "key acc";
                case 2 -> "key on";
                case 3 -> "cranking";
                default -> "key off";
            };
        }
        if (LOCKING.contains(at)) {
            return "pressed " + at; // of a switch that locks and unlocks the name alone does not say which
        }
        OperableId id = operable.id();
        return (operable.isOpening() ? "opened " : "pressed ") + id;
    }

    /** True when both are the same; what says no position is known by its words. */
    boolean isSameAs(MeterAt other) {
        return step.equals(other.step)
                && unit.equals(other.unit)
                && (position.equals(other.position) || other.position.isEmpty() || position.isEmpty());
    }
}
