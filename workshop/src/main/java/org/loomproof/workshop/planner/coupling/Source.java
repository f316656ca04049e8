package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Metres;

/** Where an input gets what it reads: a factory wire, a pin switch that the work adds, or a contact out of the box. */
public sealed interface Source {

    /** How far it is from the controller. */
    Metres run();

    /** The end to join. */
    End end();

    /** What messages and parts call it. */
    default String name() {
        return switch (this) {
            case Wire wire -> wire.circuit().id().value();
            case Fused fused -> fused.feed().circuit().id().value();
            case Pin pin -> pin.opening().value();
            case Stage stage -> stage.extra().name();
        };
    }

    /** The factory circuit that is read, if it is one. */
    default Optional<Circuit> circuitRead() {
        return switch (this) {
            case Wire wire -> Optional.of(wire.circuit());
            case Fused fused -> Optional.of(fused.feed().circuit());
            case Pin pin -> Optional.empty();
            case Stage stage -> Optional.empty();
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

    /** A contact of a button or sensor out of the box, which stands and is fed whoever reads it. */
    record Stage(Extra extra, String terminal, Metres run) implements Source {
        /** The local name of the thing: one, whoever reads it. */
        public AddedPartId part() {
            return Draft.local(extra.name(), "sender");
        }

        @Override
        public End end() {
            return Draft.at(part(), terminal);
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
