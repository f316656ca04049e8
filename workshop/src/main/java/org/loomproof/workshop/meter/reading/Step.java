package org.loomproof.workshop.meter.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the car was doing when a reading was taken.
 *
 * @param key where the key stands
 * @param worked what a hand works
 * @param named the name of what is worked, when one was given; otherwise empty
 * @param afterSeconds how long everything had been closed and off, when that was said
 * @param asleep whether the car's modules had gone to sleep
 * @param aid what was done to the wire beside the meter
 * @param resistorOhms the resistor from the wire to the body, for {@link Aid#RESISTOR}
 */
public record Step(
        KeyAt key,
        Worked worked,
        String named,
        OptionalDouble afterSeconds,
        boolean asleep,
        Aid aid,
        OptionalDouble resistorOhms) {

    /** Key off, everything closed and let go, modules awake. */
    public static final Step REST =
            new Step(KeyAt.OFF, Worked.NOTHING, "", OptionalDouble.empty(), false, Aid.NONE, OptionalDouble.empty());

    /** Where the key stands. */
    public enum KeyAt {
        NO_KEY,
        OFF,
        ACCESSORY,
        ON,
        CRANKING,
        RUNNING
    }

    /** What a hand works. */
    public enum Worked {
        NOTHING,
        /** The opening that the wire is thought to follow. */
        OPENING,
        DOOR,
        HOOD,
        TRUNK,
        /** The switch that the wire is thought to follow. */
        SWITCH,
        LOCK,
        UNLOCK,
        HORN,
        BRAKE,
        RELEASE,
        WINDOW,
        DOME,
        LAMPS;

        /** True for what opens. */
        public boolean isOpening() {
            return switch (this) {
                case OPENING, DOOR, HOOD, TRUNK -> true;
                case NOTHING, SWITCH, LOCK, UNLOCK, HORN, BRAKE, RELEASE, WINDOW, DOME, LAMPS -> false;
            };
        }
    }

    /** What was done to the wire beside putting a meter on it. */
    public enum Aid {
        NONE,
        /** A known resistor from the wire to the body. */
        RESISTOR,
        /** The battery's minus taken off, for ohms. */
        BATTERY_OFF
    }

    public Step {
        if ((aid == Aid.RESISTOR) != resistorOhms.isPresent()) {
            throw new IllegalArgumentException("a resistor has ohms, and nothing else has: " + aid);
        }
    }

    /** A position of the key. */
    public static Step at(KeyAt key) {
        return new Step(key, Worked.NOTHING, "", OptionalDouble.empty(), false, Aid.NONE, OptionalDouble.empty());
    }

    /** The same with something worked. */
    public Step working(Worked thing) {
        return new Step(key, thing, "", afterSeconds, asleep, aid, resistorOhms);
    }

    /** The same with the name of what is worked. */
    public Step named(String name) {
        return new Step(key, worked, name, afterSeconds, asleep, aid, resistorOhms);
    }

    /** The same with the modules asleep. */
    public Step fallenAsleep() {
        return new Step(key, worked, named, afterSeconds, true, aid, resistorOhms);
    }

    /** The same with a resistor to the body. */
    public Step withResistor(double ohms) {
        return new Step(key, worked, named, afterSeconds, asleep, Aid.RESISTOR, OptionalDouble.of(ohms));
    }

    /** The same with the battery's minus off. */
    public Step withBatteryOff() {
        return new Step(key, worked, named, afterSeconds, asleep, Aid.BATTERY_OFF, OptionalDouble.empty());
    }

    /** What the car did, without what the sheet calls it and how long it took: steps that read alike are alike. */
    public Step plain() {
        return new Step(key, worked, "", OptionalDouble.empty(), asleep, aid, resistorOhms);
    }

    /** The step as it is written in a file: {@code key on}, {@code opened door + asleep}. */
    public String word() {
        List<String> parts = new ArrayList<>();
        if (key != KeyAt.OFF) {
            parts.add(keyWord());
        }
        if (worked != Worked.NOTHING) {
            parts.add(workedWord());
        }
        afterSeconds.ifPresent(s -> parts.add("after " + number(s) + " s"));
        if (asleep) {
            parts.add("asleep");
        }
        resistorOhms.ifPresent(ohms -> parts.add("with " + number(ohms) + " ohm"));
        if (aid == Aid.BATTERY_OFF) {
            parts.add("battery off");
        }
        return parts.isEmpty() ? "key off" : String.join(" + ", parts);
    }

    private String keyWord() {
        return switch (key) {
            case NO_KEY -> "no key";
            case OFF -> "key off";
            case ACCESSORY -> "key acc";
            case ON -> "key on";
            case CRANKING -> "cranking";
            case RUNNING -> "running";
        };
    }

    private String workedWord() {
        String verb = worked.isOpening() ? "opened" : "pressed";
        return switch (worked) {
            case OPENING, SWITCH -> (verb + " " + named).strip();
            case LAMPS -> "lamps on";
            case NOTHING -> "closed";
            case DOOR, HOOD, TRUNK, LOCK, UNLOCK, HORN, BRAKE, RELEASE, WINDOW, DOME ->
                verb + " " + (named.isEmpty() ? worked.name().toLowerCase(Locale.ROOT) : named);
        };
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
