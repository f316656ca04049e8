package org.loomproof.network.part;

import java.util.List;
import java.util.Optional;

/**
 * A fuse that has not blown. A blown one is stated by the setting as broken.
 *
 * @param coldOhms resistance at room temperature, above zero
 * @param ratingAmps rated current, for those who compare; the operating point does not use it
 * @param band when it opens in a run in time; without one it never does
 */
public record Fuse(PartId id, Node a, Node b, double coldOhms, double ratingAmps, Optional<TimeCurrentBand> band)
        implements Part {
    public Fuse {
        Require.positive(coldOhms, "cold ohms", id);
        Require.positive(ratingAmps, "rating", id);
    }

    /** A fuse whose time-current band is not known. */
    public Fuse(PartId id, Node a, Node b, double coldOhms, double ratingAmps) {
        this(id, a, b, coldOhms, ratingAmps, Optional.empty());
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
