package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * What flows in a factory wire when somebody joins it to the body or to the supply, reckoned with pencil and paper: the least
 * resistance each part may have, the highest supply, and each way to the other pole taken by itself. Ways that share a
 * stretch are counted as if they did not, so the result is never too small.
 */
public final class WireDraw {

    /** More ways than this to a pole are not followed; the wires this trade joins have a handful. */
    private static final int MOST_WAYS = 200;

    /** A diode or a closed contact of no stated resistance still has some. Common practice, no published source. */
    private static final double LEAST_OHMS = 0.001;

    /** A filament lamp is reckoned at the voltage its power is printed for. */
    private static final double LAMP_VOLTS = 12;

    private static final String SUPPLY = "supply";
    private static final String GROUND = "ground";

    /** Which way current may run through an edge, seen along the walk. */
    private enum Passes {
        BOTH_WAYS,
        ALONG,
        AGAINST
    }

    private record Edge(String to, double ohms, boolean closedAtRest, Passes passes) {}

    private final Map<String, List<Edge>> edges = new LinkedHashMap<>();

    /** The wires of a sheet. */
    public WireDraw(Sheet sheet) {
        for (Circuit circuit : sheet.circuits()) {
            for (int i = 0; i < circuit.paths().size(); i++) {
                lay(sheet, circuit, i);
            }
        }
    }

    /** What flows from the circuit's wire into the body when it is joined to the body, everything at rest. */
    public Amps intoBody(Circuit circuit) {
        return throughWays(here(circuit), SUPPLY, true);
    }

    /** What flows into the circuit's wire when it is joined to the supply, everything at rest. */
    public Amps fromSupply(Circuit circuit) {
        return throughWays(here(circuit), GROUND, true);
    }

    /** What the circuit's wire carries while the circuit does its work: its feed in series with what it feeds. */
    public Amps atWork(Circuit circuit) {
        double volts = SupplyPoint.HIGH.volts().value();
        double load = volts / throughWays(here(circuit), GROUND, true).value();
        double feed = ways(here(circuit), SUPPLY, false).stream()
                .mapToDouble(d -> d)
                .min()
                .orElse(0);
        return Double.isFinite(load) ? new Amps(volts / (load + feed)) : new Amps(0);
    }

    /** True when the side that a path lists before the wire leads to the supply and not the side after it. */
    public boolean isFedFromBefore(Circuit circuit) {
        for (List<PathStep> path : circuit.paths()) {
            int here = path.indexOf(new PathStep.Here());
            if (here >= 0) {
                return !path.subList(here, path.size()).contains(new PathStep.Supply());
            }
        }
        return true;
    }

    private Amps throughWays(String from, String to, boolean atRest) {
        double siemens =
                ways(from, to, atRest).stream().mapToDouble(ohms -> 1 / ohms).sum();
        return new Amps(SupplyPoint.HIGH.volts().value() * siemens);
    }

    private List<Double> ways(String from, String to, boolean atRest) {
        List<Double> found = new ArrayList<>();
        Set<String> seen = new HashSet<>(Set.of(SUPPLY, GROUND, from));
        seen.remove(to);
        walk(from, to, atRest, 0, seen, found);
        return found;
    }

    private void walk(String at, String to, boolean atRest, double ohms, Set<String> seen, List<Double> found) {
        if (found.size() >= MOST_WAYS) {
            return;
        }
        if (at.equals(to)) {
            found.add(Math.max(ohms, LEAST_OHMS));
            return;
        }
        for (Edge edge : edges.getOrDefault(at, List.of())) {
            // Current runs from the supply to the body: along a walk to the body, against a walk to the supply.
            Passes barred = to.equals(GROUND) ? Passes.AGAINST : Passes.ALONG;
            if ((edge.closedAtRest() || !atRest) && edge.passes() != barred && seen.add(edge.to())) {
                walk(edge.to(), to, atRest, ohms + edge.ohms(), seen, found);
                seen.remove(edge.to());
            }
        }
    }

    private static String here(Circuit circuit) {
        return "here " + circuit.id();
    }

    private void lay(Sheet sheet, Circuit circuit, int number) {
        String at = "";
        List<PathStep> path = circuit.paths().get(number);
        for (int i = 0; i < path.size(); i++) {
            switch (path.get(i)) {
                case PathStep.Supply() -> at = placeAfter(at, SUPPLY);
                case PathStep.Ground() -> at = placeAfter(at, GROUND);
                case PathStep.Point(var id) -> at = placeAfter(at, "point " + id);
                case PathStep.Here() -> at = placeAfter(at, here(circuit));
                case PathStep.Part part -> {
                    String next = nameAfter(circuit, path, number, i);
                    layPart(sheet, part, at, next);
                    at = next;
                }
            }
        }
    }

    /** Two places that stand next to each other are one. */
    private String placeAfter(String at, String place) {
        if (!at.isEmpty() && !at.equals(place)) {
            both(at, place, 0, true);
        }
        return place;
    }

    private static String nameAfter(Circuit circuit, List<PathStep> path, int number, int i) {
        PathStep next = i + 1 < path.size() ? path.get(i + 1) : path.get(i);
        return switch (next) {
            case PathStep.Supply() -> SUPPLY;
            case PathStep.Ground() -> GROUND;
            case PathStep.Point(var id) -> "point " + id;
            case PathStep.Here() -> here(circuit);
            case PathStep.Part part -> circuit.id() + " " + number + " " + i;
        };
    }

    private void layPart(Sheet sheet, PathStep.Part part, String a, String b) {
        switch (part) {
            case PathStep.Fuse fuse -> both(a, b, fuse.coldResistance().low().value(), true);
            case PathStep.Wire wire -> both(a, b, wire.resistance().low().value(), true);
            case PathStep.Switch contact ->
                both(a, b, contact.closedResistance().low().value(), isClosedAtRest(sheet, contact));
            case PathStep.Coil coil -> both(a, b, coil.resistance().low().value(), true);
            case PathStep.Contact contact ->
                both(a, b, contact.closedResistance().low().value(), !contact.closedWhenEnergised());
            case PathStep.Lamp lamp ->
                both(a, b, LAMP_VOLTS * LAMP_VOLTS / lamp.power().high().value(), true);
            case PathStep.Load load -> both(a, b, load.resistance().low().value(), true);
            case PathStep.Resistor resistor ->
                both(a, b, resistor.resistance().low().value(), true);
            case PathStep.Diode diode -> {
                add(a, new Edge(b, LEAST_OHMS, true, diode.forwards() ? Passes.ALONG : Passes.AGAINST));
                add(b, new Edge(a, LEAST_OHMS, true, diode.forwards() ? Passes.AGAINST : Passes.ALONG));
            }
            case PathStep.Input input -> {
                input.pullUp().ifPresent(r -> both(a, SUPPLY, r.low().value(), true));
                input.pullDown().ifPresent(r -> both(a, GROUND, r.low().value(), true));
            }
        }
    }

    private static boolean isClosedAtRest(Sheet sheet, PathStep.Switch contact) {
        return contact.closedAt().contains(sheet.operable(contact.operatedBy()).rest());
    }

    private void both(String a, String b, double ohms, boolean closedAtRest) {
        add(a, new Edge(b, ohms, closedAtRest, Passes.BOTH_WAYS));
        add(b, new Edge(a, ohms, closedAtRest, Passes.BOTH_WAYS));
    }

    private void add(String from, Edge edge) {
        edges.computeIfAbsent(from, k -> new ArrayList<>()).add(edge);
    }
}
