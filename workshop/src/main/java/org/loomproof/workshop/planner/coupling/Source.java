package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** Where an input gets what it reads: a factory wire, or a pin switch that the work adds. */
public sealed interface Source {

    /** How far it is from the controller. */
    Metres run();

    /** The end to join. */
    End end();

    /** The factory circuit that is read, if it is one. */
    default Optional<Circuit> circuitRead() {
        return switch (this) {
            case Wire wire -> Optional.of(wire.circuit());
            case Released released -> Optional.of(released.circuit());
            case Fused fused -> Optional.of(fused.feed().circuit());
            case Pin pin -> Optional.empty();
        };
    }

    /** A factory wire. */
    record Wire(Circuit circuit, Metres run) implements Source {
        @Override
        public End end() {
            return Draft.tap(circuit);
        }
    }

    /** A factory wire that is taken through a fuse near the take-off, since its own fuse is too large for a thin lead. */
    record Fused(Feed feed) implements Source {
        @Override
        public Metres run() {
            return feed.run();
        }

        @Override
        public End end() {
            return Draft.at(feed.fuse(), "2");
        }
    }

    /**
     * A factory wire that its switch holds to the body while the opening is closed and lets go when it opens: a resistor from
     * a constant supply lifts it then.
     */
    record Released(Circuit circuit, Metres run, Ohms pullUp, Feed feed) implements Source {
        /** The resistor's local name. */
        public AddedPartId part() {
            return Draft.local(circuit.id(), "pull-up");
        }

        /** What flows through the resistor for as long as the opening is closed, on a full battery. */
        public Amps atRest() {
            return new Amps(SupplyPoint.REST.volts().value() / pullUp.value());
        }

        @Override
        public End end() {
            return Draft.tap(circuit);
        }
    }

    /** An added pin switch, which goes to the body while its opening is open. */
    record Pin(OperableId opening, Metres run) implements Source {
        /** The pin's local name: one an opening, whoever reads it. */
        public AddedPartId part() {
            return Draft.local(opening, "pin");
        }

        @Override
        public End end() {
            return Draft.at(part(), "1");
        }
    }
}
