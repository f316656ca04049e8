package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.words.Phrase;

/** Finds out which factory wires show which openings, and picks the fewest that show them all. */
public final class Triggers {

    /** Up to this many wires every choice of them is looked at; with more, wires are picked one by one. */
    public static final int MOST_WIRES_FOR_ALL_CHOICES = 12;

    private static final List<CircuitRole> ROLES =
            List.of(CircuitRole.DOOR_TRIGGER, CircuitRole.HOOD_TRIGGER, CircuitRole.TRUNK_TRIGGER);

    private final Sheet sheet;
    private final Finder finder;
    private final Contacts contacts;
    private final Figure<Seconds> arming;

    /**
     * Looks on that sheet.
     *
     * @param arming from the command to armed
     */
    public Triggers(Sheet sheet, Finder finder, Figure<Seconds> arming) {
        this.arming = arming;
        this.sheet = sheet;
        this.finder = finder;
        this.contacts = new Contacts(sheet);
    }

    /**
     * How openings come to be seen.
     *
     * @param openings which
     * @param usable what a factory wire must satisfy beyond being there; the others get a pin
     */
    public Sight see(List<Operable> openings, Predicate<Circuit> usable) {
        Map<OperableId, List<Circuit>> shownBy = new LinkedHashMap<>();
        List<Sight.NeedsPin> pins = new ArrayList<>();
        for (Operable opening : openings) {
            List<Circuit> named = listNaming(opening);
            Optional<Circuit> vague = vague(opening);
            if (named.isEmpty() && vague.isPresent()) {
                return new Sight.Unclear(new Found.Waiting(
                        Measurements.openingsOf(vague.get()),
                        Phrase.of("hold.openings-not-said", vague.get().id())));
            }
            if (named.isEmpty() && opening.kind() == Operable.Kind.DOOR) {
                return new Sight.Unclear(new Found.Waiting(
                        Measurements.findTriggerOf(opening.id()), Phrase.of("hold.no-trigger", opening.id())));
            }
            if (named.isEmpty()) {
                pins.add(new Sight.NeedsPin(opening.id(), Phrase.of("pin.no-factory-switch", opening.id())));
                continue;
            }
            List<Circuit> own =
                    named.stream().filter(c -> mayBeWorkedBy(c, opening)).toList();
            if (own.isEmpty()) {
                Circuit first = named.getFirst();
                return new Sight.Unclear(new Found.Waiting(
                        Measurements.pinSideOf(first, opening.id()),
                        Phrase.of("hold.worked-by-another", first.id(), contacts.workers(first), opening.id())));
            }
            List<Circuit> prompt = own.stream().filter(c -> !outlasts(c)).toList();
            if (prompt.isEmpty()) {
                Circuit first = own.getFirst();
                return new Sight.Unclear(new Found.Waiting(
                        Measurements.pinSideOf(first, opening.id()),
                        Phrase.of(
                                "hold.light-lingers",
                                first.id(),
                                first.switching().lingers().orElseThrow().high(),
                                arming.low())));
            }
            switch (finder.amongst(prompt.getFirst().role(), prompt, Joint.SIGNAL_TAP)) {
                case Found.Usable(var circuits, var passedOver) -> {
                    List<Circuit> fit = circuits.stream().filter(usable).toList();
                    if (fit.isEmpty()) {
                        pins.add(pinInsteadOf(opening, circuits.getFirst()));
                    } else {
                        shownBy.put(opening.id(), fit);
                    }
                }
                case Found.Waiting waiting -> {
                    return new Sight.Unclear(waiting);
                }
                case Found.Forbidden(var because, var possibleIf) ->
                    pins.add(new Sight.NeedsPin(opening.id(), because));
            }
        }
        return new Sight.Seen(fewest(shownBy), pins);
    }

    /** True when the light on a wire may still be on, or fading, when the controller is armed. */
    private boolean outlasts(Circuit circuit) {
        return circuit.switching()
                .lingers()
                .filter(lingers -> lingers.high().value() > arming.low().value())
                .isPresent();
    }

