package org.loomproof.workshop.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.cut.Given;
import org.loomproof.workshop.planner.cut.Throw;
import org.loomproof.workshop.planner.cut.Throw.Lie;

/**
 * Reads what lies in a cut wire out of a finished plan: from its parts and wires alone, from one end of the cut to the other. Which
 * end is towards what works, and which lead comes first, a plan does not say: all ways to read it are given.
 */
final class CutReader {

    private final Plan plan;

    private CutReader(Plan plan) {
        this.plan = plan;
    }

    /** The ways to read what lies in the wire; none where it is not cut. */
    static List<List<Throw>> read(Plan plan, CircuitId circuit) {
        CutReader reader = new CutReader(plan);
        End before = new End.CutBefore(circuit);
        End after = new End.CutAfter(circuit);
        return Stream.of(reader.chain(before, after), reader.chain(after, before))
                .flatMap(Optional::stream)
                .flatMap(chain -> Stream.of(chain, renumbered(chain)))
                .toList();
    }

    /** The pole that the relay of one leg of an added load gives it, and the one at which the leg rests. */
    record Leg(Given gives, Given rest) {}

    /** What works that terminal of an added load; it is an error where no relay does. */
    static Leg readLeg(Plan plan, AddedPart.Load load, String terminal) {
        CutReader reader = new CutReader(plan);
        List<End> found = new ArrayList<>(List.of(new End.OfPart(load.id(), terminal)));
        for (int i = 0; i < found.size(); i++) {
            Stream.concat(reader.neighbours(found.get(i)).stream(), reader.beyondPole(found.get(i)).stream())
                    .filter(end -> !found.contains(end))
                    .forEach(found::add);
        }
        AddedPartId relay = found.stream()
                .flatMap(
                        end -> end instanceof End.OfPart part && part.terminal().equals("30")
                                ? Stream.of(part.part())
                                : Stream.empty())
                .findFirst()
                .orElseThrow();
        return new Leg(reader.gives(new End.OfPart(relay, "87")), reader.gives(new End.OfPart(relay, "87a")));
    }

    /** The other half of a connector's pole. */
    private Optional<End> beyondPole(End end) {
        return end instanceof End.OfPart(var part, var terminal)
                        && plan.findPart(part).orElseThrow() instanceof AddedPart.Pole
                ? Optional.of(new End.OfPart(part, terminal.equals("1") ? "2" : "1"))
                : Optional.empty();
    }

    private static List<Throw> renumbered(List<Throw> chain) {
        return chain.stream()
                .map(each -> new Throw(1 - each.lead(), each.lie(), each.gives()))
                .toList();
    }

    private Optional<List<Throw>> chain(End load, End feed) {
        List<Throw> chain = new ArrayList<>();
        List<String> leads = new ArrayList<>();
        End here = load;
        AddedPartId last = new AddedPartId("none");
        while (!here.equals(feed)) {
            AddedPartId seen = last;
            Optional<End.OfPart> contact = neighbours(here).stream()
                    .flatMap(end -> end instanceof End.OfPart part ? Stream.of(part) : Stream.empty())
                    .filter(part -> plan.findPart(part.part()).orElseThrow() instanceof AddedPart.Relay)
                    .filter(part -> !part.part().equals(seen))
                    .findFirst();
            if (contact.isEmpty()) {
                return Optional.empty();
            }
            AddedPartId relay = contact.get().part();
            String lead = leadOf(relay);
            if (!leads.contains(lead)) {
                leads.add(lead);
            }
            boolean turned = contact.get().terminal().equals("87a");
            Given gives = gives(new End.OfPart(relay, "87"));
            Lie lie = turned && gives != Given.NOTHING ? Lie.BREAK_TURNED : Lie.BREAK;
            chain.add(new Throw(leads.indexOf(lead), lie, gives));
            End next = new End.OfPart(relay, turned ? "30" : "87a");
            here = neighbours(next).contains(feed) ? feed : next;
            last = relay;
        }
        return Optional.of(chain);
    }

    private List<End> neighbours(End end) {
        return plan.wires().stream()
                .filter(wire -> wire.from().equals(end) || wire.to().equals(end))
                .map(wire -> wire.from().equals(end) ? wire.to() : wire.from())
                .toList();
    }

    /** What an end is fed from: the body, or a fuse on some way over other ends. */
    private Given gives(End end) {
        List<End> found = new ArrayList<>(List.of(end));
        for (int i = 0; i < found.size(); i++) {
            neighbours(found.get(i)).stream().filter(e -> !found.contains(e)).forEach(found::add);
        }
        if (found.stream().anyMatch(End.Body.class::isInstance)) {
            return Given.LOW;
        }
        return found.stream()
                        .anyMatch(e -> e instanceof End.OfPart part
                                && plan.findPart(part.part()).orElseThrow() instanceof AddedPart.Fuse)
                ? Given.HIGH
                : Given.NOTHING;
    }

    private String leadOf(AddedPartId part) {
        return plan.hookups().stream()
                .flatMap(h -> h instanceof Hookup.Connect c && c.parts().contains(part)
                        ? Stream.of(c.lead().value())
                        : Stream.empty())
                .findFirst()
                .orElseThrow();
    }
}
