package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.AddedActuators;
import org.loomproof.workshop.planner.coupling.AddedActuators.Leg;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * Locks worked by actuators out of the kit's box: where the car has none of its own, or one in the driver's door that moves the
 * factory switch where nothing may be joined to the factory wires.
 */
final class LockActuators {

    private static final Wish WISH = Wish.LOCKS;

    private LockActuators() {}

    /** What to do with both leads; empty when the box holds no actuator. */
    static Optional<Option> option(Job job, Lead lock, Lead unlock, Phrase because) {
        List<Extra> actuators = job.listExtras(Extra.Kind.ACTUATOR);
        return actuators.isEmpty() ? Optional.empty() : Optional.of(option(job, lock, unlock, actuators, because));
    }

    /**
     * What the box's actuators add to the coupling of a lead whose relay drives a motor leg that rests at the body; empty where
     * none are in the box, what they draw is not said, or no relay bears them.
     */
    static Optional<Draft> following(Job job, Lead lead, Leg leg, End driven, Circuit constant) {
        List<Extra> actuators = job.listExtras(Extra.Kind.ACTUATOR);
        if (actuators.isEmpty() || actuators.stream().anyMatch(e -> e.draws().isEmpty())) {
            return Optional.empty();
        }
        Amps all = together(actuators);
        RelayChoice.Need need = job.need(all, all, new Port.Supply(), 1);
        return job.listRelays().stream()
                .filter(type -> RelayChoice.meets(type, need))
                .findFirst()
                .map(relay -> AddedActuators.following(
                        lead,
                        leg,
                        driven,
                        items(job, actuators),
                        all,
                        relay,
                        job.signalDiode(),
                        Feed.from(constant, new AddedPartId("actuator-fuse"), job.run(constant))));
    }

    private static List<AddedLoad.Item> items(Job job, List<Extra> actuators) {
        return actuators.stream()
                .map(e -> new AddedLoad.Item(
                        e.name(), e.draws().orElseThrow().typical(), Optional.empty(), job.usualRun()))
                .toList();
    }

    private static Amps together(List<Extra> actuators) {
        return new Amps(
                actuators.stream().mapToDouble(e -> atHighSupply(e).value()).sum());
    }

    private static Option option(Job job, Lead lock, Lead unlock, List<Extra> actuators, Phrase because) {
        List<Lead> pair = List.of(lock, unlock);
        Optional<Extra> unstated =
                actuators.stream().filter(e -> e.draws().isEmpty()).findFirst();
        if (unstated.isPresent()) {
            String name = unstated.get().name();
            Measurement until = new Measurement("current-of " + name, Phrase.of("measure.extra-current", name));
            return Option.of(
                    Aside.allHeld(pair, WISH, new Found.Waiting(until, Phrase.of("hold.extra-current", name))));
        }
        Optional<Side> lockSide = Side.of(lock.port());
        Optional<Side> unlockSide = Side.of(unlock.port());
        if (lockSide.isEmpty() || unlockSide.isEmpty()) {
            return Option.of(pair.stream().map(l -> Aside.misfit(l, WISH)).toList());
        }
        return switch (job.constant()) {
            case Found.Waiting waiting -> Option.of(Aside.allHeld(pair, WISH, waiting));
            case Found.Forbidden(var reason, var possibleIf) ->
                Option.refused(new Refusal(WISH, reason, possibleIf), Aside.allRefused(pair, WISH));
            case Found.Usable usable ->
                fed(job, pair, lockSide.get(), unlockSide.get(), actuators, usable.first(), because);
        };
    }

    private static Option fed(
            Job job,
            List<Lead> pair,
            Side lockSide,
            Side unlockSide,
            List<Extra> actuators,
            Circuit constant,
            Phrase because) {
        List<AddedLoad.Item> items = items(job, actuators);
        Amps all = together(actuators);
        Optional<RelayType> relay = job.listRelays().stream()
                .filter(type ->
                        pair.stream().allMatch(lead -> RelayChoice.meets(type, job.need(all, all, lead.port(), 1))))
                .findFirst();
        if (relay.isEmpty()) {
            return Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of("refuse.actuators.no-relay", all),
                            Phrase.of("possible.actuators.no-relay")),
                    Aside.allRefused(pair, WISH));
        }
        Feed contacts = Feed.from(constant, new AddedPartId("lock-fuse"), job.run(constant));
        Phrase reason =
                Phrase.of("rule.added-actuators", items.size(), all, relay.get().name(), because);
        return Option.of(List.of(
                        join(
                                job,
                                pair.getFirst(),
                                lockSide,
                                Leg.LOCKS,
                                items,
                                all,
                                relay.get(),
                                constant,
                                contacts,
                                reason),
                        join(
                                job,
                                pair.getLast(),
                                unlockSide,
                                Leg.UNLOCKS,
                                items,
                                all,
                                relay.get(),
                                constant,
                                contacts,
                                reason)))
                .beware(List.of(Phrase.of("caution.actuators-free"), Phrase.of("caution.actuators-way-out")));
    }

    private static Decision join(
            Job job,
            Lead lead,
            Side side,
            Leg leg,
            List<AddedLoad.Item> items,
            Amps all,
            RelayType relay,
            Circuit constant,
            Feed contacts,
            Phrase because) {
        Draft draft = AddedActuators.of(
                lead, side, leg, items, all, relay, job.signalDiode(), job.coilFeed(constant, lead), contacts);
        return new Decision.Join(lead, WISH, List.of(), draft, because, List.of());
    }

    /** What it draws is stated at a charged battery's volts. */
    private static Amps atHighSupply(Extra extra) {
        return new Amps(extra.draws().orElseThrow().high().value()
                * SupplyPoint.HIGH.volts().value()
                / SupplyPoint.REST.volts().value());
    }
}
