package org.loomproof.workshop.prover.damage;

import java.util.List;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.words.Phrase;

/** Something that a person sees or hears at a finished car, or reads on a meter; it is surely there, surely not, or neither. */
public sealed interface Sign {

    /** What to watch, in words. */
    Phrase words();

    /** That it is there, or that it is not, in words. */
    default Phrase words(boolean isThere) {
        Phrase watched = words();
        return new Phrase(watched.key() + (isThere ? ".there" : ".absent"), watched.arguments());
    }

    /** Whether it takes a meter. */
    default boolean takesMeter() {
        return false;
    }

    /** A sign that takes a meter. */
    sealed interface OnMeter extends Sign {
        @Override
        default boolean takesMeter() {
            return true;
        }
    }

    /** A load of the car works. */
    record Works(ElementId load, Phrase named) implements Sign {
        @Override
        public Phrase words() {
            return Phrase.of("sign.works", named);
        }
    }

    /**
     * A load that turns both ways, such as a lock's motor, works the one way; the other way where the sign is surely not there.
     *
     * @param forwards what makes it turn that way in the car as it came
     * @param backwards what makes it turn the other way
     */
    record Turns(ElementId load, Phrase named, At forwards, At backwards) implements Sign {

        /** An operable at a position. */
        public record At(OperableId operable, String position) {}

        @Override
        public Phrase words() {
            return Phrase.of(
                    "sign.turns",
                    named,
                    forwards.operable(),
                    forwards.position(),
                    backwards.operable(),
                    backwards.position());
        }
    }

    /** An added load works: the siren sounds. */
    record Sounds(AddedPartId part, Phrase named) implements Sign {
        @Override
        public Phrase words() {
            return Phrase.of("sign.works", named);
        }
    }

    /** A module of the car does what its input orders. */
    record Ordered(ElementId input, Phrase named) implements Sign {
        @Override
        public Phrase words() {
            return Phrase.of("sign.ordered", named);
        }
    }

    /** The armed controller gives alarm. */
    record Alarm() implements Sign {
        @Override
        public Phrase words() {
            return Phrase.of("sign.alarm");
        }
    }

    /** The controller answers. */
    record Awake() implements Sign {
        @Override
        public Phrase words() {
            return Phrase.of("sign.awake");
        }
    }

    /** A meter at the plug finds a lead of the controller at the supply; it is at ground when the sign is surely not there. */
    record AtPlug(LeadId lead) implements OnMeter {
        @Override
        public Phrase words() {
            return Phrase.of("sign.at-plug", lead);
        }
    }

    /** Volts are left across the place where a factory wire was cut. */
    record AcrossCut(CircuitId circuit) implements OnMeter {
        @Override
        public Phrase words() {
            return Phrase.of("sign.across-cut", circuit);
        }
    }

    /** Volts are lost on the way from the battery to the controller. */
    record FeedDrop() implements OnMeter {
        @Override
        public Phrase words() {
            return Phrase.of("sign.feed-drop");
        }
    }

    /** The car draws more than it should with everything at rest. */
    record StandingCurrent() implements OnMeter {
        @Override
        public Phrase words() {
            return Phrase.of("sign.standing-current");
        }
    }

    /** A meter on its ohm and diode range, the battery off and the plugs pulled, shows what is expected there. */
    record Cold(ColdPlace place, List<Phrase> expected) implements OnMeter {
        public Cold {
            expected = List.copyOf(expected);
        }

        @Override
        public Phrase words() {
            return Phrase.of("sign.cold", expected);
        }
    }

    /** A meter that holds its peak finds no more at a lead, as it lets go of a coil, than the battery and a diode's drop. */
    record Kick(LeadId lead) implements OnMeter {
        @Override
        public Phrase words() {
            return Phrase.of("sign.kick", lead);
        }
    }
}
