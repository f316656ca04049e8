package org.loomproof.workshop.prover.state;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.reach.Reach;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * The steps a person takes from a vehicle at rest, disarmed, with a charged battery, to a situation. The controller is brought
 * to its state first, then its feed is taken away, then things are operated, and the battery's volts come last.
 */
public final class StepsTo {

    private final Sheet sheet;
    private final Kit kit;
    private @Nullable Reach reach;

    /** Steps in one vehicle with one kit. */
    public StepsTo(Sheet sheet, Kit kit) {
        this.sheet = sheet;
        this.kit = kit;
    }

    /** How many steps lead to a doing of the controller. */
    public int count(Condition.Doing doing) {
        return (doing.still().isEmpty()
                        ? count(doing.state(), doing.moment())
                        : wayTo(doing.state(), doing.still()).steps().size() + 1)
                + (doing.feed() == ControllerFeed.WHOLE ? 0 : 1)
                + (doing.moment() == Moment.AGAIN ? 1 : 0);
    }

    private synchronized Reach reach() {
        Reach known = reach == null ? Reach.of(kit) : reach;
        reach = known;
        return known;
    }

    /** The way to a state in which pulses overlap. */
    private Reach.Way wayTo(ControllerState state, Set<LeadId> still) {
        Set<LeadId> on = new TreeSet<>(kit.behaviour().listOn(state, Moment.SETTLED));
        on.addAll(still);
        return Optional.ofNullable(reach().ways().get(new Reach.Together(state, on)))
                .orElseThrow(() -> new IllegalArgumentException("never together in " + state + ": " + on));
    }

    /** Whether the controller's modes were not all looked for, because there are too many. */
    public boolean isCutShort() {
        return reach().isCutShort();
    }

    /** Whether the controller comes to it only where what its kit does not say is so. */
    public boolean isSupposed(Condition.Doing doing) {
        return !doing.still().isEmpty() && wayTo(doing.state(), doing.still()).isSupposed();
    }

    private int count(ControllerState state, Moment moment) {
        return switch (state) {
            case WITHOUT_SUPPLY -> 0;
            case DISARMED -> kit.behaviour().isJustEntered(state, moment) ? 2 : 0;
            case OVERRIDE, ARMING, ARMED -> 1;
            case WARNING, SOUNDING -> 2;
        };
    }

    /** How many steps lead to a supply point. */
    public static int count(SupplyPoint supply) {
        return supply == SupplyPoint.REST ? 0 : 1;
    }

    /** How many things are not at rest. */
    public int count(Map<OperableId, String> positions) {
        return (int) positions.entrySet().stream()
                .filter(e -> !e.getValue().equals(sheet.operable(e.getKey()).rest()))
                .count();
    }

    /** The steps in words, in the order in which they are usually taken. */
    public List<Phrase> list(Situation situation) {
        return orders(situation).getFirst().stream()
                .flatMap(stage -> stage.words().stream())
                .toList();
    }

    /**
     * Something that is done, and the car after it.
     *
     * @param words of the steps it takes
     * @param after everything as it is set then
     */
    public record Stage(List<Phrase> words, Situation after) {
        public Stage {
            words = List.copyOf(words);
        }
    }

    /** A car at rest, disarmed, with a charged battery: from where all steps are taken. */
    public static Situation atRest() {
        return new Situation(
                new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE, Moment.SETTLED);
    }

    /**
     * The same steps in every order of what the controller is told, its feed, what is operated and the battery, the usual one first: a
     * relay that keeps what it has once pulled in asks for one of them. What has no feed can be told nothing.
     */
    public List<List<Stage>> orders(Situation to) {
        List<Deed> told = new ArrayList<>(List.of(new Deed(told(to), from -> from.doing(to))));
        List<Deed> fed = new ArrayList<>();
        if (to.feed() != ControllerFeed.WHOLE) {
            fed.add(new Deed(List.of(Phrase.of("step.feed-" + to.feed().word())), from -> from.fedBy(to.feed())));
        }
        List<Deed> moved = new ArrayList<>();
        for (Operable operable : sheet.operables()) {
            String position = to.positions().getOrDefault(operable.id(), operable.rest());
            if (!position.equals(operable.rest())) {
                moved.add(moved(operable, position));
            }
        }
        List<Deed> supplied = new ArrayList<>();
        if (to.supply() != SupplyPoint.REST) {
            SupplyPoint supply = to.supply();
            supplied.add(new Deed(
                    List.of(Phrase.of("step.supply-" + supply.word(), supply.volts())),
                    from -> from.suppliedBy(supply)));
        }
        Set<List<Deed>> orders = new LinkedHashSet<>();
        for (List<Deed> moves : List.of(moved, moved.reversed())) {
            permute(List.of(told, fed, moves, supplied), List.of(), orders);
        }
        return orders.stream()
                .filter(order -> fed.isEmpty() || order.indexOf(told.getFirst()) < order.indexOf(fed.getFirst()))
                .map(StepsTo::stages)
                .toList();
    }

    private record Deed(List<Phrase> words, UnaryOperator<Situation> does) {}

    private static Deed moved(Operable operable, String position) {
        return new Deed(List.of(move(operable, position)), from -> from.with(operable.id(), position));
    }

    private static void permute(List<List<Deed>> left, List<Deed> soFar, Set<List<Deed>> into) {
        if (left.isEmpty()) {
            into.add(soFar);
        }
        for (int k = 0; k < left.size(); k++) {
            List<List<Deed>> others = new ArrayList<>(left);
            List<Deed> longer = new ArrayList<>(soFar);
            longer.addAll(others.remove(k));
            permute(others, longer, into);
        }
    }

    private static List<Stage> stages(List<Deed> order) {
        List<Stage> stages = new ArrayList<>();
        Situation now = atRest();
        for (Deed deed : order) {
            now = deed.does().apply(now);
            stages.add(new Stage(deed.words(), now));
        }
        return stages;
    }

    private List<Phrase> told(Situation to) {
        List<Phrase> told = new ArrayList<>(state(to));
        if (to.moment() == Moment.AGAIN) {
            told.add(Phrase.of("step.again"));
        }
        return told;
    }

    private List<Phrase> state(Situation situation) {
        if (situation.still().isEmpty()) {
            return state(situation.controller(), situation.moment());
        }
        List<Phrase> steps =
                new ArrayList<>(wayTo(situation.controller(), situation.still()).steps());
        steps.add(Phrase.of("step.still", List.copyOf(situation.still())));
        return steps;
    }

    private List<Phrase> state(ControllerState state, Moment moment) {
        Phrase arm =
                Phrase.of("step.arm-and-wait", kit.behaviour().armingDelay().high());
        return switch (state) {
            case WITHOUT_SUPPLY -> List.of();
            case DISARMED ->
                kit.behaviour().isJustEntered(state, moment)
                        ? List.of(Phrase.of("step.arm"), Phrase.of("step.disarm"))
                        : List.of();
            case OVERRIDE -> List.of(Phrase.of("step.override"));
            case ARMING -> List.of(Phrase.of("step.arm"));
            case ARMED -> List.of(arm);
            case WARNING -> List.of(arm, Phrase.of("step.warn"));
            case SOUNDING -> List.of(arm, Phrase.of("step.sound"));
        };
    }

    private static Phrase move(Operable operable, String position) {
        return switch (operable.kind()) {
            case KEY -> Phrase.of("step.turn-key", position);
            case DOOR, HOOD, TRUNK -> Phrase.of("step.open", operable.id());
            case CONTROL -> Phrase.of("step.put", operable.id(), position);
        };
    }
}
