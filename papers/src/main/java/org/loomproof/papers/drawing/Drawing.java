package org.loomproof.papers.drawing;

import java.util.List;

/**
 * What is to be drawn, before anything has a place.
 *
 * @param blocks in a fixed order
 * @param conductors between their ports
 */
public record Drawing(List<Block> blocks, List<Conductor> conductors) {

    public Drawing {
        blocks = List.copyOf(blocks);
        conductors = List.copyOf(conductors);
    }
}
