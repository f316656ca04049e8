package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Phrase;

/** The way by which most of a part's current comes from the battery and goes back to it. */
public final class CurrentPath {

    private final Reading reading;

    private CurrentPath(Reading reading) {
        this.reading = reading;
    }

    /** The parts on the way through a part, from the battery's plus to its minus, in words; wires that were added included. */
    public static List<Phrase> through(Reading reading, PartId part) {
        return new CurrentPath(reading).through(part);
    }

    /** The same as something to be seen: the way, and the amps that go by it. */
    public static Observation observed(Reading reading, PartId part) {
        String amps = Figures.withUnit(Math.abs(reading.point().amps(part)), "A");
        return new Observation(Phrase.of("meter.path", through(reading, part)), amps);
    }

    private List<Phrase> through(PartId start) {
        List<PartId> path = new ArrayList<>(List.of(start));
        Set<PartId> seen = new HashSet<>(path);
        Part part = reading.wired().network().part(start);
        boolean forwards = reading.point().amps(start) >= 0;
        Node in = part.pins().get(forwards ? 0 : 1).node();
        Node out = part.pins().get(forwards ? 1 : 0).node();
        follow(in, -1, seen).forEach(id -> path.addFirst(id));
        path.addAll(follow(out, 1, seen));
        return path.stream().map(reading::words).distinct().toList();
    }

    /** From a node on along the largest current: with it for a sign of one, against it for minus one. */
    private List<PartId> follow(Node from, int sign, Set<PartId> seen) {
        List<PartId> path = new ArrayList<>();
        Optional<Step> next = next(from, sign, seen);
        while (next.isPresent()) {
            path.add(next.get().part());
            seen.add(next.get().part());
            next = next(next.get().to(), sign, seen);
        }
        return path;
    }

    private record Step(PartId part, double amps, Node to) {}

    private Optional<Step> next(Node at, int sign, Set<PartId> seen) {
        if (at.equals(Node.CHASSIS) || at.equals(reading.wired().post())) {
            return Optional.empty();
        }
        Step best = null;
        for (Part part : reading.wired().network().parts()) {
            for (Pin pin : seen.contains(part.id()) ? List.<Pin>of() : part.pins()) {
                double amps = pin.node().equals(at) ? sign * reading.point().ampsInto(part.id(), pin.name()) : 0;
                if (amps > 0 && (best == null || amps > best.amps())) {
                    best = new Step(part.id(), amps, otherEnd(part, pin, sign));
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Where most of what enters by a pin leaves again. */
    private Node otherEnd(Part part, Pin entered, int sign) {
        Pin best = entered;
        double most = 0;
        for (Pin pin : part.pins()) {
            double amps = -sign * reading.point().ampsInto(part.id(), pin.name());
            if (amps > most) {
                most = amps;
                best = pin;
            }
        }
        return best.node();
    }
}
