package org.loomproof.workshop.brief.kit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Decibels;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * Something that comes in the box beside the controller.
 *
 * @param name what the kit calls it
 * @param kind what it is
 * @param draws what it draws when it works, where it is a load
 * @param coil coil resistance, where it is a relay
 * @param makeRating what its make contact (87) may carry, where it is a relay
 * @param breakRating what its break contact (87a) may carry, where it is a relay
 * @param sound how loud it is 2 m in front of it, where it is a sounder
 * @param forward volts across it at what it draws, where it is a light-emitting diode without a resistor of its own
 * @param battery the battery in it, where it is a sounder that feeds itself
 * @param contact its contact, where it is a button or a sensor that comes with bare leads
 */
public record Extra(
        String name,
        Kind kind,
        Optional<Figure<Amps>> draws,
        Optional<Figure<Ohms>> coil,
        Optional<Figure<Amps>> makeRating,
        Optional<Figure<Amps>> breakRating,
        Optional<Figure<Decibels>> sound,
        Optional<Figure<Volts>> forward,
        Optional<Battery> battery,
        Optional<Contact> contact) {

    /** The positions of what has one stage, rest first. */
    private static final List<String> ONE_STAGE = List.of("at-rest", "worked");

    /** The positions of what tells a light blow from a hard one, rest first. */
    private static final List<String> TWO_STAGES = List.of("at-rest", "lightly", "hard");

    /**
     * The battery of a sounder that feeds itself.
     *
     * @param charging what it draws while it charges
     * @param charged what it draws once it is full; empty where nobody says, and then it is reckoned as charging for good
     */
    public record Battery(Figure<Amps> charging, Optional<Figure<Amps>> charged) {}

    /**
     * What a button or sensor tells by, on bare leads.
     *
     * @param closes what its contact goes to
     * @param twoStage whether a second contact closes at a hard blow only; the first closes at that as well
     * @param closed resistance while closed
     */
    public record Contact(Closes closes, boolean twoStage, Figure<Ohms> closed) {}

    /** What a contact out of the box goes to. */
    public enum Closes {
        /** Two leads of its own, joined to nothing else. */
        DRY,
        /** The ground of the thing itself, which is fed. */
        GROUND,
        /** The feed of the thing itself. */
        SUPPLY
    }

    /** What a person works it as: no name on a sheet has a space. */
    public static OperableId workedAs(String extra) {
        return new OperableId("added " + extra);
    }

    /** Whether that is where it stands untouched; what is not said is. */
    public static boolean isAtRest(@Nullable String position) {
        return position == null || position.equals(ONE_STAGE.getFirst());
    }

    /** Where it can be put, rest first, by the number of its stages. */
    public static List<String> positions(boolean twoStage) {
        return twoStage ? TWO_STAGES : ONE_STAGE;
    }

    /** What a person works; empty for what has no contact on bare leads. */
    public Optional<Operable> operable() {
        return contact.map(each -> new Operable(workedAs(name), Operable.Kind.CONTROL, positions(each.twoStage())));
    }

    /** Something of which nobody says how loud it is. */
    public Extra(
            String name,
            Kind kind,
            Optional<Figure<Amps>> draws,
            Optional<Figure<Ohms>> coil,
            Optional<Figure<Amps>> makeRating,
            Optional<Figure<Amps>> breakRating) {
        this(name, kind, draws, coil, makeRating, breakRating, Optional.empty());
    }

    /** Something that is no bare light-emitting diode, and neither feeds itself nor tells anything. */
    public Extra(
            String name,
            Kind kind,
            Optional<Figure<Amps>> draws,
            Optional<Figure<Ohms>> coil,
            Optional<Figure<Amps>> makeRating,
            Optional<Figure<Amps>> breakRating,
            Optional<Figure<Decibels>> sound) {
        this(
                name,
                kind,
                draws,
                coil,
                makeRating,
                breakRating,
                sound,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** What sort of thing comes in the box. */
    public enum Kind {
        INDICATOR,
        OVERRIDE_BUTTON,
        SHOCK_SENSOR,
        SOUNDER,
        ACTUATOR,
        INTERRUPT_RELAY,
        RELAY_SOCKET,
        OTHER;

        /** The word used in files, such as {@code shock-sensor}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
