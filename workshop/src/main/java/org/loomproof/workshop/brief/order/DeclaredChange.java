package org.loomproof.workshop.brief.order;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;

/**
 * Something that the vehicle did as it came and that the work changes on purpose. It is allowed that far, there and no further,
 * and the customer signs for it.
 *
 * @param of the factory load or input that behaves otherwise afterwards
 * @param becomes what becomes of it, and how far
 * @param positions where it does so; an operable that is not named may stand anywhere
 * @param controller in which state of a fed controller it does so; empty for whatever the controller does, fed or not
 * @param told what the customer is told and signs
 * @param because why it is wanted, or not to be avoided
 */
public record DeclaredChange(
        ElementId of,
        Becomes becomes,
        Map<OperableId, String> positions,
        Optional<ControllerState> controller,
        String told,
        String because) {

    public DeclaredChange {
        positions = Collections.unmodifiableMap(new TreeMap<>(positions));
    }

    /** What becomes of it. */
    public sealed interface Becomes {

        /** The word used in files. */
        String word();

        /**
         * A load's current.
         *
         * @param more true where it draws more than before, false where it draws less
         * @param atMostPercent how far, of what it draws there as it came; of the most it ever draws where it rests
         */
        record Draws(boolean more, int atMostPercent) implements Becomes {
            @Override
            public String word() {
                return more ? "more" : "less";
            }
        }

        /**
         * What an input reads.
         *
         * @param high true for high, false for low
         */
        record Reads(boolean high) implements Becomes {
            @Override
            public String word() {
                return high ? "high" : "low";
            }
        }
    }
}
