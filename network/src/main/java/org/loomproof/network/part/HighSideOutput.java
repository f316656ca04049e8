package org.loomproof.network.part;

import java.util.List;

/**
 * A transistor output that is open when off and joins its lead to the supply of its own controller when on. Off at rest, on
 * when the setting says so and the controller has supply.
 *
 * @param output the lead
 * @param supply own supply pin of the controller; may be cut off
 * @param ground own ground pin of the controller; may be cut off
 * @param bodyDiode whether a diode conducts from the lead to the supply
 * @param clampToGround whether a diode conducts from ground to the lead
 */
public record HighSideOutput(
        PartId id,
        Node output,
        Node supply,
        Node ground,
        Drive drive,
        Wakefulness wakefulness,
        boolean bodyDiode,
        boolean clampToGround)
        implements Part {
    /** An output of the usual wakefulness. */
    public HighSideOutput(
            PartId id, Node output, Node supply, Node ground, Drive drive, boolean bodyDiode, boolean clampToGround) {
        this(id, output, supply, ground, drive, Wakefulness.USUAL, bodyDiode, clampToGround);
    }

    /** The same output with another wakefulness. */
    public HighSideOutput with(Wakefulness other) {
        return new HighSideOutput(id, output, supply, ground, drive, other, bodyDiode, clampToGround);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("output", output), new Pin("supply", supply), new Pin("ground", ground));
    }
}
