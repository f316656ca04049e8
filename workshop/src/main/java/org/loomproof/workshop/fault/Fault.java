package org.loomproof.workshop.fault;

import java.util.List;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.words.Phrase;

/** A part, a wire with its joints, or an output failing by itself. */
public sealed interface Fault extends Mishap {

    /** What of it fails: the message of its words is {@code fault.} and this. */
    @Override
    String kind();

    /** The name of what fails. */
    String on();

    @Override
    default List<Object> names() {
        return List.of(on());
    }

    @Override
    default String id() {
        return kind() + " " + on();
    }

    @Override
    default Phrase words() {
        return Phrase.of("fault." + kind(), on());
    }

    @Override
    default Phrase inspection() {
        return Phrase.of("inspection." + kind(), on());
    }

    /** A fault of an added wire or of a joint at either end. */
    sealed interface OfWire extends Fault {
        WireId wire();

        @Override
        default String on() {
            return wire().toString();
        }
    }

    /** A fault of an added part. */
    sealed interface OfPart extends Fault {
        AddedPartId part();

        @Override
        default String on() {
            return part().toString();
        }
    }

    /** A wire is broken or one of its joints has let go: the supply or the ground of the controller among them. */
    record WireOpen(WireId wire) implements OfWire {
        @Override
        public String kind() {
            return "wire-open";
        }
    }

    /** A wire's joint has a resistance of some ohms. */
    record PoorJoint(WireId wire) implements OfWire {
        @Override
        public String kind() {
            return "poor-joint";
        }
    }

    /** A wire is chafed through and touches the body. */
    record ChafedToBody(WireId wire) implements OfWire {
        @Override
        public String kind() {
            return "chafed-to-body";
        }
    }

    /** A wire is chafed through and touches one that is always at the battery's plus. */
    record ChafedToSupply(WireId wire) implements OfWire {
        @Override
        public String kind() {
            return "chafed-to-supply";
        }
    }

    /** A part no longer conducts: a blown fuse, a dead diode, a burnt coil. */
    record PartOpen(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "part-open";
        }
    }

    /** A part conducts whatever it should do. */
    record PartShorted(AddedPartId part) implements OfPart {
        @Override
        public String kind() {
            return "part-shorted";
        }
    }

    /** A resistor has drifted to twice or to half its value. */
    record Drifted(AddedPartId part, boolean up) implements OfPart {
        @Override
        public String kind() {
            return up ? "drifted-up" : "drifted-down";
        }
    }

    /** A relay's contact is welded on 87, or rests on 87a whatever the coil does. */
    record ContactStuck(AddedPartId part, boolean pulledIn) implements OfPart {
        @Override
        public String kind() {
            return pulledIn ? "welded" : "stuck";
        }
    }

    /** The last stage of an output conducts always, or never. */
    record OutputStuck(LeadId lead, boolean conducting) implements Fault {
        @Override
        public String kind() {
            return conducting ? "output-stuck-on" : "output-stuck-off";
        }

        @Override
        public String on() {
            return lead.toString();
        }
    }
}
