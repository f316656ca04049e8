package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.svg.SvgDrawing;

/** Draws what {@link SweepTimer} printed: cost of a setting against nodes and against curved parts, least to most about the median. */
final class CostPlot {
    private static final Pattern LINE = Pattern.compile(
            "tree of (?<nodes>\\d+)(?: nodes| with (?<curved>\\d+) curved), walk\\s+(?<least>[\\d.]+) / (?<middle>[\\d.]+) / (?<most>[\\d.]+) us.*");
    private static final double WIDTH = 560;
    private static final double TOP = 40;
    private static final double HEIGHT = 180;
    private static final double PANEL = 210;
    private static final Pen GRID = new Pen("#dde2e6", Optional.empty(), 0.4, false, false);
    private static final Pen FRAME = new Pen("#5c6670", Optional.empty(), 0.6, false, false);
    private static final Pen CURVE = new Pen("#0072b2", Optional.empty(), 1.2, false, false);
    private static final Pen SPREAD = new Pen("#0072b2", Optional.empty(), 0.7, false, false);
    private static final Pen PROPORTION = new Pen("#7a5200", Optional.empty(), 0.6, true, false);

    private final Sketch sketch = new Sketch();

    /** One line of the result. */
    private record Cost(double at, double least, double middle, double most) {}

    /** A scale: where a value lies, 0 to 1, and what is written along it. */
    private record Scale(boolean logarithmic, double low, double high, List<Double> ticks) {
        double share(double value) {
            return logarithmic ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
        }
    }

    private CostPlot() {}

    /** Arguments: the result, the picture. */
    public static void main(String[] arguments) throws IOException {
        List<Cost> ofNodes = new ArrayList<>();
        List<Cost> ofCurved = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of(arguments[0]))) {
            Matcher found = LINE.matcher(line);
            if (found.matches()) {
                boolean curved = found.group("curved") != null;
                (curved ? ofCurved : ofNodes)
                        .add(new Cost(
                                number(found, curved ? "curved" : "nodes"),
                                number(found, "least"),
                                number(found, "middle"),
                                number(found, "most")));
            }
        }
        if (ofNodes.isEmpty() || ofCurved.isEmpty()) {
            throw new IllegalArgumentException(arguments[0] + " holds no costs of trees");
        }
        String title = "Cost of a setting in a sweep";
        PlacedDrawing drawn = new CostPlot().drawn(ofNodes, ofCurved);
        Files.writeString(Path.of(arguments[1]), MarkupWriter.xml(SvgDrawing.of(drawn, title)));
    }

    private static double number(Matcher found, String group) {
        return Double.parseDouble(found.group(group));
    }

    private PlacedDrawing drawn(List<Cost> ofNodes, List<Cost> ofCurved) {
        sketch.letter(
                46,
                16,
                "Microseconds a setting, one thread: median, and least to most of the rounds",
                Ink.Anchor.START);
        double dearest = ofNodes.stream().mapToDouble(Cost::most).max().orElse(1);
        List<Double> decades = new ArrayList<>(List.of(1.0, 10.0, 100.0));
        if (dearest > 100) {
            decades.add(1000.0);
        }
        Scale micros = new Scale(true, 1, decades.getLast(), decades);
        panel(46, "nodes (tree)", new Scale(true, 10, 2000, List.of(20.0, 80.0, 300.0, 1000.0)), micros, ofNodes);
        double most = ofCurved.stream().mapToDouble(Cost::most).max().orElse(1);
        double step = most > 40 ? 20 : most > 16 ? 10 : 4;
        List<Double> ticks = new ArrayList<>();
        for (double tick = 0; tick < most + step; tick += step) {
            ticks.add(tick);
        }
        Scale straight = new Scale(false, 0, ticks.getLast(), ticks);
        Scale curved = new Scale(false, 0, 100, List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0));
        panel(322, "curved parts (diodes, lamps, outputs) among 290 nodes", curved, straight, ofCurved);
        return new PlacedDrawing(WIDTH, TOP + HEIGHT + 34, List.of(), List.of(), sketch.ink());
    }

    private void panel(double left, String name, Scale across, Scale up, List<Cost> costs) {
        double bottom = TOP + HEIGHT;
        for (double tick : across.ticks()) {
            double x = left + PANEL * across.share(tick);
            sketch.line(GRID, x, TOP, x, bottom);
            sketch.letter(x, bottom + 10, whole(tick), Ink.Anchor.MIDDLE);
        }
        for (double tick : up.ticks()) {
            double y = bottom - HEIGHT * up.share(tick);
            sketch.line(GRID, left, y, left + PANEL, y);
            sketch.letter(left - 4, y + 2.5, whole(tick), Ink.Anchor.END);
        }
        sketch.letter(left + PANEL / 2, bottom + 23, name, Ink.Anchor.MIDDLE);
        sketch.outline(FRAME, left, TOP, left + PANEL, TOP, left + PANEL, bottom, left, bottom);
        if (across.logarithmic()) {
            proportional(left, across, up, costs.getLast());
        }
        double[] points = new double[2 * costs.size()];
        for (int k = 0; k < costs.size(); k++) {
            Cost cost = costs.get(k);
            double x = left + PANEL * across.share(cost.at());
            points[2 * k] = x;
            points[2 * k + 1] = bottom - HEIGHT * up.share(cost.middle());
            double low = bottom - HEIGHT * up.share(cost.least());
            double high = bottom - HEIGHT * up.share(cost.most());
            sketch.line(SPREAD, x, low, x, high);
            sketch.line(SPREAD, x - 3, low, x + 3, low);
            sketch.line(SPREAD, x - 3, high, x + 3, high);
            sketch.letter(
                    x - 5, points[2 * k + 1] - 6, String.format(Locale.ROOT, "%.1f", cost.middle()), Ink.Anchor.END);
        }
        sketch.line(CURVE, points);
    }

    /** What the cost would be if it went as the number of nodes, through the last point. */
    private void proportional(double left, Scale across, Scale up, Cost last) {
        double first = last.middle() / last.at() * across.ticks().getFirst();
        double from = Math.max(first, up.low());
        double at = across.ticks().getFirst() * from / first;
        double bottom = TOP + HEIGHT;
        double x = left + PANEL * across.share(at);
        double y = bottom - HEIGHT * up.share(from);
        sketch.line(
                PROPORTION, x, y, left + PANEL * across.share(last.at()), bottom - HEIGHT * up.share(last.middle()));
        double middle = Math.sqrt(from * last.middle());
        double beside = left + PANEL * across.share(Math.sqrt(at * last.at()));
        sketch.letter(beside + 6, bottom - HEIGHT * up.share(middle) + 10, "in proportion to nodes", Ink.Anchor.START);
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
