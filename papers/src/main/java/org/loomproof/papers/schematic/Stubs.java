package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Port;
import org.loomproof.papers.drawing.Port.Side;
import org.loomproof.papers.drawing.Sketch;

/**
 * Puts stubs with their tags on both sides of a symbol, so that there is always room for the lettering, and makes it a
 * block.
 */
final class Stubs {

    /** Room at each end of a tag. */
    private static final double AIR = 3;

    /** A stub without a tag. */
    private static final double BARE = 6;

    /** Room for the symbol of the body at a stub's end. */
    private static final double GROUND = 6;

    private Stubs() {}

    /**
     * One terminal to be led out.
     *
     * @param name the port's name
     * @param y height within the symbol
     * @param tags what is written on it
     * @param isGrounded whether it ends at the body right there
     * @param isFree whether nothing is joined to it
     */
    record Stub(String name, Side side, double y, List<Tag> tags, boolean isGrounded, boolean isFree) {

        private double length() {
            double tagWidth = tags.stream().mapToDouble(Tag::width).sum();
            if (isFree) {
                return 0;
            }
            return (tags.isEmpty() ? BARE : tagWidth + AIR * (tags.size() + 1)) + (isGrounded ? GROUND : 0);
        }
    }

    /** The symbol with its stubs, as a block. */
    static Block block(String id, Block.Zone zone, double width, double height, List<Ink> core, List<Stub> stubs) {
        double left = longest(stubs, Side.LEFT);
        double right = longest(stubs, Side.RIGHT);
        Sketch s = new Sketch();
        List<Port> ports = new ArrayList<>();
        for (Stub stub : stubs) {
            if (!stub.isFree()) {
                draw(s, stub, left, left + width, left + width + right);
                if (!stub.isGrounded()) {
                    ports.add(new Port(stub.name(), stub.side(), stub.y()));
                }
            }
        }
        s.put(core, left, 0);
        return new Block(id, zone, left + width + right, height, ports, s.ink());
    }

    private static double longest(List<Stub> stubs, Side side) {
        return stubs.stream()
                .filter(s -> s.side() == side)
                .mapToDouble(Stub::length)
                .max()
                .orElse(0);
    }

    private static void draw(Sketch s, Stub stub, double coreLeft, double coreRight, double blockRight) {
        boolean isLeft = stub.side() == Side.LEFT;
        double inner = isLeft ? coreLeft : coreRight;
        double outer = isLeft ? 0 : blockRight;
        if (stub.isGrounded()) {
            outer = isLeft ? coreLeft - stub.length() + GROUND : coreRight + stub.length() - GROUND;
            Symbols.ground(s, outer, stub.y(), isLeft);
        }
        var pen = stub.tags().isEmpty()
                ? Connections.pen(Optional.empty())
                : stub.tags().getFirst().pen();
        s.line(pen, outer, stub.y(), inner, stub.y());
        double x = isLeft ? inner - AIR : inner + AIR;
        for (Tag tag : stub.tags()) {
            s.letter(x, stub.y() - 3, tag.text(), isLeft ? Ink.Anchor.END : Ink.Anchor.START);
            x += (isLeft ? -1 : 1) * (tag.width() + AIR);
        }
    }
}
