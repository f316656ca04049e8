package org.loomproof.workshop.example;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.grammar.Coil;
import org.loomproof.workshop.planner.grammar.Gate;
import org.loomproof.workshop.planner.grammar.Pull;
import org.loomproof.workshop.planner.grammar.Tie;
import org.loomproof.workshop.planner.grammar.Tie.Way;
import org.loomproof.workshop.planner.grammar.Word;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * Reads the word of the grammar out of a finished plan: from its parts and wires alone, as a technician would follow them from
 * one target back. It knows nothing of how the planner put them together.
 */
final class WordReader {

    private static final String SOURCE = "source";
    private static final String TARGET = "target";
    private static final String SUPPLY = "supply";
    private static final String BODY = "body";

    private final List<AddedPart> parts;
    private final Map<End, End> joined = new HashMap<>();
    private final Map<String, End> named = new HashMap<>();
    private final Set<AddedPartId> clamps = new HashSet<>();
    private final Map<AddedPartId, Integer> relays = new HashMap<>();
    private final List<Coil> coils = new ArrayList<>();

    private WordReader(Plan plan, Hookup.Connect hookup, End other, boolean reads) {
        this.parts = hookup.parts().stream()
                .map(id -> plan.findPart(id).orElseThrow())
                .toList();
        End lead = new End.OfLead(hookup.lead());
        named.put(SOURCE, reads ? other : lead);
        named.put(TARGET, reads ? lead : other);
        named.put(BODY, new End.Body());
        for (AddedWire wire : plan.wires()) {
            if (hookup.wires().contains(wire.id())) {
                join(wire.from(), wire.to());
            }
        }
        for (AddedPart part : parts) {
            if (part instanceof AddedPart.Pole pole) {
                join(at(pole, "1"), at(pole, "2"));
            }
            if (part instanceof AddedPart.Fuse fuse) {
                join(at(fuse, "1"), at(fuse, "2"));
                named.put(SUPPLY, at(fuse, "2"));
            }
        }
    }

    /** The word by which a hookup works one of its targets. */
    static Word read(Plan plan, Hookup.Connect hookup, CircuitId target) {
        return new WordReader(plan, hookup, new End.Tap(target), false).word();
    }

    /** The word by which a hookup works a load out of the box: what reaches that of its poles that it has not for good. */
    static Word read(Plan plan, Hookup.Connect hookup, AddedPart.Load load) {
        End plus = new End.OfPart(load.id(), "+");
        End minus = new End.OfPart(load.id(), "-");
        WordReader onPlus = new WordReader(plan, hookup, plus, false);
        return onPlus.same(minus, onPlus.end(BODY)) ? onPlus.word() : new WordReader(plan, hookup, minus, false).word();
    }

    /** The word by which an input reads one of its sources. */
    static Word readInput(Plan plan, Hookup.Connect hookup, CircuitId source) {
        return new WordReader(plan, hookup, new End.Tap(source), true).word();
    }

    private void join(End one, End other) {
        End a = root(one);
        End b = root(other);
        if (!a.equals(b)) {
            joined.put(a, b);
        }
    }

    private End root(End end) {
        End here = end;
        while (joined.containsKey(here)) {
            here = joined.get(here);
        }
        return here;
    }

    private static End at(AddedPart part, String terminal) {
        return new End.OfPart(part.id(), terminal);
    }

    private boolean same(End one, End other) {
        return root(one).equals(root(other));
    }

    private End end(String name) {
        return Objects.requireNonNull(named.get(name), name);
    }

