package org.loomproof.workshop.meter.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * One thing that can be done with a meter on one wire.
 *
 * @param step what the car does
 * @param kind what is done to the wire
 * @param seconds how long it takes a practised hand. Common practice, no published source.
 */
public record MeterTest(Step step, Kind kind, double seconds) {

    /** What is done to a wire. */
    public enum Kind {
        /** A voltmeter from the wire to the body. */
        VOLTS,
        /** The same in the alternating range. */
        ALTERNATING,
        /** An ohmmeter from the wire to the body, the battery's minus off: it sends a current of its own. */
        OHMS,
        /** A voltmeter, and a known resistor from the wire to the body. */
        RESISTOR,
        /** A filament lamp from the wire to the body or the supply. In no list of ours: a voltmeter with a resistor tells as much. */
        TEST_LAMP;

        /** The word used in messages and files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The resistor a technician hangs on a wire to learn how stiffly it is held. */
    public static final double KNOWN_OHMS = 1000;

    /** Everything that is ever proposed, the quickest first. */
    public static final List<MeterTest> ALL = all();

    /** Without a key: asked of a constant alone, since on every wire we have a model of it reads as with the key off. */
    public static final MeterTest KEY_OUT = volts(Step.at(KeyAt.NO_KEY), 5);

    /** With everything at rest. */
    public static final MeterTest KEY_OFF = find(Step.REST, Kind.VOLTS);

    /** In the key's first position. */
    public static final MeterTest KEY_ACCESSORY = find(Step.at(KeyAt.ACCESSORY), Kind.VOLTS);

    /** With the key on. */
    public static final MeterTest KEY_ON = find(Step.at(KeyAt.ON), Kind.VOLTS);

    /** Cranking. */
    public static final MeterTest CRANKING = find(Step.at(KeyAt.CRANKING), Kind.VOLTS);

    /** With the car asleep. */
    public static final MeterTest ASLEEP = find(Step.REST.fallenAsleep(), Kind.VOLTS);

    /** With a door open. */
    public static final MeterTest OPENED = find(Step.REST.working(Worked.DOOR), Kind.VOLTS);

    /** While locking. */
    public static final MeterTest LOCKED = find(Step.REST.working(Worked.LOCK), Kind.VOLTS);

    /** While unlocking. */
    public static final MeterTest UNLOCKED = find(Step.REST.working(Worked.UNLOCK), Kind.VOLTS);

    /** Ohms to the body. */
    public static final MeterTest OHMS = find(Step.REST.withBatteryOff(), Kind.OHMS);

    /** Volts with a resistor to the body. */
    public static final MeterTest LOADED = find(Step.REST.withResistor(KNOWN_OHMS), Kind.RESISTOR);

    /** While what a wire of that role follows is worked; empty for roles that follow nothing by hand. */
    public static Optional<MeterTest> working(WireRole role) {
        Worked worked = switch (role) {
            case DOOR_TRIGGER -> Worked.DOOR;
            case HOOD_TRIGGER -> Worked.HOOD;
            case TRUNK_TRIGGER -> Worked.TRUNK;
            case INTERIOR_LIGHT -> Worked.DOME;
            case PARKING_LAMP -> Worked.LAMPS;
            case HORN -> Worked.HORN;
            case TRUNK_RELEASE -> Worked.RELEASE;
            case WINDOW -> Worked.WINDOW;
            case BRAKE -> Worked.BRAKE;
            case LOCK -> Worked.LOCK;
            case UNLOCK -> Worked.UNLOCK;
            case CONSTANT,
                    GROUND,
                    IGNITION,
                    SECOND_IGNITION,
                    ACCESSORY,
                    STARTER,
                    SECOND_STARTER,
                    LOCK_STEPS,
                    LOCK_EITHER_POLE,
                    LOCK_MOTOR_LEG,
                    TACHOMETER,
                    FUEL_PUMP,
                    DATA,
                    RESTRAINT,
                    DEAD,
                    NONE_OF_THESE -> Worked.NOTHING;
        };
        return ALL.stream()
                .filter(t -> worked != Worked.NOTHING && t.step().worked() == worked && t.kind() == Kind.VOLTS)
                .findFirst();
    }

    private static List<MeterTest> all() {
        List<MeterTest> tests = new ArrayList<>();
        tests.add(volts(Step.REST, 5));
        tests.add(volts(Step.at(KeyAt.ACCESSORY), 6));
        tests.add(volts(Step.at(KeyAt.ON), 6));
        tests.add(volts(Step.REST.working(Worked.LOCK), 8));
        tests.add(volts(Step.REST.working(Worked.UNLOCK), 8));
        tests.add(volts(Step.REST.working(Worked.HORN), 8));
        tests.add(volts(Step.REST.working(Worked.LAMPS), 8));
        tests.add(volts(Step.REST.working(Worked.BRAKE), 8));
        tests.add(volts(Step.REST.working(Worked.DOME), 8));
        tests.add(volts(Step.REST.working(Worked.DOOR), 10));
        tests.add(volts(Step.REST.working(Worked.RELEASE), 10));
        tests.add(volts(Step.at(KeyAt.ON).working(Worked.WINDOW), 10));
        tests.add(volts(Step.REST.working(Worked.TRUNK), 15));
        tests.add(volts(Step.at(KeyAt.CRANKING), 15));
        tests.add(volts(Step.REST.working(Worked.HOOD), 20));
        tests.add(volts(Step.at(KeyAt.RUNNING), 25));
        tests.add(new MeterTest(Step.at(KeyAt.ON), Kind.ALTERNATING, 10));
        tests.add(new MeterTest(Step.REST.withResistor(KNOWN_OHMS), Kind.RESISTOR, 30));
        tests.add(new MeterTest(Step.REST.withBatteryOff(), Kind.OHMS, 120));
        tests.add(volts(Step.REST.fallenAsleep(), 1200));
        return List.copyOf(tests);
    }

    private static MeterTest volts(Step step, double seconds) {
        return new MeterTest(step, Kind.VOLTS, seconds);
    }

    private static MeterTest find(Step step, Kind kind) {
        return ALL.stream()
                .filter(t -> t.step().equals(step) && t.kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
