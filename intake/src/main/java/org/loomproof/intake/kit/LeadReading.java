package org.loomproof.intake.kit;

import java.util.List;
import java.util.Optional;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Phrase;

/**
 * One lead of a kit as it was understood.
 *
 * @param id its name in the kit file: plug and place where both are said, else its number in the list
 * @param name what the source calls it
 * @param plug the plug it comes from; empty when not said
 * @param position its place in that; empty when not said
 * @param role what it is meant for
 * @param colour its insulation
 * @param size its cross-section
 * @param port what it is electrically, as far as it can be told
 * @param contact which contact of a relay in the box it is, where it is said to be one
 * @param rating the most it may carry, as stated
 * @param pulse how long it is on, as stated
 * @param asks what the source does not say and a kit must
 * @param leftOver what was not understood
 * @param origin where it stands
 */
public record LeadReading(
        String id,
        String name,
        String plug,
        String position,
        Optional<Answer<LeadRole>> role,
        Optional<Answer<WireColour>> colour,
        Optional<Answer<SquareMillimetres>> size,
        Optional<PortKind> port,
        Optional<RelayContact> contact,
        Optional<Amps> rating,
        Optional<Seconds> pulse,
        List<Phrase> asks,
        List<Passage> leftOver,
        Origin origin) {

    public LeadReading {
        asks = List.copyOf(asks);
        leftOver = List.copyOf(leftOver);
    }

    /** A contact of a relay in the box; what feeds it decides what the lead is electrically. */
    public enum RelayContact {
        COMMON,
        /** Closed while the relay is on. */
        OPEN,
        /** Closed while it is off. */
        CLOSED
    }

    /** What a lead is electrically. */
    public enum PortKind {
        SUPPLY,
        GROUND,
        /** Means something when it goes low. */
        LOW_INPUT,
        /** Means something when it goes high. */
        HIGH_INPUT,
        LOW_SIDE,
        HIGH_SIDE,
        TO_EXTRA;

        boolean isOutput() {
            return this == LOW_SIDE || this == HIGH_SIDE;
        }
    }
}
