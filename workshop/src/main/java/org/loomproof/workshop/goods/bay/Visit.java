package org.loomproof.workshop.goods.bay;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.WireId;

/** One thing done at one place in the car. */
public sealed interface Visit {

    /** The added wires that are worked on. */
    List<WireId> wires();

    /** The factory wire that is worked on, where it is one. */
    default Optional<CircuitId> findCircuit() {
        return switch (this) {
            case Tapped tapped -> Optional.of(tapped.circuit());
            case Cut cut -> Optional.of(cut.circuit());
            case Ground ground -> Optional.empty();
            case Mounted mounted -> Optional.empty();
            case SupplyFuse fuse -> Optional.empty();
        };
    }

    /** A wire joined to bare metal. */
    record Ground(List<WireId> wires) implements Visit {
        public Ground {
            wires = List.copyOf(wires);
        }
    }

    /** A factory wire joined without cutting it. */
    record Tapped(CircuitId circuit, List<WireId> wires) implements Visit {
        public Tapped {
            wires = List.copyOf(wires);
        }
    }

    /** Something from the box or the shelf mounted in the car. */
    record Mounted(AddedPartId part, List<WireId> wires) implements Visit {
        public Mounted {
            wires = List.copyOf(wires);
        }
    }

    /** A factory wire cut, both of its ends joined. */
    record Cut(CircuitId circuit, List<WireId> wires) implements Visit {
        public Cut {
            wires = List.copyOf(wires);
        }
    }

    /** The fuse through which the controller gets its supply. */
    record SupplyFuse(AddedPartId part, List<WireId> wires) implements Visit {
        public SupplyFuse {
            wires = List.copyOf(wires);
        }
    }
}
