package org.loomproof.network.part;

import java.util.List;

/** A diode: conducts from anode to cathode. */
public record Diode(PartId id, Node anode, Node cathode, DiodeModel model) implements Part {
    @Override
    public List<Pin> pins() {
        return List.of(new Pin("anode", anode), new Pin("cathode", cathode));
    }
}
