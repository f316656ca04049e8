package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Port;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.End;

/** One factory circuit: its paths as rungs from left to right, and below the main one a lane for each wire that joins. */
final class CircuitPanel {

    private static final double HEAD = 24;
    private static final double LINE = 10;
    private static final double LONGEST_PLACE = 230;
    private static final double INSET = 6;
    private static final double LANE = 13;
    private static final double FOOT = 5;

    private final Circuit circuit;
    private final List<Connections.Lane> lanes;
    private final String elsewhere;
    private final Wording words;
    private final List<Rung> rungs = new ArrayList<>();

    /**
     * A panel.
     *
     * @param elsewhere on which other sheets the circuit is drawn too; empty when on none
     */
    CircuitPanel(Circuit circuit, List<Connections.Lane> lanes, String elsewhere, Wording words) {
        this.circuit = circuit;
        this.lanes = lanes;
        this.elsewhere = elsewhere;
        this.words = words;
        boolean isCut = lanes.stream().anyMatch(l -> !(l.end() instanceof End.Tap));
        List<List<PathStep>> ordered = new ArrayList<>(circuit.paths());
        circuit.paths().stream()
                .filter(p -> p.stream().anyMatch(PathStep.Here.class::isInstance))
                .findFirst()
                .ifPresent(main -> {
                    ordered.remove(main);
                    ordered.addFirst(main);
                });
        if (ordered.isEmpty()) {
            ordered.add(List.of(new PathStep.Here()));
        }
        for (List<PathStep> path : ordered) {
            rungs.add(new Rung(circuit, path, rungs.isEmpty() && isCut, rungs.isEmpty(), words));
        }
    }

    private Rung main() {
        return rungs.getFirst();
    }

    /** The least width that holds everything. */
    double width() {
        double placeWidth = FontWidths.width(elsewhere, Sketch.TYPE, false)
                + 10
                + place().stream()
                        .mapToDouble(line -> FontWidths.width(line, Sketch.TYPE, false))
                        .max()
                        .orElse(0);
        double widest = Math.max(titleWidth(), placeWidth);
        for (Rung rung : rungs) {
            widest = Math.max(widest, rung.width());
        }
        for (Connections.Lane lane : lanes) {
            widest = Math.max(
                    widest,
                    laneStart(lane)
                            + 6
                            + FontWidths.width(laneText(lane), Sketch.TYPE, false)
                            + (lane.grounded() ? 12 : 4));
        }
        return widest + 2 * INSET;
    }

    private double titleWidth() {
        return FontWidths.width(title(), Sketch.TYPE, true) + 12 + FontWidths.width(wire(), Sketch.TYPE, false);
    }

    private String title() {
        return FontWidths.fitted(words.circuit(circuit), LONGEST_PLACE, Sketch.TYPE, true);
    }

    private String wire() {
        String letters = circuit.colour().map(c -> c.letters()).orElse(words.of("schematic.colour-not-said"));
        return circuit.size()
                .map(size -> words.of("schematic.circuit-wire", letters, words.size(size.typical())))
                .orElse(letters);
    }

    /** Where the wire is: whole, since a cavity that is left off is one that is looked for. */
    private List<String> place() {
        String where = words.where(circuit.where());
        return FontWidths.wrapped(where.isEmpty() ? words.of("where.not-said") : where, "", LONGEST_PLACE, Sketch.TYPE);
    }

    private double head() {
        return HEAD + LINE * (place().size() - 1);
    }

    private double laneStart(Connections.Lane lane) {
        return switch (lane.end()) {
            case End.Tap e -> main().tapX();
            case End.CutBefore e -> main().beforeX();
            case End.CutAfter e -> main().afterX();
            case End.OfLead e -> throw notAtACircuit(lane);
            case End.OfPart e -> throw notAtACircuit(lane);
            case End.Body e -> throw notAtACircuit(lane);
        };
    }

    private String laneText(Connections.Lane lane) {
        String text = lane.tag().text();
        return switch (lane.end()) {
            case End.Tap e -> text;
            case End.CutBefore e ->
                main().nameBefore()
                        .map(n -> words.of("schematic.cut-side", text, n))
                        .orElse(text);
            case End.CutAfter e ->
                main().nameAfter()
                        .map(n -> words.of("schematic.cut-side", text, n))
                        .orElse(text);
            case End.OfLead e -> throw notAtACircuit(lane);
            case End.OfPart e -> throw notAtACircuit(lane);
            case End.Body e -> throw notAtACircuit(lane);
        };
    }

    private static IllegalArgumentException notAtACircuit(Connections.Lane lane) {
        return new IllegalArgumentException("wire " + lane.wire() + " does not end at a circuit: " + lane.end());
    }

    /** The panel at a width of at least {@link #width()}. */
    Block block(double width) {
        Sketch s = new Sketch();
        s.letter(INSET, 10, title(), words.circuit(circuit), Ink.Anchor.START, true);
        s.letter(width - INSET, 10, wire(), Ink.Anchor.END);
        double down = 20;
        for (String line : place()) {
            s.letter(INSET, down, line, Ink.Anchor.START);
            down += LINE;
        }
        s.letter(width - INSET, 20, elsewhere, Ink.Anchor.END);
        List<Port> ports = new ArrayList<>();
        double y = head();
        for (Rung rung : rungs) {
            rung.draw(s, INSET, y);
            y += rung.height();
            if (rung.equals(main())) {
                y = drawLanes(s, width, y, ports);
            }
        }
        double height = y + FOOT;
        s.rectangle(Pen.OUTLINE, "none", 0, 0, width, height);
        return new Block(blockId(circuit), Block.Zone.LEFT, width, height, ports, s.ink());
    }

    /** Lanes from the right are nearer to the rung, so that none crosses another's drop. */
    private double drawLanes(Sketch s, double width, double top, List<Port> ports) {
        List<Connections.Lane> ordered = lanes.stream()
                .sorted(Comparator.comparingDouble(l -> -laneStart(l)))
                .toList();
        double y = top;
        double wireY = top - main().height() + main().wireY();
        Optional<Connections.Lane> previous = Optional.empty();
        double from = wireY;
        for (Connections.Lane lane : ordered) {
            y += LANE;
            double x = INSET + laneStart(lane);
            boolean isShared =
                    previous.filter(p -> laneStart(p) == laneStart(lane)).isPresent();
            double start = isShared ? from : wireY;
            double end = lane.grounded() ? width - INSET - 8 : width;
            s.line(lane.tag().pen(), x, start, x, y, end, y);
            if (isShared) {
                s.joint(x, start);
            }
            s.joint(x, wireY);
            s.letter(x + 5, y - 3, laneText(lane), Ink.Anchor.START);
            if (lane.grounded()) {
                Symbols.ground(s, end, y, false);
            } else {
                ports.add(new Port(portName(lane), Port.Side.RIGHT, y));
            }
            previous = Optional.of(lane);
            from = y;
        }
        return y + (ordered.isEmpty() ? 0 : 2);
    }

    /** The port of a wire's lane. */
    static String portName(Connections.Lane lane) {
        return portName(lane.wire().value(), lane.end());
    }

    /** The port of a wire that ends there. */
    static String portName(String wire, End end) {
        return wire + " " + end.getClass().getSimpleName();
    }

    /** The id of a circuit's block. */
    static String blockId(Circuit circuit) {
        return "circuit " + circuit.id().value();
    }
}
