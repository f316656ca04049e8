package org.loomproof.papers.plot;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Point;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;

/** Lays panels and lanes out under each other over one scale of time. */
final class PlotSheet {
    private static final double WIDTH = 560;
    private static final double LEFT = 92;
    private static final double RIGHT = 96;
    private static final double TOP = 34;
    private static final double PANEL_HEIGHT = 150;
    private static final double GAP = 14;
    private static final double LANE_HEIGHT = 9;
    private static final double LANE_PITCH = 15;
    private static final double LABEL_PITCH = 9;

    /** Points closer than this on paper are one. */
    private static final double FINEST = 0.15;

    /**
     * Told apart by those who see red and green alike too: M. Okabe and K. Ito's set of colours, without the two too pale for
     * lines on white. Beyond them the same ones dashed.
     */
    private static final List<String> COLOURS =
            List.of("#0072b2", "#d55e00", "#009e73", "#cc79a7", "#7a5200", "#444444");

    private static final Pen FRAME = new Pen("#5c6670", Optional.empty(), 0.6, false, false);
    private static final Pen GRID = new Pen("#dde2e6", Optional.empty(), 0.4, false, false);
    private static final Pen ZERO = new Pen("#9aa4ad", Optional.empty(), 0.5, false, false);
    private static final Pen MARK = new Pen("#9aa4ad", Optional.empty(), 0.5, true, false);
    private static final Pen EDGE = new Pen("#17202a", Optional.empty(), 0.4, false, false);
    private static final String MOVED = "#8fb8d6";

    private final String title;
    private final double end;
    private final Wording wording;
    private final Sketch sketch = new Sketch();
    private final List<Ink> curves = new ArrayList<>();
    private final TimeUnit unit;
    private final Axis time;

    private enum TimeUnit {
        SECONDS(1),
        MILLISECONDS(1e3),
        MICROSECONDS(1e6);

        final double perSecond;

        TimeUnit(double perSecond) {
            this.perSecond = perSecond;
        }

        static TimeUnit of(double end) {
            return end >= 2 ? SECONDS : end >= 2e-3 ? MILLISECONDS : MICROSECONDS;
        }
    }

    PlotSheet(String title, double end, Wording wording) {
        this.title = title;
        this.end = end;
        this.wording = wording;
        unit = TimeUnit.of(end);
        time = Axis.exact(0, end * unit.perSecond, 10);
    }

    PlacedDrawing drawn(List<Panel> panels, List<Lane> lanes, List<Double> marks) {
        double y = TOP;
        double bottom = TOP + panels.size() * (PANEL_HEIGHT + GAP) + lanes.size() * LANE_PITCH;
        sketch.letter(
                LEFT,
                20,
                FontWidths.fitted(title, WIDTH - LEFT - 10, Sketch.TYPE, true),
                title,
                Ink.Anchor.START,
                true);
        for (double tick : time.ticks()) {
            double x = x(tick / unit.perSecond);
            sketch.line(GRID, x, TOP, x, bottom);
            sketch.letter(x, bottom + 10, number(tick, time.decimals()), Ink.Anchor.MIDDLE);
        }
        sketch.letter(
                (LEFT + WIDTH - RIGHT) / 2,
                bottom + 21,
                switch (unit) {
                    case SECONDS -> wording.of("plot.seconds");
                    case MILLISECONDS -> wording.of("plot.milliseconds");
                    case MICROSECONDS -> wording.of("plot.microseconds");
                },
                Ink.Anchor.MIDDLE);
        for (double mark : marks) {
            sketch.line(MARK, x(mark), TOP, x(mark), bottom);
        }
        for (Panel panel : panels) {
            panel(panel, y);
            y += PANEL_HEIGHT + GAP;
        }
        for (Lane lane : lanes) {
            lane(lane, y);
            y += LANE_PITCH;
        }
        List<Ink> all = new ArrayList<>(sketch.ink());
        all.addAll(curves);
        return new PlacedDrawing(WIDTH, bottom + 30, List.of(), List.of(), all);
    }

