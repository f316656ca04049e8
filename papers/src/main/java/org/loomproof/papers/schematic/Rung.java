package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.quantity.Quantity;

/**
 * One path of a factory circuit, from left to right. Lengths of factory wire are left out: they are the line itself. Only
 * the wire that the sheet describes has its colours; of the others none is known.
 */
final class Rung {

    /** From the wire down to the end of the line of values. */
    private static final double BELOW = 18;

    /** From the lowest line of names down to the wire. */
    private static final double ABOVE = 19.5;

    private static final double LINE = 8.5;
    private static final double LONGEST_NAME = 64;

    /** Of a point that a path goes on from: the same name stands at both places, and must be known again. */
    private static final double LONGEST_FLAG = 90;

    private static final double CUT = 34;
    private static final double JOINT = 16;

    private final Circuit circuit;
    private final boolean isCut;
    private final boolean isMain;
    private final Wording words;
    private final List<Cell> cells = new ArrayList<>();

    /** A step with its place on the rung. */
    private record Cell(PathStep step, double x, double width) {}

    Rung(Circuit circuit, List<PathStep> path, boolean isCut, boolean isMain, Wording words) {
        this.circuit = circuit;
        this.isCut = isCut;
        this.isMain = isMain;
        this.words = words;
        double x = 0;
        for (PathStep step : path) {
            double width = cellWidth(step);
            cells.add(new Cell(step, x, width));
            x += width;
        }
    }

    /** Height of the wire below the rung's top. */
    double wireY() {
        int lines = cells.stream()
                .map(Cell::step)
                .filter(PathStep.Part.class::isInstance)
                .mapToInt(step -> name((PathStep.Part) step).size())
                .max()
                .orElse(1);
        return ABOVE + LINE * (lines - 1);
    }

    double height() {
        return wireY() + BELOW;
    }

    double width() {
        return cells.isEmpty() ? 0 : cells.getLast().x() + cells.getLast().width();
    }

    private double cellWidth(PathStep step) {
        return switch (step) {
            case PathStep.Supply p -> 18;
            case PathStep.Ground p -> 16;
            case PathStep.Point p -> flagWidth(p.id().value());
            case PathStep.Here p ->
                isMain ? (isCut ? CUT : JOINT) : flagWidth(circuit.id().value());
            case PathStep.Wire p -> 8;
            case PathStep.Part p -> {
                double widest = Symbols.LENGTH;
                for (String line : name(p)) {
                    widest = Math.max(widest, FontWidths.width(line, Sketch.TYPE, false) + 5);
                }
                yield Math.max(widest, FontWidths.width(value(p), Sketch.TYPE, false) + 5);
            }
        };
    }

    private static double flagWidth(String name) {
        return FontWidths.width(onFlag(name), Sketch.TYPE, false) + 16;
    }

    private static String onFlag(String name) {
        return FontWidths.fittedName(name, LONGEST_FLAG, Sketch.TYPE);
    }

    private static String fitted(String text) {
        return FontWidths.fittedName(text, LONGEST_NAME, Sketch.TYPE);
    }

    private Optional<Cell> here() {
        return cells.stream().filter(c -> c.step() instanceof PathStep.Here).findFirst();
    }

    /** Where a tap leaves the wire. */
    double tapX() {
        return here().map(c -> isCut ? c.x() + 5 : c.x() + c.width() / 2).orElse(4.0);
    }

    /** Where the side before the cut is joined. */
    double beforeX() {
        return here().map(c -> c.x() + 7).orElse(4.0);
    }

    /** Where the side after the cut is joined. */
    double afterX() {
        return here().map(c -> c.x() + c.width() - 7).orElse(20.0);
    }

    /** The nearest factory part before the wire. */
    Optional<String> nameBefore() {
        int at = here().map(cells::indexOf).orElse(0);
        return nearest(cells.subList(0, at).reversed());
    }

    /** The nearest factory part after the wire. */
    Optional<String> nameAfter() {
        int at = here().map(cells::indexOf).orElse(-1);
        return nearest(cells.subList(at + 1, cells.size()));
    }

