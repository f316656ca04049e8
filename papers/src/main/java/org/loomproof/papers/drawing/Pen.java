package org.loomproof.papers.drawing;

import java.util.Optional;

/**
 * How a line is drawn.
 *
 * @param colour as {@code #rrggbb}
 * @param tracer the second colour of a conductor's insulation, likewise
 * @param width in points of print
 * @param dashed for what is not a conductor: outlines and mechanical links
 * @param edged whether a thin dark edge keeps a light colour apart from the paper
 * @param draws the conductor that it draws, so that the same drawing can tell what is on it; empty for everything else
 */
public record Pen(String colour, Optional<String> tracer, double width, boolean dashed, boolean edged, String draws) {

    /** For what is no conductor that has a name. */
    public Pen(String colour, Optional<String> tracer, double width, boolean dashed, boolean edged) {
        this(colour, tracer, width, dashed, edged, "");
    }

    /** For symbols and everything else that is not a conductor of known colour. */
    public static final Pen INK = new Pen("#17202a", Optional.empty(), 0.9, false, false);

    /** For outlines around a group. */
    public static final Pen OUTLINE = new Pen("#8a949d", Optional.empty(), 0.6, false, false);

    /** For the link between a coil and its contact. */
    public static final Pen LINK = new Pen("#17202a", Optional.empty(), 0.6, true, false);

    /** A conductor in the colours of its insulation. */
    public static Pen conductor(String base, Optional<String> tracer) {
        return new Pen(base, tracer, 1.7, false, true);
    }

    /** The same for a conductor that has a name. */
    public Pen drawing(String conductor) {
        return new Pen(colour, tracer, width, dashed, edged, conductor);
    }

    /** The same in another width, in points of print. */
    public Pen wide(double otherWidth) {
        return new Pen(colour, tracer, otherWidth, dashed, edged, draws);
    }
}
