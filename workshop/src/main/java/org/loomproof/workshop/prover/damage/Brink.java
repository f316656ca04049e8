package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Wakefulness;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;

/**
 * Where contacts of an area, or its controller's waking, may stand otherwise at the ends of ranged figures or in a car that is cold
 * or hot than they do at typical values: a coil, or the controller, has volts there that lie between the least at which it lets
 * go and the most at which it pulls in, or close to that. Everywhere else contacts stand as they do at typical values, and volts
 * and amps move with a figure without a jump.
 */
final class Brink {

    /** How much the volts of a coil may themselves be moved by the same figures. */
    private static final double MOVED_FACTOR = 1.25;

    /** How much those of the controller may. */
    private static final double MOVED_VOLTS = 0.75;

    /** Between which volts a coil, or the controller, may stand either way. */
    private record Band(double low, double high) {
        Band or(Band other) {
            return new Band(Math.min(low, other.low), Math.max(high, other.high));
        }
    }

    private final List<Corner> corners;
    private final Map<PartId, Band> coils = new HashMap<>();
    private final Map<PartId, Band> waking = new HashMap<>();

    private Brink(List<Corner> corners) {
        this.corners = List.copyOf(corners);
    }

    static Brink of(AsPlanned job, Area area) {
        Vehicle stock = job.stock().restrictedTo(area);
        Vehicle fitted = job.fitted().restrictedTo(area);
        Set<String> figures = new LinkedHashSet<>();
        for (Variations.Variation each : job.variations().within(area)) {
            String key = each.figure().key();
            if (!key.equals(Warmth.KEY)
                    && (movesContacts(stock, each.stock()) || movesContacts(fitted, each.fitted()))) {
                figures.add(key);
            }
        }
        Set<Corner> corners = new LinkedHashSet<>();
        for (Corner.Taken taken : List.of(Corner.Taken.LOW, Corner.Taken.HIGH)) {
            Corner all = Corner.TYPICAL;
            for (String figure : figures) {
                all = all.with(figure, taken);
            }
            for (Corner end : Warmth.ends()) {
                corners.add(end.and(all));
            }
        }
        boolean nothingMoves = bands(stock.wired().network()).isEmpty()
                && bands(fitted.wired().network()).isEmpty();
        Brink brink = new Brink(nothingMoves ? List.of() : List.copyOf(corners));
        brink.add(stock);
        brink.add(fitted);
        for (Corner corner : corners) {
            AsPlanned there = job.at(corner);
            brink.add(there.stock().restrictedTo(area));
            brink.add(there.fitted().restrictedTo(area));
        }
        return brink;
    }

    private static boolean movesContacts(Vehicle typical, Vehicle moved) {
        return !bands(typical.wired().network()).equals(bands(moved.wired().network()))
                || !coilOhms(typical).equals(coilOhms(moved));
    }

    private static Map<PartId, Double> coilOhms(Vehicle vehicle) {
        Map<PartId, Double> ohms = new HashMap<>();
        for (Part part : vehicle.wired().network().parts()) {
            if (part instanceof Relay relay) {
                ohms.put(relay.id(), relay.coilOhms());
            }
        }
        return ohms;
    }

    private static Map<PartId, Band> bands(Network network) {
        Map<PartId, Band> bands = new HashMap<>();
        for (Part part : network.parts()) {
            if (part instanceof Relay relay) {
                bands.put(relay.id(), new Band(relay.dropOutVolts(), relay.pullInVolts()));
            } else if (part instanceof LowSideOutput output) {
                bands.put(output.id(), band(output.wakefulness()));
            } else if (part instanceof HighSideOutput output) {
                bands.put(output.id(), band(output.wakefulness()));
            }
        }
        return bands;
    }

    private static Band band(Wakefulness wakefulness) {
        return new Band(wakefulness.sleepsAtVolts(), wakefulness.wakesAtVolts());
    }

    private void add(Vehicle vehicle) {
        Network network = vehicle.wired().network();
        bands(network)
                .forEach((part, band) ->
                        (network.part(part) instanceof Relay ? coils : waking).merge(part, band, Band::or));
    }

    /** The ends at which contacts are looked at: figures that move them all low and all high, in the cold and in the heat. */
    List<Corner> corners() {
        return corners;
    }

    /** What of a vehicle's network may stand otherwise, found once. */
    Gauge of(Vehicle vehicle) {
        List<Coil> there = new ArrayList<>();
        List<Life> life = new ArrayList<>();
        for (Part part : vehicle.wired().network().parts()) {
            Band coil = coils.get(part.id());
            Band wake = waking.get(part.id());
            if (part instanceof Relay relay && coil != null) {
                there.add(new Coil(relay.coilPlus(), relay.coilMinus(), coil));
            } else if (part instanceof LowSideOutput output && wake != null && life.isEmpty()) {
                life.add(new Life(output.supply(), output.ground(), wake));
            } else if (part instanceof HighSideOutput output && wake != null && life.isEmpty()) {
                life.add(new Life(output.supply(), output.ground(), wake));
            }
        }
        return new Gauge(there, life);
    }

    private record Coil(Node plus, Node minus, Band band) {
        boolean isNear(OperatingPoint point) {
            double volts = Math.abs(point.volts(plus, minus));
            return volts > band.low() / MOVED_FACTOR && volts < band.high() * MOVED_FACTOR;
        }
    }

    private record Life(Node supply, Node ground, Band band) {
        boolean isNear(OperatingPoint point) {
            double volts = point.volts(supply, ground);
            return volts > band.low() - MOVED_VOLTS && volts < band.high() + MOVED_VOLTS;
        }
    }

    /** Reads one vehicle's points of rest. */
    static final class Gauge {
        private final List<Coil> coils;
        private final List<Life> life;

        private Gauge(List<Coil> coils, List<Life> life) {
            this.coils = coils;
            this.life = life;
        }

        /** Whether at one of these points of rest, at typical values, something is close to standing otherwise. */
        boolean isNear(Answers answers) {
            return !(answers instanceof Answers.AtRest(List<OperatingPoint> points))
                    || points.stream().anyMatch(this::isNear);
        }

        private boolean isNear(OperatingPoint point) {
            for (Coil coil : coils) {
                if (coil.isNear(point)) {
                    return true;
                }
            }
            for (Life each : life) {
                if (each.isNear(point)) {
                    return true;
                }
            }
            return false;
        }
    }
}
