package org.loomproof.papers.card;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.sizing.JointChoice;

/** Says how the ends of added wires are joined. */
public record JointText(Joints joints, Wording words) {

    /** One sentence a place where these wires end. */
    public List<String> at(List<AddedWire> wires) {
        return at(wires, place -> true);
    }

    /** One sentence a place where these wires end, of the places wanted. */
    public List<String> at(List<AddedWire> wires, Predicate<End> wanted) {
        return joints.at(wires).stream()
                .filter(joint -> wanted.test(joint.place()))
                .map(this::sentence)
                .distinct()
                .toList();
    }

    /** How one joint is made, where its name stands beside. */
    public String how(PlacedJoint joint) {
        return joint.choice()
                .map(choice -> sentence(joint.place(), choice))
                .orElseGet(() -> words.of("joint.size-not-said", words.end(joint.place())));
    }

    /** One joint in a sentence. */
    public String sentence(PlacedJoint joint) {
        String how = how(joint);
        return joint.place() instanceof End.OfPart ? how : words.of("joint.numbered", joint.name(), how);
    }

    private String sentence(End place, JointChoice joint) {
        String method = joint.method().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String sleeve = joint.sleeve()
                .map(s -> words.of("joint.sleeve." + s.word()))
                .orElseGet(() -> words.of("joint.sleeve.none"));
        String strip = joint.strip().map(words::millimetres).orElse("");
        String how = words.of("joint." + method, words.end(place), sleeve, words.size(joint.by()), strip);
        return joint.pull()
                .map(p -> words.of("joint.holds", how, Math.round(p.newtons()), Math.round(p.pounds())))
                .orElse(how);
    }
}
