package org.loomproof.workshop.prover.state;

import java.util.LinkedHashSet;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** What a person operates to move what a lead is joined to. */
public final class Operated {

    private Operated() {}

    /** What the lead's circuits follow, then the openings of its added pin switches and its buttons and sensors. */
    public static Set<OperableId> by(Sheet sheet, Plan plan, Hookup.Connect connect) {
        Set<OperableId> operated = new LinkedHashSet<>();
        for (CircuitId circuit : connect.circuits()) {
            operated.addAll(sheet.circuit(circuit).follows());
        }
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.PinSwitch pin && connect.parts().contains(pin.id())) {
                operated.add(pin.opening());
            }
            if (part instanceof AddedPart.Sender sender && connect.parts().contains(sender.id())) {
                operated.add(sender.worked());
            }
        }
        return operated;
    }
}
