package org.loomproof.papers.plot;

import java.util.List;

/**
 * What is in one of two or three positions over time, such as a relay.
 *
 * @param spans in order, without gaps
 */
record Lane(String name, List<Span> spans) {
    /** From one time to another at a height: 0 at rest, 1 moved, a half in between. */
    record Span(double from, double to, double height) {}

    Lane {
        spans = List.copyOf(spans);
    }
}
