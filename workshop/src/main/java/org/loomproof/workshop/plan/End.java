package org.loomproof.workshop.plan;

import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * Where an added wire ends. In text: {@code lead P1-3}, {@code K1 30}, {@code circuit starter tap},
 * {@code circuit starter before}, {@code circuit starter after}, {@code ground}.
 */
public sealed interface End {

    /** The kit's own lead. */
    record OfLead(LeadId lead) implements End {}

    /** A terminal of an added part. */
    record OfPart(AddedPartId part, String terminal) implements End {}

    /** A factory wire, joined without cutting it. */
    record Tap(CircuitId circuit) implements End {}

    /** A cut factory wire: the end still joined to what its path lists before the wire. */
    record CutBefore(CircuitId circuit) implements End {}

    /** A cut factory wire: the end still joined to what its path lists after the wire. */
    record CutAfter(CircuitId circuit) implements End {}

    /** Bare metal of the body, by a screw of its own. */
    record Body() implements End {}
}
