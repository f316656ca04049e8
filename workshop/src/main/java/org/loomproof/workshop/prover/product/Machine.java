package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.prover.reach.Reach;
import org.loomproof.workshop.prover.reach.Turn;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * The controller as its kit describes it. Time has no clock: of the timers that run, any may be the next to end, but no pulses are under
 * way together that the walk of the clocks ({@link Reach}) has not found so. Where the kit is silent every way is taken: whether a
 * pulse of an earlier state goes on, what it does when its supply returns, whether it sounds again for what is still open, and
 * whether a warning whose cause has gone still leads to the alarm.
 */
final class Machine {

    /** One thing that may happen, and what it leads to. */
    record Move(Deed deed, Control to) {}

    private final Behaviour behaviour;
    private final Reach reach;
    private final Predicate<Control> isSolved;
    private final Set<ControllerFeed> feeds;
    private final Optional<ControllerState> afterBlow;
    private final List<Control> controls;
    private final Map<Control, Integer> places = new LinkedHashMap<>();
    private final Move[][][] moves;

    /**
     * The machine of a kit.
     *
     * @param feeds whole, and the ways in which the feed can be lost
     * @param isSolved whether the network was asked about what it drives then: of what the walk of the clocks finds, and of all
     *     that its states tell, it was
     */
    Machine(Kit kit, Set<ControllerFeed> feeds, Predicate<Control> isSolved) {
        this.behaviour = kit.behaviour();
        this.reach = Reach.of(kit);
        this.isSolved = isSolved;
        this.feeds = EnumSet.copyOf(feeds);
        this.afterBlow = kit.leads().stream()
                .filter(lead -> behaviour.triggers().contains(lead.id()))
                .filter(lead -> lead.port() instanceof Port.ToExtra)
                .map(Lead::id)
                .map(lead ->
                        behaviour.instantTriggers().contains(lead) ? ControllerState.SOUNDING : ControllerState.WARNING)
                .findFirst();
        this.controls = closure();
        controls.forEach(control -> places.put(control, places.size()));
        this.moves = new Move[controls.size()][Given.ALL][];
    }

    /** Whether the walk of the clocks was ended before nothing new came, so that states may be missing. */
    boolean isCutShort() {
        return reach.isCutShort();
    }

    /** Every state that it could come to if anything could be given to it at any time. */
    List<Control> controls() {
        return controls;
    }

    /** The place of a state among all. */
    int placeOf(Control control) {
        Integer place = places.get(control);
        if (place == null) {
            throw new IllegalArgumentException("never reached: " + control);
        }
        return place;
    }

    /** Everything that may happen next while that is given. */
    Move[] moves(int control, Given given) {
        Move[] known = moves[control][given.bits()];
        if (known == null) {
            known = list(controls.get(control), given).toArray(Move[]::new);
            moves[control][given.bits()] = known;
        }
        return known;
    }

    private List<Control> closure() {
        Set<Control> found = new LinkedHashSet<>(List.of(Control.START));
        List<Control> open = new ArrayList<>(found);
        while (!open.isEmpty()) {
            Control next = open.removeLast();
            for (int bits = 0; bits < Given.ALL; bits++) {
                for (Move move : list(next, new Given(bits))) {
                    if (found.add(move.to())) {
                        open.add(move.to());
                    }
                }
            }
        }
        return List.copyOf(found);
    }

    private List<Move> list(Control from, Given given) {
        List<Move> all = new ArrayList<>();
        addFeeds(from, all);
        if (from.asleep()) {
            if (given.mayLive()) {
                wakesAs(from.state()).forEach(state -> all.add(new Move(Deed.WAKES, entered(from, state, Set.of()))));
            }
        } else {
            Turn.from(from.state()).forEach(turn -> addTurn(from, turn, given, all));
            addCommandAgain(from, all);
            addMoments(from, all);
            addSleep(from, given, all);
        }
        return all;
    }

    private void addFeeds(Control from, List<Move> all) {
        for (ControllerFeed feed : feeds) {
            if (feed != from.feed() && (feed == ControllerFeed.WHOLE || from.feed() == ControllerFeed.WHOLE)) {
                all.add(new Move(Deed.of(feed), from.fedBy(feed)));
            }
        }
    }

    private static Set<ControllerState> wakesAs(ControllerState before) {
        return EnumSet.of(before, ControllerState.DISARMED, ControllerState.ARMED, ControllerState.SOUNDING);
    }

