package org.loomproof.workshop.plan;

import java.util.List;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.words.Phrase;

/** The decision for one lead. Every lead of the kit has exactly one. */
public sealed interface Hookup {

    /** Which lead. */
    LeadId lead();

    /** Why, in words. */
    Phrase because();

    /** Options that lost, each with the reason it lost. */
    List<Phrase> insteadOf();

    /**
     * Joined to the vehicle, to an added part, or to both.
     *
     * @param serves the wish it serves
     * @param circuits the factory circuits it acts on or reads, the one it makes active first; empty when it only goes to added parts or the body
     * @param coupling the name of what stands between, a message key such as {@code coupling.straight}
     * @param parts the added parts of that coupling; a part may serve several leads
     * @param wires the added wires of that coupling
     */
    record Connect(
            LeadId lead,
            Wish serves,
            List<CircuitId> circuits,
            String coupling,
            List<AddedPartId> parts,
            List<WireId> wires,
            Phrase because,
            List<Phrase> insteadOf)
            implements Hookup {
        public Connect {
            circuits = List.copyOf(circuits);
            parts = List.copyOf(parts);
            wires = List.copyOf(wires);
            insteadOf = List.copyOf(insteadOf);
        }
    }

    /** Cut short at the plug and insulated: never needed in this car. */
    record Trim(LeadId lead, Phrase because, List<Phrase> insteadOf) implements Hookup {
        public Trim {
            insteadOf = List.copyOf(insteadOf);
        }
    }

    /** Insulated one by one, labelled and tied back: may be wanted later. */
    record CapAndKeep(LeadId lead, Phrase because, List<Phrase> insteadOf) implements Hookup {
        public CapAndKeep {
            insteadOf = List.copyOf(insteadOf);
        }
    }

    /**
     * Waiting for a named measurement.
     *
     * @param serves the wish that waits
     * @param until the measurement that settles it
     */
    record Hold(LeadId lead, Wish serves, Measurement until, Phrase because, List<Phrase> insteadOf) implements Hookup {
        public Hold {
            insteadOf = List.copyOf(insteadOf);
        }
    }
}
