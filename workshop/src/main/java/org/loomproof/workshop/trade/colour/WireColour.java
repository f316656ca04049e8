package org.loomproof.workshop.trade.colour;

import java.util.Optional;

/**
 * A wire's insulation: base and, where there is one, tracer. Light and dark shades are kept in {@code shade} as written,
 * since IEC 60757 has no letters for them.
 *
 * @param base the base colour
 * @param tracer the stripe
 * @param shade {@code light}, {@code dark} or empty for the base; the tracer's behind a stroke: {@code /light}, {@code dark/light}
 */
public record WireColour(Colour base, Optional<Colour> tracer, String shade) {

    /** The IEC 60757 letters, base first: {@code GN/BK}. */
    public String letters() {
        return base.code() + tracer.map(t -> "/" + t.code()).orElse("");
    }

    /**
     * True when the two are hardly told apart: base and tracer look alike, whatever the shade, or they have changed places, which
     * on a short end of wire is seen by nobody. Common practice, no published source.
     */
    public boolean looksLike(WireColour other) {
        boolean straight = base.looksLike(other.base) && areAlike(tracer, other.tracer);
        boolean swapped = areAlike(Optional.of(base), other.tracer) && areAlike(tracer, Optional.of(other.base));
        return straight || swapped;
    }

    private static boolean areAlike(Optional<Colour> one, Optional<Colour> other) {
        return one.isPresent() == other.isPresent()
                && one.flatMap(a -> other.map(a::looksLike)).orElse(true);
    }

    @Override
    public String toString() {
        return letters();
    }
}
