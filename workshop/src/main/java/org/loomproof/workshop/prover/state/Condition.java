package org.loomproof.workshop.prover.state;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.reach.Reach;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/**
 * Doings of the controller that ask the same of its outputs under the same feed: electrically one, and solved once.
 *
 * @param members the doings, in the order of the controller's states
 */
public record Condition(List<Doing> members) {

    /**
     * What the controller is doing, whether it is fed, and whether its pulses and flashes are on.
     *
     * @param still outputs that are on besides, since their pulse is not over: one that an earlier state has begun, or one of
     *     several of this state
     */
    public record Doing(ControllerState state, ControllerFeed feed, Moment moment, Set<LeadId> still) {
        public Doing {
            still = Collections.unmodifiableSet(new TreeSet<>(still));
        }

        /** With no pulse left over. */
        public Doing(ControllerState state, ControllerFeed feed, Moment moment) {
            this(state, feed, moment, Set.of());
        }

        /** What the controller does in a situation. */
        public static Doing in(Situation situation) {
            return new Doing(situation.controller(), situation.feed(), situation.moment(), situation.still());
        }

        /** The situation in which it does so, everything else set as told. */
        public Situation with(SortedMap<OperableId, String> positions, SupplyPoint supply) {
            return new Situation(positions, supply, state, feed, moment, still);
        }

        /** Whether only what is steady is on. */
        public boolean isSettled() {
            return moment == Moment.SETTLED && still.isEmpty();
        }

        /** The outputs that are on. */
        public Set<LeadId> on(Behaviour behaviour) {
            Set<LeadId> on = new LinkedHashSet<>(behaviour.listOn(state, moment));
            on.addAll(still);
            return Collections.unmodifiableSet(on);
        }
    }

    /** Disarmed, fed, and nothing switched on: for a vehicle without controller, and where none has a say. */
    public static final Doing IDLE = new Doing(ControllerState.DISARMED, ControllerFeed.WHOLE, Moment.SETTLED);

    public Condition {
        members = List.copyOf(members);
    }

    /** What stands for all of them in the network. */
    public Doing representative() {
        return members.getFirst();
    }

    /**
     * All conditions of a kit, whole feed first. A feed without a fuse of its own has none that could be out; where that fuse
     * leads to nothing but the supply leads, the fuse out and the supply unplugged are one condition. Once the feed is lost
     * only what is steady counts: a pulse or a flash that keeps the controller alive lets go of it by itself.
     */
    public static List<Condition> list(Kit kit, boolean hasFeedFuse, boolean fuseOutIsUnplugged) {
        Map<Electrically, List<Doing>> alike = new LinkedHashMap<>();
        for (ControllerFeed feed : ControllerFeed.values()) {
            if (feed == ControllerFeed.FUSE_OUT && !hasFeedFuse) {
                continue;
            }
            boolean asUnplugged = feed == ControllerFeed.FUSE_OUT && fuseOutIsUnplugged;
            ControllerFeed effect = asUnplugged ? ControllerFeed.SUPPLY_LOST : feed;
            for (Moment moment : Moment.values()) {
                if (isTold(kit, moment) && (moment == Moment.SETTLED || feed == ControllerFeed.WHOLE)) {
                    for (ControllerState state : LIVE) {
                        alike.computeIfAbsent(
                                        new Electrically(effect, kit.behaviour().listOn(state, moment)),
                                        on -> new ArrayList<>())
                                .add(new Doing(state, feed, moment));
                    }
                }
            }
        }
        overlapping(kit)
                .forEach(doing -> alike.computeIfAbsent(
                                new Electrically(ControllerFeed.WHOLE, doing.on(kit.behaviour())),
                                on -> new ArrayList<>())
                        .add(doing));
        return alike.values().stream().map(Condition::new).toList();
    }

    /** What a fed controller comes to beyond the moments of its states: pulses that overlap. */
    private static List<Doing> overlapping(Kit kit) {
        List<Doing> overlapping = new ArrayList<>();
        for (Reach.Together each : Reach.of(kit).ways().keySet()) {
            boolean isMoment = Arrays.stream(Moment.values())
                    .anyMatch(moment ->
                            kit.behaviour().listOn(each.state(), moment).equals(each.on()));
            if (!isMoment) {
                Set<LeadId> still = new TreeSet<>(each.on());
                still.removeAll(kit.behaviour().listOn(each.state(), Moment.SETTLED));
                overlapping.add(new Doing(each.state(), ControllerFeed.WHOLE, Moment.SETTLED, still));
            }
        }
        return overlapping;
    }

    private static boolean isTold(Kit kit, Moment moment) {
        return moment != Moment.AGAIN || kit.behaviour().tellsTheSecondCommand();
    }

    private record Electrically(ControllerFeed feed, Set<LeadId> outputsOn) {}

    /** Without supply is not a doing but what a lost feed leads to. */
    private static final List<ControllerState> LIVE = List.of(
            ControllerState.DISARMED,
            ControllerState.OVERRIDE,
            ControllerState.ARMING,
            ControllerState.ARMED,
            ControllerState.WARNING,
            ControllerState.SOUNDING);
}