    private double x(double seconds) {
        return LEFT + (WIDTH - LEFT - RIGHT) * seconds / end;
    }

    private void panel(Panel panel, double top) {
        Axis axis = panel.axis(6);
        double bottom = top + PANEL_HEIGHT;
        for (double tick : axis.ticks()) {
            double y = bottom - PANEL_HEIGHT * axis.share(tick);
            sketch.line(tick == 0 ? ZERO : GRID, LEFT, y, WIDTH - RIGHT, y);
            sketch.letter(LEFT - 4, y + 2.5, number(tick, axis.decimals()), Ink.Anchor.END);
        }
        sketch.letter(LEFT - 34, top + PANEL_HEIGHT / 2 + 2.5, panel.unit(), Ink.Anchor.END);
        sketch.outline(FRAME, LEFT, top, WIDTH - RIGHT, top, WIDTH - RIGHT, bottom, LEFT, bottom);
        for (int k = 0; k < panel.curves().size(); k++) {
            curves.add(new Ink.Line(line(panel.curves().get(k), axis, bottom), pen(k)));
        }
        labels(panel, axis, top);
    }

    private static Pen pen(int k) {
        return new Pen(COLOURS.get(k % COLOURS.size()), Optional.empty(), 1.1, k / COLOURS.size() % 2 == 1, false);
    }

    private List<Point> line(Panel.Curve curve, Axis axis, double bottom) {
        List<Point> points = new ArrayList<>();
        Point last = new Point(Double.NEGATIVE_INFINITY, 0);
        for (int k = 0; k < curve.seconds().length; k++) {
            Point point = new Point(x(curve.seconds()[k]), bottom - PANEL_HEIGHT * axis.share(curve.values()[k]));
            boolean far = Math.abs(point.x() - last.x()) > FINEST || Math.abs(point.y() - last.y()) > FINEST;
            if (far || k == curve.seconds().length - 1) {
                points.add(point);
                last = point;
            }
        }
        return points;
    }

    /** Each curve's name to its right, at its end's height as far as there is room, with a piece of its line. */
    private void labels(Panel panel, Axis axis, double top) {
        record Label(int curve, double wanted) {}
        List<Label> labels = new ArrayList<>();
        for (int k = 0; k < panel.curves().size(); k++) {
            double[] values = panel.curves().get(k).values();
            labels.add(new Label(k, top + PANEL_HEIGHT * (1 - axis.share(values[values.length - 1]))));
        }
        labels.sort(Comparator.comparingDouble(Label::wanted));
        double room = top + PANEL_HEIGHT - (labels.size() - 1) * LABEL_PITCH;
        double least = top;
        for (Label label : labels) {
            double y = Math.max(least, Math.min(label.wanted(), room));
            String name = panel.curves().get(label.curve()).name();
            double left = WIDTH - RIGHT + 6;
            sketch.line(pen(label.curve()), left, y, left + 12, y);
            sketch.letter(
                    left + 15,
                    y + 2.5,
                    FontWidths.fittedName(name, RIGHT - 24, Sketch.TYPE),
                    name,
                    Ink.Anchor.START,
                    false);
            least = y + LABEL_PITCH;
            room += LABEL_PITCH;
        }
    }

    private void lane(Lane lane, double top) {
        double bottom = top + LANE_HEIGHT;
        sketch.letter(
                LEFT - 4,
                bottom - 2,
                FontWidths.fittedName(lane.name(), LEFT - 8, Sketch.TYPE),
                lane.name(),
                Ink.Anchor.END,
                false);
        sketch.line(ZERO, LEFT, bottom, WIDTH - RIGHT, bottom);
        for (Lane.Span span : lane.spans()) {
            if (span.height() > 0) {
                double height = LANE_HEIGHT * span.height();
                sketch.rectangle(EDGE, MOVED, x(span.from()), bottom - height, x(span.to()) - x(span.from()), height);
            }
        }
    }

    private String number(double value, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(wording.messages().locale());
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(value == 0 ? 0 : value);
    }
}