    private Optional<String> name(End end) {
        return named.entrySet().stream()
                .filter(e -> same(e.getValue(), end))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private Word word() {
        for (AddedPart part : parts) {
            if (part instanceof AddedPart.Relay relay) {
                for (AddedPart d :
                        parts.stream().filter(AddedPart.Diode.class::isInstance).toList()) {
                    if (!same(at(d, "A"), at(relay, "85"))) {
                        continue;
                    }
                    if (same(at(d, "K"), at(relay, "86"))) {
                        clamps.add(d.id());
                    }
                    parts.stream()
                            .filter(AddedPart.Zener.class::isInstance)
                            .filter(z -> same(at(d, "K"), at(z, "K")) && same(at(z, "A"), at(relay, "86")))
                            .forEach(z -> clamps.addAll(List.of(d.id(), z.id())));
                }
            }
        }
        Map<String, Tie> ties = new HashMap<>();
        if (same(end(SOURCE), end(TARGET))) {
            ties.put(SOURCE, Tie.WIRE);
        } else {
            follow(end(TARGET), new HashSet<>(), Tie.WIRE, ties);
        }
        return new Word(
                ties.getOrDefault(SOURCE, Tie.NONE),
                ties.getOrDefault(SUPPLY, Tie.NONE),
                ties.getOrDefault(BODY, Tie.NONE),
                coils,
                buffering(),
                pull());
    }

    /** A resistor that hangs on the source itself. */
    private Pull pull() {
        for (AddedPart part : parts) {
            if (part instanceof AddedPart.Resistor r && same(at(r, "2"), end(SOURCE))) {
                Optional<String> pole = name(at(r, "1"));
                if (pole.filter(SUPPLY::equals).isPresent()) {
                    return Pull.UP;
                }
                if (pole.filter(BODY::equals).isPresent()) {
                    return Pull.DOWN;
                }
            }
        }
        return Pull.NONE;
    }

    private Buffering buffering() {
        return parts.stream()
                .filter(AddedPart.Buffer.class::isInstance)
                .map(b ->
                        ((AddedPart.Buffer) b).worksOn() == Port.Active.LOW ? Buffering.ON_GROUND : Buffering.ON_SUPPLY)
                .findFirst()
                .orElse(Buffering.NONE);
    }

    /** Goes on from a node through every part that hangs on it, until a named end is reached. */
    private void follow(End here, Set<AddedPartId> seen, Tie soFar, Map<String, Tie> ties) {
        for (AddedPart part : parts) {
            if (clamps.contains(part.id()) || seen.contains(part.id())) {
                continue;
            }
            switch (part) {
                case AddedPart.Diode d -> {
                    if (same(at(d, "A"), here)) {
                        step(d, at(d, "K"), seen, new Tie(true, Way.FROM_TARGET, soFar.resistor(), soFar.gate()), ties);
                    } else if (same(at(d, "K"), here)) {
                        step(d, at(d, "A"), seen, new Tie(true, Way.TO_TARGET, soFar.resistor(), soFar.gate()), ties);
                    }
                }
                case AddedPart.Zener z -> {
                    // Behind the diode at a factory coil it is one value more of that clamp.
                    if (soFar.diode() == Way.BOTH || !same(at(z, "K"), here)) {
                        throw new AssertionError(z + " lies elsewhere than behind the diode at a coil");
                    }
                    step(z, at(z, "A"), seen, soFar, ties);
                }
                case AddedPart.Resistor r -> {
                    if (same(at(r, "1"), here) || same(at(r, "2"), here)) {
                        End next = same(at(r, "1"), here) ? at(r, "2") : at(r, "1");
                        step(r, next, seen, new Tie(true, soFar.diode(), true, soFar.gate()), ties);
                    }
                }
                case AddedPart.Relay k -> {
                    if (same(at(k, "30"), here)) {
                        int number = relays.computeIfAbsent(k.id(), id -> {
                            coils.add(coil(k));
                            return coils.size();
                        });
                        Gate make = number == 1 ? Gate.MAKE_1 : Gate.MAKE_2;
                        Gate rest = number == 1 ? Gate.BREAK_1 : Gate.BREAK_2;
                        step(k, at(k, "87"), seen, new Tie(true, soFar.diode(), soFar.resistor(), make), ties);
                        step(k, at(k, "87a"), seen, new Tie(true, soFar.diode(), soFar.resistor(), rest), ties);
                    }
                }
                case AddedPart.Buffer q -> {
                    if (same(at(q, "out"), here)) {
                        step(q, at(q, "-"), seen, new Tie(true, soFar.diode(), soFar.resistor(), Gate.BUFFER), ties);
                    }
                }
                case AddedPart.Fuse f -> {}
                case AddedPart.Pole p -> {}
                case AddedPart.Load l -> {}
                case AddedPart.StandbyBattery b -> {}
                case AddedPart.Sender s -> {}
                case AddedPart.PinSwitch s -> {}
            }
        }
    }

    private void step(AddedPart through, End to, Set<AddedPartId> seen, Tie tie, Map<String, Tie> ties) {
        Optional<String> end = name(to).filter(n -> !n.equals(TARGET));
        if (end.isPresent()) {
            ties.merge(end.get(), tie, (one, other) -> {
                throw new AssertionError("two ties to the " + end.get() + ": " + one + ", " + other);
            });
            return;
        }
        Set<AddedPartId> further = new HashSet<>(seen);
        further.add(through.id());
        follow(to, further, tie, ties);
    }

    private Coil coil(AddedPart.Relay relay) {
        boolean toSupply = name(at(relay, "86")).filter(SUPPLY::equals).isPresent();
        End driven = toSupply ? at(relay, "85") : at(relay, "86");
        Side pole = toSupply ? Side.HIGH : Side.LOW;
        if (same(driven, end(SOURCE))) {
            return new Coil(Coil.Driver.SOURCE, pole, false);
        }
        boolean buffered = parts.stream().anyMatch(p -> p instanceof AddedPart.Buffer && same(at(p, "out"), driven));
        return buffered ? new Coil(Coil.Driver.BUFFER, pole, false) : new Coil(Coil.Driver.SOURCE, pole, true);
    }
}