    private static Optional<String> nearest(List<Cell> inOrder) {
        for (Cell cell : inOrder) {
            switch (cell.step()) {
                case PathStep.Wire p -> {}
                case PathStep.Part p -> {
                    return Optional.of(p.id().value());
                }
                case PathStep.Point p -> {
                    return Optional.of(p.id().value());
                }
                case PathStep.Supply p -> {}
                case PathStep.Ground p -> {}
                case PathStep.Here p -> {}
            }
        }
        return Optional.empty();
    }

    void draw(Sketch s, double left, double top) {
        double y = top + wireY();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            boolean isInside = i > 0 && i < cells.size() - 1;
            if (isInside && cell.step() instanceof PathStep.Point point) {
                named(s, point.id().value(), left + cell.x(), y, cell.width(), penAt(i));
            } else {
                draw(s, cell, left + cell.x(), y, i == 0, penAt(i));
            }
        }
    }

    /** The wire's own colours next to its place, as far as the nearest parts. */
    private Pen penAt(int index) {
        int at = here().map(cells::indexOf).orElse(-1);
        if (at < 0) {
            return Pen.INK;
        }
        int from = Math.min(at, index);
        int to = Math.max(at, index);
        boolean isSameWire = cells.subList(from, to + 1).stream()
                .allMatch(c -> !(c.step() instanceof PathStep.Part) || c.step() instanceof PathStep.Wire);
        return isSameWire
                ? Connections.pen(circuit.colour()).drawing(LiveSchematic.circuit(circuit.id(), index <= at))
                : Pen.INK;
    }

    private void draw(Sketch s, Cell cell, double x, double y, boolean isFirst, Pen pen) {
        double right = x + cell.width();
        switch (cell.step()) {
            case PathStep.Supply p -> {
                double ring = isFirst ? x : right - 5;
                s.line(pen, isFirst ? x + 5 : x, y, isFirst ? right : right - 5, y);
                Symbols.supply(s, ring, y);
                s.letter(ring, y - 5, "30", Ink.Anchor.START);
            }
            case PathStep.Ground p -> {
                double bars = isFirst ? x + 6 : right - 6;
                s.line(pen, isFirst ? bars : x, y, isFirst ? right : bars, y);
                Symbols.ground(s, bars, y, isFirst);
            }
            case PathStep.Point p -> flag(s, p.id().value(), x, y, cell.width(), isFirst, pen);
            case PathStep.Here p -> {
                if (isMain) {
                    here(s, x, y, right, pen);
                } else {
                    flag(s, circuit.id().value(), x, y, cell.width(), isFirst, pen);
                }
            }
            case PathStep.Wire p -> s.line(pen, x, y, right, y);
            case PathStep.Part p -> part(s, p, x, y, right);
        }
    }

    private void here(Sketch s, double x, double y, double right, Pen pen) {
        if (!isCut) {
            s.line(pen, x, y, right, y);
            return;
        }
        s.line(pen, x, y, x + 13, y);
        s.line(pen.drawing(LiveSchematic.circuit(circuit.id(), false)), right - 13, y, right, y);
        for (double at : new double[] {x + 13, right - 13}) {
            s.line(Pen.INK, at - 2, y + 4.5, at + 2, y - 4.5);
        }
    }

    private static void flag(Sketch s, String name, double x, double y, double width, boolean isFirst, Pen pen) {
        double lead = 6;
        double left = isFirst ? x : x + lead;
        double right = isFirst ? x + width - lead : x + width;
        s.line(pen, isFirst ? right : x, y, isFirst ? x + width : left, y);
        if (isFirst) {
            s.outline(Pen.INK, left, y - 5, right - 4, y - 5, right, y, right - 4, y + 5, left, y + 5);
            s.letter(left + 2, y + 2.6, onFlag(name), name, Ink.Anchor.START, false);
        } else {
            s.outline(Pen.INK, left, y, left + 4, y - 5, right, y - 5, right, y + 5, left + 4, y + 5);
            s.letter(right - 2, y + 2.6, onFlag(name), name, Ink.Anchor.END, false);
        }
    }

    /** A named place along the way, where another path joins. */
    private static void named(Sketch s, String name, double x, double y, double width, Pen pen) {
        double middle = x + width / 2;
        s.line(pen, x, y, x + width, y);
        s.joint(middle, y);
        s.letter(middle, y + 15.5, onFlag(name), name, Ink.Anchor.MIDDLE, false);
    }

    private void part(Sketch s, PathStep.Part part, double x, double y, double right) {
        double middle = (x + right) / 2;
        double start = middle - Symbols.LENGTH / 2;
        s.line(Pen.INK, x, y, start, y);
        boolean isEnd = part instanceof PathStep.Input;
        if (!isEnd) {
            s.line(Pen.INK, start + Symbols.LENGTH, y, right, y);
        }
        symbol(s, part, start, y);
        List<String> name = name(part);
        for (int i = 0; i < name.size(); i++) {
            s.letter(
                    middle,
                    y - 10.5 - LINE * (name.size() - 1 - i),
                    name.get(i),
                    part.id().value(),
                    Ink.Anchor.MIDDLE,
                    false);
        }
        s.letter(middle, y + 15.5, value(part), Ink.Anchor.MIDDLE);
    }

    private static void symbol(Sketch s, PathStep.Part part, double x, double y) {
        switch (part) {
            case PathStep.Fuse p -> Symbols.fuse(s, x, y);
            case PathStep.Wire p -> s.line(Pen.INK, x, y, x + Symbols.LENGTH, y);
            case PathStep.Switch p -> Symbols.switchContact(s, x, y);
            case PathStep.Coil p -> Symbols.coil(s, x, y);
            case PathStep.Contact p -> {
                if (p.closedWhenEnergised()) {
                    Symbols.switchContact(s, x, y);
                } else {
                    Symbols.breakContact(s, x, y);
                }
            }
            case PathStep.Lamp p -> Symbols.lamp(s, x, y);
            case PathStep.Load p -> {
                switch (p.kind()) {
                    case MOTOR -> Symbols.motor(s, x, y);
                    case SOLENOID -> Symbols.coil(s, x, y);
                    case HEATER -> Symbols.heater(s, x, y);
                    case ELECTRONIC -> Symbols.load(s, x, y);
                }
            }
            case PathStep.Resistor p -> Symbols.resistor(s, x, y);
            case PathStep.Diode p -> Symbols.diode(s, x, y, p.forwards());
            case PathStep.Input p -> Symbols.input(s, x, y);
        }
    }

    /** The name on at most two lines, broken at a hyphen where there is one. */
    private static List<String> name(PathStep.Part part) {
        String name = part.id().value();
        if (FontWidths.width(name, Sketch.TYPE, false) <= LONGEST_NAME) {
            return List.of(name);
        }
        int hyphen = name.indexOf('-', name.length() / 3);
        if (hyphen < 0) {
            return List.of(fitted(name));
        }
        return List.of(fitted(name.substring(0, hyphen + 1)), fitted(name.substring(hyphen + 1)));
    }

    private String value(PathStep.Part part) {
        return switch (part) {
            case PathStep.Fuse p -> figure(p.rating());
            case PathStep.Wire p -> "";
            case PathStep.Switch p -> fitted(String.join(", ", new TreeSet<>(p.closedAt())));
            case PathStep.Coil p -> words.of("schematic.relay-part", p.relay().value(), figure(p.resistance()));
            case PathStep.Contact p -> p.relay().value();
            case PathStep.Lamp p -> figure(p.power());
            case PathStep.Load p -> figure(p.resistance());
            case PathStep.Resistor p -> figure(p.resistance());
            case PathStep.Diode p -> "";
            case PathStep.Input p ->
                p.pullUp()
                        .map(r -> "↑ " + figure(r))
                        .or(() -> p.pullDown().map(r -> "↓ " + figure(r)))
                        .orElse("");
        };
    }

    /** A value; one that nobody stated is marked. */
    private static <Q extends Quantity> String figure(Figure<Q> figure) {
        return figure.typical() + (figure.isAssumed() ? " *" : "");
    }
}
