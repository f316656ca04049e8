package org.loomproof.papers.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.time.TimeEvent;
import org.loomproof.network.time.Trace;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.svg.SvgDrawing;

/**
 * A run in time as a picture: the voltages of some nodes above, the currents through some parts below, under both what
 * relays, outputs and inputs did.
 */
public final class TracePlot {
    /** Moments looked at beside those the run itself computed. */
    private static final int GRID = 600;

    private final Trace trace;
    private final Wording wording;

    private TracePlot(Trace trace, Wording wording) {
        this.trace = trace;
        this.wording = wording;
    }

    /**
     * The plot as an {@code svg} element.
     *
     * @param title what it shows
     * @param nodes whose voltages are drawn
     * @param parts whose currents into their first pin are drawn
     */
    public static Element of(Trace trace, String title, List<Node> nodes, List<PartId> parts, Wording wording) {
        return new TracePlot(trace, wording).drawn(title, nodes, parts);
    }

    private Element drawn(String title, List<Node> nodes, List<PartId> parts) {
        List<Panel> panels = new ArrayList<>();
        if (!nodes.isEmpty()) {
            panels.add(new Panel(
                    wording.of("plot.volts"),
                    nodes.stream()
                            .map(node -> curve(node.name(), t -> trace.volts(node, t)))
                            .toList()));
        }
        if (!parts.isEmpty()) {
            panels.add(new Panel(
                    wording.of("plot.amps"),
                    parts.stream()
                            .map(part -> curve(part.name(), t -> trace.amps(part, t)))
                            .toList()));
        }
        List<Double> marks = trace.events().stream()
                .filter(event -> event instanceof TimeEvent.SettingChanged || event instanceof TimeEvent.FuseOpened)
                .map(TimeEvent::seconds)
                .distinct()
                .toList();
        return SvgDrawing.of(new PlotSheet(title, trace.seconds(), wording).drawn(panels, lanes(), marks), title);
    }

    /** Every moment computed, the moment just before each jump, and a grid in between. */
    private Panel.Curve curve(String name, DoubleUnaryOperator values) {
        double end = trace.seconds();
        DoubleStream computed = trace.moments().stream().mapToDouble(t -> t);
        DoubleStream before = trace.jumps().stream().filter(t -> t > 0).mapToDouble(t -> Math.max(0, Math.nextDown(t)));
        DoubleStream grid = IntStream.rangeClosed(0, GRID).mapToDouble(k -> end * k / GRID);
        double[] seconds = DoubleStream.concat(computed, DoubleStream.concat(before, grid))
                .sorted()
                .distinct()
                .toArray();
        return new Panel.Curve(
                name, seconds, DoubleStream.of(seconds).map(values).toArray());
    }

    private List<Lane> lanes() {
        List<Lane> lanes = new ArrayList<>();
        for (Part part : trace.network().parts()) {
            lane(part).ifPresent(lanes::add);
        }
        return lanes;
    }

    private Optional<Lane> lane(Part part) {
        return switch (part) {
            case Relay relay
            when !relay.contacts().isEmpty() ->
                Optional.of(spans(
                        wording.of("plot.contacts", relay.id()),
                        relay.id(),
                        t -> trace.relayPosition(relay.id(), t) == RelayPosition.PULLED_IN ? 1 : 0));
            case LowSideOutput output ->
                moved(spans(wording.of("plot.awake", output.id()), output.id(), awake(output.id())));
            case HighSideOutput output ->
                moved(spans(wording.of("plot.awake", output.id()), output.id(), awake(output.id())));
            case LogicInput input -> Optional.of(readings(input));
            default -> Optional.empty();
        };
    }

    private DoubleUnaryOperator awake(PartId output) {
        return t -> trace.isAwake(output, t) ? 1 : 0;
    }

    /** Outputs that are awake throughout need no room. */
    private static Optional<Lane> moved(Lane lane) {
        return Optional.of(lane).filter(l -> l.spans().size() > 1);
    }

    private Lane spans(String name, PartId id, DoubleUnaryOperator height) {
        List<Double> changes = trace.events().stream()
                .filter(event -> switch (event) {
                    case TimeEvent.ContactsMoved moved -> moved.relay().equals(id);
                    case TimeEvent.Woke woke -> woke.output().equals(id);
                    default -> false;
                })
                .map(TimeEvent::seconds)
                .toList();
        return new Lane(name, spans(changes, height));
    }

    private List<Lane.Span> spans(List<Double> changes, DoubleUnaryOperator height) {
        List<Lane.Span> spans = new ArrayList<>();
        double from = 0;
        for (double change : changes) {
            if (change > from) {
                spans.add(new Lane.Span(from, change, height.applyAsDouble(from)));
                from = change;
            }
        }
        spans.add(new Lane.Span(from, trace.seconds(), height.applyAsDouble(from)));
        return spans;
    }

    private Lane readings(LogicInput input) {
        List<TimeEvent.Reads> reads = trace.events().stream()
                .filter(TimeEvent.Reads.class::isInstance)
                .map(TimeEvent.Reads.class::cast)
                .filter(event -> event.input().equals(input.id()))
                .toList();
        return new Lane(
                wording.of("plot.reads", input.id()),
                spans(reads.stream().map(TimeEvent.Reads::seconds).toList(), t -> {
                    double height = 0;
                    for (TimeEvent.Reads each : reads) {
                        if (each.seconds() <= t) {
                            height = switch (each.level()) {
                                case LOW -> 0;
                                case BETWEEN -> 0.5;
                                case HIGH -> 1;
                            };
                        }
                    }
                    return height;
                }));
    }
}
