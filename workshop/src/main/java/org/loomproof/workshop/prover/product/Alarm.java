package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * When the alarm comes, with timers and fading lights counted in: whether an opening of an armed car leads to it by itself, and
 * whether it ever comes to a car that was closed before it was armed and that nobody has touched since.
 */
final class Alarm {

    /** What nobody does: it comes by itself. */
    private static final Set<Deed> BY_ITSELF =
            EnumSet.of(Deed.NOTICES, Deed.WARNING_OVER, Deed.SLEEPS, Deed.WAKES, Deed.IS_QUIET_AGAIN);

    /** What goes to and fro within one state of the controller, or ends in it. */
    private static final Set<Deed> WITHIN = EnumSet.of(Deed.PULSES_OVER, Deed.FLASH);

    /** What is an alarm's cause, or a hand at the controller's plugs; and what a supply that returns does, nobody says. */
    private static final Set<Deed> LEFT_OUT = EnumSet.of(
            Deed.BLOW, Deed.FEED_SUPPLY_LOST, Deed.FEED_GROUND_LOST, Deed.FEED_FUSE_OUT, Deed.FEED_WHOLE, Deed.WAKES);

    private final Product product;
    private final Set<OperableId> sensors;
    private final Set<OperableId> openings;
    private final Map<Integer, Boolean> known = new HashMap<>();

    Alarm(Product product, Brief brief) {
        this.product = product;
        this.sensors = brief.kit().extras().stream()
                .flatMap(extra -> extra.operable().stream())
                .map(Operable::id)
                .collect(Collectors.toSet());
        this.openings = brief.sheet().operables().stream()
                .filter(Operable::isOpening)
                .map(Operable::id)
                .collect(Collectors.toSet());
    }

    /** Whether from every state that was reached, armed and with that open, the alarm surely follows if it is left open. */
    boolean surelyFollows(OperableId opening, Search reached) {
        for (int k = 0; k < reached.size(); k++) {
            Product.Place at = reached.place(k);
            if (isWatching(product.control(at)) && isOpen(opening, at) && !surelyFollows(product.number(at))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isWatching(Control control) {
        return control.isAwake(ControllerState.ARMED) && control.feed() == ControllerFeed.WHOLE && !control.spent();
    }

    private boolean isOpen(OperableId opening, Product.Place at) {
        return Operable.OPENING_POSITIONS.getLast().equals(product.positions(at).get(opening));
    }

    /** Whether whatever comes by itself ends in the alarm; a circle that never gets there does not. */
    private boolean surelyFollows(int state) {
        Boolean answer = known.get(state);
        if (answer == null) {
            known.put(state, false); // whoever comes back here meanwhile has gone in a circle
            answer = workedOut(state);
            known.put(state, answer);
        }
        return answer;
    }

    private boolean workedOut(int state) {
        Control control = product.control(product.place(state));
        if (control.isAwake(ControllerState.SOUNDING)) {
            return true;
        }
        if (!control.isAwake(ControllerState.ARMED) && !control.isAwake(ControllerState.WARNING)) {
            return false;
        }
        Set<Integer> next = new HashSet<>();
        for (int each : within(state)) {
            boolean mustGoOn = control.state() == ControllerState.WARNING
                    || product.given(product.place(each)).isSurelyRaised();
            if (!mustGoOn) {
                return false;
            }
            product.next(each, (step, to) -> {
                if (step instanceof Step.Darkens
                        || (step instanceof Step.Controls(Deed deed) && BY_ITSELF.contains(deed))) {
                    next.add(to);
                }
            });
        }
        return !next.isEmpty() && next.stream().allMatch(this::surelyFollows);
    }

    /** The state with its pulses and flashes on and over. */
    private Set<Integer> within(int state) {
        Set<Integer> all = new HashSet<>(Set.of(state));
        List<Integer> open = new ArrayList<>(all);
        while (!open.isEmpty()) {
            product.next(open.removeLast(), (step, to) -> {
                if (step instanceof Step.Controls(Deed deed) && WITHIN.contains(deed) && all.add(to)) {
                    open.add(to);
                }
            });
        }
        return all;
    }

    /**
     * The fewest steps to an alarm that nothing has set off: whatever opens was closed before it was armed, nothing is worked
     * after that and nothing strikes the car, and its feed is left alone. Empty where there is none.
     */
    Optional<List<Step>> unbidden() {
        Search search = Search.of(product, this::isHarmless, Search.MOST_STATES);
        for (int k = 0; k < search.size(); k++) {
            Control control = product.control(search.place(k));
            if (control.isAwake(ControllerState.WARNING) || control.isAwake(ControllerState.SOUNDING)) {
                return Optional.of(search.stepsTo(k));
            }
        }
        return Optional.empty();
    }

    private boolean isHarmless(Product.Place from, Step step) {
        return switch (step) {
            case Step.Controls(Deed deed) -> !LEFT_OUT.contains(deed) && (deed != Deed.ARM || isClosed(from));
            case Step.Operates(OperableId operable, String position) ->
                !sensors.contains(operable) && product.control(from).isAwake(ControllerState.DISARMED);
            case Step.Supplies supplies -> true;
            case Step.Darkens darkens -> true;
        };
    }

    private boolean isClosed(Product.Place at) {
        return openings.stream().noneMatch(opening -> isOpen(opening, at));
    }
}
