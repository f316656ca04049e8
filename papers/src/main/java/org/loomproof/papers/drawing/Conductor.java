package org.loomproof.papers.drawing;

/**
 * A conductor between two ports. Conductors that share a port are joined there.
 *
 * @param id unique on the drawing
 * @param fromBlock the block further left
 * @param fromPort its port
 * @param toBlock the block further right
 * @param toPort its port
 * @param pen how it is drawn
 */
public record Conductor(String id, String fromBlock, String fromPort, String toBlock, String toPort, Pen pen) {

    /** The same with another pen. */
    public Conductor with(Pen other) {
        return new Conductor(id, fromBlock, fromPort, toBlock, toPort, other);
    }
}
