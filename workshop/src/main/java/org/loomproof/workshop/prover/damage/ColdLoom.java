package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Switch;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Ends;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Operated;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * The fitted loom measured dead: the battery off, the controller's plugs pulled, a meter on its ohm and diode range. What no
 * test of the living car shows, because a fuse or a diode has nothing to do there until something else goes wrong, this does.
 *
 * <p>The meter is a source of {@value #SOURCE_VOLTS} V behind {@value #SOURCE_OHMS} ohms, a milliampere into a short, as the
 * diode range of the usual hand-held meter gives (common practice, no published source).
 */
public final class ColdLoom {

    private static final double SOURCE_VOLTS = 2.5;

    private static final double SOURCE_OHMS = 2500;

    /** Above this share of its own volts the meter shows an open circuit. */
    private static final double OPEN_SHARE = 0.996;

    /** Two readings differ plainly by this factor and by this many ohms; common practice, no published source. */
    private static final double PLAIN_FACTOR = 2;

    private static final double PLAIN_OHMS = 0.5;

    /** Readings with the probes one way and the other that are this near are those of a resistance. */
    private static final double SAME_BOTH_WAYS = 0.02;

    private static final PartId METER = new PartId("cold meter");
    private static final Node RED = new Node("cold meter red");
    private static final Node BLACK = new Node("cold meter black");

    private final Brief brief;
    private final Plan plan;
    private final List<ColdPlace> places;
    private final List<double[]> planned;

    /** The two ends that the meter is put to. */
    private record ProbeEnds(Node one, Node other) {}

    /**
     * The loom as planned.
     *
     * @param fitted the vehicle with the plan carried out, every figure at its typical value
     */
    public ColdLoom(Brief brief, Plan plan, Vehicle fitted) {
        this.brief = brief;
        this.plan = plan;
        List<ColdPlace> all = new ArrayList<>();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                all.add(atPlug(plan, connect));
            }
        }
        for (AddedPart part : plan.parts()) {
            all.add(new ColdPlace.Across(part.id()));
            if (part instanceof AddedPart.Fuse) {
                all.add(new ColdPlace.FuseOut(part.id()));
            }
        }
        plan.wires().stream()
                .flatMap(wire -> Stream.of(wire.from(), wire.to()))
                .flatMap(end -> end instanceof End.OfPart(AddedPartId part, String terminal)
                        ? Stream.of(new ColdPlace.AtTerminal(part, terminal))
                        : Stream.empty())
                .distinct()
                .forEach(all::add);
        this.places = all.stream()
                .filter(place -> !ends(place, fitted.wired()).isEmpty())
                .toList();
        this.planned = read(fitted);
    }

    private ColdPlace atPlug(Plan plan, Hookup.Connect connect) {
        Set<OperableId> follows = Operated.by(brief.sheet(), plan, connect);
        Lead lead = brief.kit().lead(connect.lead());
        return new ColdPlace.AtPlug(
                lead.id(), Phrase.of("cold.at-plug", lead.id(), lead.plug(), lead.position()), follows);
    }

    /** One sign a place, in the plan's order: what the meter shows there with everything as planned and at rest. */
    public List<Sign.Cold> signs() {
        return IntStream.range(0, places.size())
                .mapToObj(place -> new Sign.Cold(places.get(place), expected(place)))
                .toList();
    }

    private List<Phrase> expected(int place) {
        ColdPlace there = places.get(place);
        double[] shown = planned.get(place);
        return switch (there) {
            case ColdPlace.Across across -> List.of(shown("cold.between", shown, 0));
            case ColdPlace.FuseOut out -> List.of(shown("cold.between", shown, 0));
            case ColdPlace.AtPlug plug -> toBodyAndPlus(shown);
            case ColdPlace.AtTerminal at -> toBodyAndPlus(shown);
        };
    }

    private static List<Phrase> toBodyAndPlus(double[] shown) {
        return List.of(shown("cold.to-body", shown, 0), shown("cold.to-plus", shown, 2));
    }

    private static Phrase shown(String key, double[] volts, int at) {
        double one = volts[at];
        double other = volts[at + 1];
        if (Double.isNaN(one) || Double.isNaN(other)) {
            return Phrase.of(key, Phrase.of("cold.unknown"));
        }
        boolean alike = Math.abs(one - other) <= SAME_BOTH_WAYS * Math.max(one, other);
        return Phrase.of(
                key,
                alike
                        ? ohmsOrOpen(one)
                        : Phrase.of(
                                "cold.one-way", voltsOrOpen(Math.min(one, other)), voltsOrOpen(Math.max(one, other))));
    }

    private static Phrase ohmsOrOpen(double volts) {
        return isOpen(volts) ? Phrase.of("cold.open") : Phrase.of("cold.ohms", new Ohms(ohms(volts)));
    }

    private static Phrase voltsOrOpen(double volts) {
        return isOpen(volts) ? Phrase.of("cold.open") : Phrase.of("cold.volts", new Volts(volts));
    }

    private static boolean isOpen(double volts) {
        return volts >= OPEN_SHARE * SOURCE_VOLTS;
    }

    /** The signs, by their places in {@link #signs()}, that at typical values plainly are others with the damage. */
    public BitSet differing(Damage damage) {
        List<double[]> now = read(damage.vehicle(brief));
        BitSet differing = new BitSet();
        for (int p = 0; p < places.size(); p++) {
            int readings = Math.min(now.get(p).length, planned.get(p).length); // none where the place is gone
            for (int k = 0; k < readings; k++) {
                if (isPlainly(now.get(p)[k], planned.get(p)[k])) {
                    differing.set(p);
                }
            }
        }
        return differing;
    }

    private static boolean isPlainly(double volts, double plannedVolts) {
        return plainlyBy(volts, plannedVolts) > 0;
    }

    /** By how much two readings differ more than is plain, as a share of that; the lesser of what factor and ohms say. */
    private static double plainlyBy(double volts, double plannedVolts) {
        if (Double.isNaN(volts) || Double.isNaN(plannedVolts) || (isOpen(volts) && isOpen(plannedVolts))) {
            return Double.NEGATIVE_INFINITY;
        }
        double now = ohms(volts);
        double before = ohms(plannedVolts);
        double more = Math.max(now, before);
        double less = Math.max(Math.min(now, before), 0);
        double byFactor = (more - PLAIN_FACTOR * less) / more;
        return Math.min((more - less - PLAIN_OHMS) / PLAIN_OHMS, more > 0 ? byFactor : Double.NEGATIVE_INFINITY);
    }

    /**
     * The same with ranged figures at their ends and the car cold or hot: what plainly is another reading than the one that stands
     * beside the test, and than the vehicle as planned would show there.
     *
     * @param variations each figure at either end
     */
    public BitSet surelyDiffering(Damage damage, Variations variations) {
        List<double[]> now = read(damage.vehicle(brief));
        List<Spot> spots = new ArrayList<>();
        for (int p = 0; p < places.size(); p++) {
            for (int k = 0; k < Math.min(now.get(p).length, planned.get(p).length); k++) {
                if (isPlainly(now.get(p)[k], planned.get(p)[k])) {
                    spots.add(new Spot(p, k, plainlyBy(now.get(p)[k], planned.get(p)[k])));
                }
            }
        }
        List<Integer> there = spots.stream().map(Spot::place).distinct().toList();
        Lasting lasting = new Lasting(variations.all(), new Ends(false), (corner, asked) -> {
            Probing damagedThere = new Probing(damage.vehicle(brief, corner));
            Probing plannedThere = new Probing(Vehicle.fitted(brief, plan, corner));
            Map<Integer, double[]> damagedReads = new HashMap<>();
            Map<Integer, double[]> plannedReads = new HashMap<>();
            for (int place : there) {
                damagedReads.put(place, damagedThere.read(places.get(place)));
                plannedReads.put(place, plannedThere.read(places.get(place)));
            }
            return asked.stream()
                    .map(spots::get)
                    .map(spot -> {
                        double shown = Objects.requireNonNull(damagedReads.get(spot.place()))[spot.reading()];
                        double right = Objects.requireNonNull(plannedReads.get(spot.place()))[spot.reading()];
                        return Math.min(
                                plainlyBy(shown, right), plainlyBy(shown, planned.get(spot.place())[spot.reading()]));
                    })
                    .toList();
        });
        BitSet surely = new BitSet();
        lasting.everywhere(spots.stream().map(Spot::plainlyBy).toList()).stream()
                .map(k -> spots.get(k).place())
                .forEach(surely::set);
        return surely;
    }

    /** One reading at a place that differs. */
    private record Spot(int place, int reading, double plainlyBy) {}

    /** What an ohm range would make of it. */
    private static double ohms(double volts) {
        double most = OPEN_SHARE * SOURCE_VOLTS;
        return SOURCE_OHMS * Math.min(volts, most) / (SOURCE_VOLTS - Math.min(volts, most));
    }

    /** For each place, volts at the meter: probes one way and the other, for each pair of ends and each thing operated. */
    private List<double[]> read(Vehicle vehicle) {
        Probing probing = new Probing(vehicle);
        return places.stream().map(probing::read).toList();
    }

    private List<SortedMap<OperableId, String>> positions(ColdPlace place) {
        List<SortedMap<OperableId, String>> all = new ArrayList<>(List.of(new TreeMap<>()));
        for (OperableId operable : place.follows()) {
            List<String> positions = brief.sheet().operable(operable).positions();
            positions.stream().skip(1).forEach(p -> all.add(new TreeMap<>(Map.of(operable, p))));
        }
        return all;
    }

    /** Nothing where the place is not in this vehicle. */
    private static List<ProbeEnds> ends(ColdPlace place, Wired wired) {
        return switch (place) {
            case ColdPlace.AtPlug plug ->
                toBodyAndPlus(wired, wired.controller().orElseThrow().leads().get(plug.lead()));
            case ColdPlace.AtTerminal at -> toBodyAndPlus(wired, VehicleWiring.terminal(at.part(), at.terminal()));
            case ColdPlace.Across across -> across(wired, across.part());
            case ColdPlace.FuseOut out -> across(wired, out.fuse());
        };
    }

    private static List<ProbeEnds> toBodyAndPlus(Wired wired, @Nullable Node at) {
        return at != null && wired.network().hasNode(at)
                ? List.of(new ProbeEnds(at, Node.CHASSIS), new ProbeEnds(at, wired.post()))
                : List.of();
    }

    private static List<ProbeEnds> across(Wired wired, AddedPartId part) {
        Reach reach = wired.added().parts().get(part);
        return reach == null ? List.of() : List.of(new ProbeEnds(reach.from(), reach.to()));
    }

    /** A vehicle with the meter in it, each probe on a switch of its own. */
    private final class Probing {

        private final Wired before;
        private final Vehicle vehicle;
        private final Workbench bench = new Workbench();

        Probing(Vehicle dead) {
            this.before = dead.wired();
            Set<Node> ends = new LinkedHashSet<>();
            for (ColdPlace place : places) {
                ends(place, before).forEach(pair -> {
                    ends.add(pair.one());
                    ends.add(pair.other());
                });
            }
            List<Part> meter = new ArrayList<>(List.of(new Battery(METER, RED, BLACK, SOURCE_VOLTS, SOURCE_OHMS)));
            for (Node end : ends) {
                meter.add(new Switch(probe(RED, end), RED, end, Setting.SHORT_OHMS));
                meter.add(new Switch(probe(BLACK, end), BLACK, end, Setting.SHORT_OHMS));
            }
            this.vehicle = dead.with(before.withMore(meter, Phrase.of("origin.meter")));
        }

        private PartId probe(Node colour, Node end) {
            return new PartId(colour + " at " + end);
        }

        double[] read(ColdPlace place) {
            List<Double> volts = new ArrayList<>();
            for (SortedMap<OperableId, String> positions : positions(place)) {
                Setting dead = out(place, dead(positions));
                for (ProbeEnds pair : ends(place, before)) {
                    volts.add(read(dead, pair.one(), pair.other()));
                    volts.add(read(dead, pair.other(), pair.one()));
                }
            }
            return volts.stream().mapToDouble(Double::doubleValue).toArray();
        }

        private Setting out(ColdPlace place, Setting dead) {
            return place instanceof ColdPlace.FuseOut(AddedPartId fuse)
                    ? dead.broken(Changes.network(before, fuse))
                    : dead;
        }

        private double read(Setting dead, Node red, Node black) {
            Setting probed = dead.closed(probe(RED, red)).closed(probe(BLACK, black));
            return bench.settled(vehicle.wired(), probed)
                    .map(point -> point.volts(RED, BLACK))
                    .orElse(Double.NaN);
        }

        /** The battery off, the plugs pulled. */
        private Setting dead(SortedMap<OperableId, String> positions) {
            Setting setting = vehicle.settings()
                    .atRest(SupplyPoint.REST, Condition.IDLE.state(), Condition.IDLE.feed(), Condition.IDLE.moment())
                    .broken(before.battery());
            for (var each : positions.entrySet()) {
                setting = vehicle.settings().moved(setting, each.getKey(), each.getValue());
            }
            ControllerParts controller = before.controller().orElseThrow();
            for (PartId each : controller.behindPlugs()) {
                setting = before.network().findPart(each).isPresent() ? setting.broken(each) : setting;
            }
            return setting;
        }
    }
}
