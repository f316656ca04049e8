package org.loomproof.workshop.fault;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** Every single fault of what a plan adds: of each wire with its joints, of each part, of each output that is used. */
final class Faults {

    private Faults() {}

    static List<Fault> list(Kit kit, Plan plan) {
        List<Fault> faults = new ArrayList<>();
        for (AddedWire wire : plan.wires()) {
            faults.add(new Fault.WireOpen(wire.id()));
            faults.add(new Fault.PoorJoint(wire.id()));
            faults.add(new Fault.ChafedToBody(wire.id()));
            faults.add(new Fault.ChafedToSupply(wire.id()));
        }
        plan.parts().forEach(part -> faults.addAll(ofPart(part)));
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect && isOutput(kit, connect.lead())) {
                faults.add(new Fault.OutputStuck(connect.lead(), true));
                faults.add(new Fault.OutputStuck(connect.lead(), false));
            }
        }
        return faults;
    }

    private static List<Fault> ofPart(AddedPart part) {
        AddedPartId id = part.id();
        return switch (part) {
            case AddedPart.Relay r ->
                List.of(
                        new Fault.PartOpen(id),
                        new Fault.PartShorted(id),
                        new Fault.ContactStuck(id, true),
                        new Fault.ContactStuck(id, false));
            case AddedPart.Buffer b ->
                List.of(new Fault.PartOpen(id), new Fault.ContactStuck(id, true), new Fault.ContactStuck(id, false));
            case AddedPart.Resistor r ->
                List.of(
                        new Fault.PartOpen(id),
                        new Fault.PartShorted(id),
                        new Fault.Drifted(id, true),
                        new Fault.Drifted(id, false));
            case AddedPart.Junction d -> List.of(new Fault.PartOpen(id), new Fault.PartShorted(id));
            // A fuse that does not open is a slip of the hand, not a fault of the fuse.
            case AddedPart.Fuse f -> List.of(new Fault.PartOpen(id));
            case AddedPart.Pole p -> List.of(new Fault.PartOpen(id));
            case AddedPart.Load l -> List.of(new Fault.PartOpen(id), new Fault.PartShorted(id));
            case AddedPart.StandbyBattery b -> List.of(new Fault.PartOpen(id), new Fault.PartShorted(id));
            case AddedPart.Sender s -> List.of(new Fault.PartOpen(id), new Fault.PartShorted(id));
            case AddedPart.PinSwitch p -> List.of(new Fault.PartOpen(id), new Fault.PartShorted(id));
        };
    }

    private static boolean isOutput(Kit kit, LeadId lead) {
        return switch (kit.lead(lead).port()) {
            case Port.LowSide o -> true;
            case Port.HighSide o -> true;
            case Port.Supply s -> false;
            case Port.Ground g -> false;
            case Port.Input i -> false;
            case Port.ToExtra e -> false;
        };
    }
}
