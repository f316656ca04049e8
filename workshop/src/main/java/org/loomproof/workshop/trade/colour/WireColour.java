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

    @Override
    public String toString() {
        return letters();
    }
}
