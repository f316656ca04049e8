package org.loomproof.workshop.goods.loom;

import java.util.List;
import org.loomproof.workshop.brief.kit.LeadId;

/** What is done to a lead on the bench because others of its plug look like it. */
public sealed interface LeadMark {

    /** The leads of the same plug that it may be taken for, in the kit's order; never empty. */
    List<LeadId> alike();

    /**
     * It is twisted with those that go its way and none of which looks like it; the twist has one label.
     *
     * @param with the other leads of the twist, in the kit's order
     * @param panel where all of them go
     */
    record Twist(List<LeadId> alike, List<LeadId> with, String panel) implements LeadMark {
        public Twist {
            alike = List.copyOf(alike);
            with = List.copyOf(with);
        }
    }

    /** It gets a label at both ends. */
    record Label(List<LeadId> alike) implements LeadMark {
        public Label {
            alike = List.copyOf(alike);
        }
    }

    /** It is cut short itself, and the others are marked before that. */
    record TrimAfter(List<LeadId> alike) implements LeadMark {
        public TrimAfter {
            alike = List.copyOf(alike);
        }
    }
}