    /** False for a wire that the sheet says follows the opening, and draws as worked by something else alone. */
    private boolean mayBeWorkedBy(Circuit circuit, Operable opening) {
        Set<OperableId> workers = contacts.workers(circuit);
        return workers.isEmpty() || workers.contains(opening.id());
    }

    private static Sight.NeedsPin pinInsteadOf(Operable opening, Circuit circuit) {
        Family family = Family.of(circuit.switching());
        return new Sight.NeedsPin(
                opening.id(),
                family.isPlain()
                        ? Phrase.of("pin.carries-no-coil", opening.id(), circuit.id())
                        : Phrase.of("pin.family", opening.id(), circuit.id(), family.phrase()));
    }

    /** Trigger wires that follow the opening; a wire that follows nothing said belongs to the only opening of its kind. */
    private List<Circuit> listNaming(Operable opening) {
        return ROLES.stream()
                .flatMap(role -> finder.list(role).stream())
                .filter(c -> c.follows().contains(opening.id())
                        || (c.follows().isEmpty() && isOnlyOneFor(c.role(), opening)))
                .toList();
    }

    private boolean isOnlyOneFor(CircuitRole role, Operable opening) {
        return roleOf(opening) == role
                && sheet.operables().stream()
                                .filter(o -> o.kind() == opening.kind())
                                .count()
                        == 1;
    }

    /** A trigger wire of the opening's kind that does not say what works it. */
    private Optional<Circuit> vague(Operable opening) {
        return finder.list(roleOf(opening)).stream()
                .filter(c -> c.follows().isEmpty())
                .findFirst();
    }

    private static CircuitRole roleOf(Operable opening) {
        return switch (opening.kind()) {
            case DOOR -> CircuitRole.DOOR_TRIGGER;
            case HOOD -> CircuitRole.HOOD_TRIGGER;
            case TRUNK -> CircuitRole.TRUNK_TRIGGER;
            case KEY, CONTROL -> throw new IllegalArgumentException(opening.id() + " does not open");
        };
    }

    private static List<Circuit> fewest(Map<OperableId, List<Circuit>> shownBy) {
        List<Circuit> all = shownBy.values().stream()
                .flatMap(List::stream)
                .distinct()
                .sorted(Comparator.comparingInt((Circuit c) -> shows(shownBy, c).size())
                        .reversed()
                        .thenComparing(c -> c.basis().certainty())
                        .thenComparing(Circuit::id))
                .toList();
        return all.size() <= MOST_WIRES_FOR_ALL_CHOICES ? fewestOf(all, shownBy) : oneByOne(all, shownBy);
    }

    private static Set<OperableId> shows(Map<OperableId, List<Circuit>> shownBy, Circuit circuit) {
        Set<OperableId> shown = new LinkedHashSet<>();
        shownBy.forEach((opening, circuits) -> {
            if (circuits.contains(circuit)) {
                shown.add(opening);
            }
        });
        return shown;
    }

    /** Every choice, smaller ones first and among equals the first in order. */
    private static List<Circuit> fewestOf(List<Circuit> all, Map<OperableId, List<Circuit>> shownBy) {
        List<Circuit> best = all;
        for (int choice = 0; choice < 1 << all.size(); choice++) {
            List<Circuit> chosen = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                if ((choice & (1 << i)) != 0) {
                    chosen.add(all.get(i));
                }
            }
            if (chosen.size() < best.size()
                    && shownBy.values().stream().allMatch(c -> c.stream().anyMatch(chosen::contains))) {
                best = chosen;
            }
        }
        return best;
    }

    private static List<Circuit> oneByOne(List<Circuit> all, Map<OperableId, List<Circuit>> shownBy) {
        Set<OperableId> left = new LinkedHashSet<>(shownBy.keySet());
        List<Circuit> chosen = new ArrayList<>();
        for (Circuit circuit : all) {
            if (left.removeAll(shows(shownBy, circuit))) {
                chosen.add(circuit);
            }
        }
        return chosen;
    }
}
