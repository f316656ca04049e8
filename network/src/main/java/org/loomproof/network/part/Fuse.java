package org.loomproof.network.part;

import java.util.List;

/**
 * A fuse that has not blown. A blown one is stated by the setting as broken.
 *
 * @param coldOhms resistance at room temperature, above zero
 * @param ratingAmps rated current, for those who compare; the operating point does not use it
 */
public record Fuse(PartId id, Node a, Node b, double coldOhms, double ratingAmps) implements Part {
    public Fuse {
        Require.positive(coldOhms, "cold ohms", id);
        Require.positive(ratingAmps, "rating", id);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
