package org.loomproof.network.corner;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.network.solve.OperatingPoint;

/** What is read from every operating point of a search; its kind says what can be proven about its extremes. */
public sealed interface Asked {
    double at(OperatingPoint point);

    /** A voltage or a current: in a straight network monotone in every single resistance and source, see {@link CornerSearch}. */
    sealed interface Linear extends Asked permits Volts, Amps {}

    /** Voltage between two nodes. */
    record Volts(Node plus, Node minus) implements Linear {
        @Override
        public double at(OperatingPoint point) {
            return point.volts(plus, minus);
        }
    }

    /** Current into a part's first pin. */
    record Amps(PartId part) implements Linear {
        @Override
        public double at(OperatingPoint point) {
            return point.amps(part);
        }
    }

    /** A product of two, such as a power: monotone in nothing, but bounded by the ranges of its factors. */
    record Product(Linear first, Linear second) implements Asked {
        @Override
        public double at(OperatingPoint point) {
            return first.at(point) * second.at(point);
        }
    }

    /** Anything else, of which nothing is known. */
    record Reading(ToDoubleFunction<OperatingPoint> of) implements Asked {
        @Override
        public double at(OperatingPoint point) {
            return of.applyAsDouble(point);
        }
    }

    /** Voltage against the chassis. */
    static Asked volts(Node node) {
        return new Volts(node, Node.CHASSIS);
    }

    /** Voltage between two nodes. */
    static Asked volts(Node plus, Node minus) {
        return new Volts(plus, minus);
    }

    /** Current into a part's first pin, amps. */
    static Asked amps(PartId part) {
        return new Amps(part);
    }

    /**
     * Power that a part with two pins takes, watts.
     *
     * @throws IllegalArgumentException if it has more
     */
    static Asked watts(Part part) {
        List<Pin> pins = part.pins();
        if (pins.size() != 2) {
            throw new IllegalArgumentException(part.id() + " has not two pins but " + pins);
        }
        return new Product(new Volts(pins.getFirst().node(), pins.getLast().node()), new Amps(part.id()));
    }
}
