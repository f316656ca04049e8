package org.loomproof.papers.drawing;

/**
 * Where conductors may reach a block.
 *
 * @param name unique in its block
 * @param side the edge it lies on
 * @param y below the block's top
 */
public record Port(String name, Side side, double y) {

    /** The edge of a block. */
    public enum Side {
        LEFT,
        RIGHT
    }
}
