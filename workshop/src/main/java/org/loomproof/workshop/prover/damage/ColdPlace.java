package org.loomproof.workshop.prover.damage;

import java.util.Set;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.words.Phrase;

/** Where a meter on its ohm and diode range goes while the battery is off and the controller's plugs are pulled. */
public sealed interface ColdPlace {

    /** Stable, such as {@code across K1}. */
    String id();

    /** The place in words. */
    Phrase words();

    /** What is operated while the meter is there; at rest comes first. */
    default Set<OperableId> follows() {
        return Set.of();
    }

    /**
     * A contact of a pulled plug, against the body and against the lifted plus clamp.
     *
     * @param named the contact in words
     */
    record AtPlug(LeadId lead, Phrase named, Set<OperableId> follows) implements ColdPlace {
        public AtPlug {
            follows = Set.copyOf(follows);
        }

        @Override
        public String id() {
            return "at " + lead;
        }

        @Override
        public Phrase words() {
            return named;
        }
    }

    /** A terminal of an added part where a wire ends, against the body and against the lifted plus clamp. */
    record AtTerminal(AddedPartId part, String terminal) implements ColdPlace {
        @Override
        public String id() {
            return "at " + part + " " + terminal;
        }

        @Override
        public Phrase words() {
            return Phrase.of("cold.at-terminal", part, terminal);
        }
    }

    /** Across the holder of an added fuse, the fuse out: nothing may go round it. */
    record FuseOut(AddedPartId fuse) implements ColdPlace {
        @Override
        public String id() {
            return "fuse-out " + fuse;
        }

        @Override
        public Phrase words() {
            return Phrase.of("cold.fuse-out", fuse);
        }
    }

    /** Across an added part; of a relay, its coil. */
    record Across(AddedPartId part) implements ColdPlace {
        @Override
        public String id() {
            return "across " + part;
        }

        @Override
        public Phrase words() {
            return Phrase.of("cold.across", part);
        }
    }
}
