package org.loomproof.papers.drawing;

import java.util.List;

/**
 * Symbols that stay together, with the ports by which conductors reach them.
 *
 * @param id unique on the drawing
 * @param zone in which column group it stands
 * @param width in points of print
 * @param height in points of print
 * @param ports where conductors end
 * @param ink what is drawn, seen from the block's top left corner
 */
public record Block(String id, Zone zone, double width, double height, List<Port> ports, List<Ink> ink) {

    public Block {
        ports = List.copyOf(ports);
        ink = List.copyOf(ink);
    }

    /** Column groups from left to right. */
    public enum Zone {
        LEFT,
        MIDDLE,
        RIGHT
    }
}
