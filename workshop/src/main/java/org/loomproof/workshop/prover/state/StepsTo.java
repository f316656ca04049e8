package org.loomproof.workshop.prover.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
                        ? count(doing.state())
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

    private static int count(ControllerState state) {
        return switch (state) {
            case WITHOUT_SUPPLY, DISARMED -> 0;
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

    /** The steps in words, in the order they are taken. */
    public List<Phrase> list(Situation situation) {
        List<Phrase> steps = new ArrayList<>(state(situation));
        if (situation.moment() == Moment.AGAIN) {
            steps.add(Phrase.of("step.again"));
        }
        if (situation.feed() != ControllerFeed.WHOLE) {
            steps.add(Phrase.of("step.feed-" + situation.feed().word()));
        }
        for (Operable operable : sheet.operables()) {
            String position = situation.positions().getOrDefault(operable.id(), operable.rest());
            if (!position.equals(operable.rest())) {
                steps.add(move(operable, position));
            }
        }
        if (situation.supply() != SupplyPoint.REST) {
            SupplyPoint supply = situation.supply();
            steps.add(Phrase.of("step.supply-" + supply.word(), supply.volts()));
        }
        return steps;
    }

    private List<Phrase> state(Situation situation) {
        if (situation.still().isEmpty()) {
            return state(situation.controller());
        }
        List<Phrase> steps =
                new ArrayList<>(wayTo(situation.controller(), situation.still()).steps());
        steps.add(Phrase.of("step.still", List.copyOf(situation.still())));
        return steps;
    }

    private List<Phrase> state(ControllerState state) {
        Phrase arm =
                Phrase.of("step.arm-and-wait", kit.behaviour().armingDelay().high());
        return switch (state) {
            case WITHOUT_SUPPLY, DISARMED -> List.of();
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
