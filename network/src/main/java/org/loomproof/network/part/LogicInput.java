package org.loomproof.network.part;

import java.util.List;
import java.util.OptionalDouble;

/**
 * An input that reads its lead against the ground of its own controller.
 *
 * @param pullUpOhms resistance to the supply pin, if any
 * @param pullDownOhms resistance to the ground pin, if any
 * @param lowBelowVolts reads low at or below this
 * @param highAboveVolts reads high at or above this; above {@code lowBelowVolts}
 * @param protectionDiodes whether diodes conduct from ground to the lead and from the lead to the supply
 */
public record LogicInput(
        PartId id,
        Node input,
        Node supply,
        Node ground,
        OptionalDouble pullUpOhms,
        OptionalDouble pullDownOhms,
        double lowBelowVolts,
        double highAboveVolts,
        boolean protectionDiodes)
        implements Part {
    public LogicInput {
        pullUpOhms.ifPresent(ohms -> Require.positive(ohms, "pull-up ohms", id));
        pullDownOhms.ifPresent(ohms -> Require.positive(ohms, "pull-down ohms", id));
        Require.finite(lowBelowVolts, "low threshold", id);
        Require.finite(highAboveVolts, "high threshold", id);
        Require.that(highAboveVolts > lowBelowVolts, "the high threshold must exceed the low one", id);
    }

    /** How the input reads a lead at this voltage against its own ground. */
    public LogicLevel level(double voltsAgainstGround) {
        if (voltsAgainstGround <= lowBelowVolts) {
            return LogicLevel.LOW;
        }
        return voltsAgainstGround >= highAboveVolts ? LogicLevel.HIGH : LogicLevel.BETWEEN;
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("input", input), new Pin("supply", supply), new Pin("ground", ground));
    }
}