    private void addCommandAgain(Control from, List<Move> all) {
        boolean hasCommand = switch (from.state()) {
            case DISARMED, ARMING, ARMED -> true;
            case WITHOUT_SUPPLY, WARNING, SOUNDING, OVERRIDE -> false;
        };
        Set<LeadId> begun = behaviour.listOf(from.state(), OutputTiming.SECOND_PULSE);
        Control next = from.with(both(from.pulses(), begun));
        if (hasCommand && !next.equals(from) && from.feed() == ControllerFeed.WHOLE && canBe(next)) {
            all.add(new Move(Deed.AGAIN, next));
        }
    }

    private static Set<LeadId> both(Set<LeadId> some, Set<LeadId> others) {
        Set<LeadId> both = new TreeSet<>(some);
        both.addAll(others);
        return both;
    }

    /** The state as it is entered: its own pulses begin, those that are left go on, and what flashes is lit. */
    private Control entered(Control from, ControllerState next, Set<LeadId> left) {
        if (from.feed() != ControllerFeed.WHOLE) {
            return from.in(next, Set.of(), false);
        }
        Set<LeadId> begun = behaviour.listOf(next, OutputTiming.PULSE);
        boolean flashes = !behaviour.listOf(next, OutputTiming.FLASHING).isEmpty();
        return from.in(next, both(begun, left), flashes);
    }

    /** Whether the controller's clocks let it be; one that has lost its pulses with its supply is not asked. */
    private boolean canBe(Control control) {
        return isSolved.test(control)
                && (control.pulses().isEmpty() || reach.comesTo(control.state(), control.pulses()));
    }

    /** When a turn is taken: at once by whoever wants it, when a timer is over, or by what it is given. */
    private void addTurn(Control from, Turn turn, Given given, List<Move> all) {
        Control next = entered(from, turn.to(), from.pulses());
        if (!canBe(next)) {
            return; // some pulse is over by then
        }
        switch (turn.cause()) {
            case ARMED_BY_HAND -> all.add(new Move(Deed.ARM, next));
            case DISARMED_BY_HAND, OVERRIDE_LEFT -> all.add(new Move(Deed.DISARM, next));
            case OVERRIDDEN -> all.add(new Move(Deed.OVERRIDE, next));
            case ARMING_OVER -> all.add(new Move(Deed.ARMING_OVER, next));
            case CAUSE_TO_WARN -> addCause(from, next, given.mayWarn(), all);
            case CAUSE_TO_SOUND -> addCause(from, next, given.maySound(), all);
            case WARNING_GOES_ON -> all.add(new Move(Deed.WARNING_OVER, next));
            case WARNING_ENDS -> {
                if (!given.isSurelyRaised()) {
                    all.add(new Move(Deed.WARNING_OVER, next));
                }
            }
            case SOUNDING_OVER -> {
                all.add(new Move(Deed.SOUNDING_OVER, next));
                if (!given.isQuiet()) {
                    all.add(new Move(Deed.SOUNDING_OVER, next.spentFor(true)));
                }
            }
            case SOUNDS_AGAIN -> {} // armed again and noticed at once comes to the same, without a clock
        }
    }

    private void addCause(Control from, Control next, boolean isGiven, List<Move> all) {
        if (afterBlow.filter(next.state()::equals).isPresent()) {
            all.add(new Move(Deed.BLOW, next));
        }
        if (isGiven && !from.spent()) {
            all.add(new Move(Deed.NOTICES, next));
        }
    }

    private void addMoments(Control from, List<Move> all) {
        for (LeadId pulse : from.pulses()) {
            Set<LeadId> others = new TreeSet<>(from.pulses());
            others.remove(pulse);
            Control over = from.with(others);
            if (canBe(over)) {
                all.add(new Move(Deed.PULSES_OVER, over));
            }
        }
        if (from.feed() == ControllerFeed.WHOLE
                && !behaviour.listOf(from.state(), OutputTiming.FLASHING).isEmpty()) {
            Control other = from.lit(!from.lit());
            if (isSolved.test(other)) {
                all.add(new Move(Deed.FLASH, other));
            }
        }
    }

    private static void addSleep(Control from, Given given, List<Move> all) {
        if (given.maySleep()) {
            all.add(new Move(Deed.SLEEPS, from.fallenAsleep()));
        }
        if (from.spent() && !given.isSurelyRaised()) {
            all.add(new Move(Deed.IS_QUIET_AGAIN, from.spentFor(false)));
        }
    }
}
