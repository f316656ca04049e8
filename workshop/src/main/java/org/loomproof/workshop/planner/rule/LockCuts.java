package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.CutIn;
import org.loomproof.workshop.planner.coupling.CutIn.Throw;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.planner.survey.Severed;
import org.loomproof.workshop.planner.survey.Severed.Cut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.words.Phrase;

/**
 * Locks whose wires cannot be worked beside the car's own switch, because that switch holds them: the two legs of reversing
 * motors, and a single wire that takes either pole. They are cut behind the last switch, and relays are put in.
 */
final class LockCuts {

    private static final Wish WISH = Wish.LOCKS;

    /** A wire that passes more than this, put to the pole that makes it active, is held firmly at the other one. */
    private static final double FIRM_AMPS = 20;

    private final Job job;
    private final Lead lock;
    private final Lead unlock;
    private final Circuit locking;
    private final Circuit unlocking;

    private LockCuts(Job job, Lead lock, Lead unlock, Circuit locking, Circuit unlocking) {
        this.job = job;
        this.lock = lock;
        this.unlock = unlock;
        this.locking = locking;
        this.unlocking = unlocking;
    }

    /** What to do with both leads; empty where the wires can be worked beside the car's switch, or are not known. */
    static Optional<Option> option(Job job, Lead lock, Lead unlock) {
        if (job.finder().one(CircuitRole.LOCK, Joint.POWER_TAP) instanceof Found.Usable locking
                && job.finder().one(CircuitRole.UNLOCK, Joint.POWER_TAP) instanceof Found.Usable unlocking) {
            return new LockCuts(job, lock, unlock, locking.first(), unlocking.first()).option();
        }
        return Optional.empty();
    }

    /**
     * The driver's door first: a further relay in that door's own unlocking leg, behind the branch to the other doors, so that a
     * first command works its motor alone while both legs of the others rest together.
     */
    static Option withDriverFirst(Job job, Lead first, Option both, Lead lock, Lead unlock) {
        return switch (job.finder().one(CircuitRole.LOCK_MOTOR_LEG, Joint.CUT)) {
            case Found.Usable leg ->
                both.and(new LockCuts(job, lock, first, leg.first(), leg.first()).driverLeg(leg.first()));
            case Found.Waiting waiting -> both.and(Option.of(List.of(Aside.hold(first, WISH, waiting))));
            case Found.Forbidden barred -> both.and(Option.of(List.of(Aside.refused(first, WISH))));
        };
    }

    private Option driverLeg(Circuit leg) {
        Severed severed = Severed.atTheWire(job.brief().sheet(), leg.id());
        Optional<Cut> cut = severed.cut(leg.id());
        Optional<Side> pole = given(leg).flatMap(side -> side);
        if (cut.isEmpty() || pole.isEmpty()) {
            return Option.of(List.of(
                    Aside.hold(unlock, WISH, Measurements.cutPlaceOf(leg), Phrase.of("hold.driver-leg", leg.id()))));
        }
        return guarded(severed.draws(cut.get().load()), 1, making -> {
            Throw alone = new Throw(
                    relay(unlock, ""), Optional.of(cut.get().load()), cut.get().feed(), pole, true);
            Phrase because = Phrase.of(
                    "rule.driver-first",
                    leg.id(),
                    making.carries(),
                    making.type().name());
            return Option.of(List.of(join(unlock, "coupling.driver-first", leg.id(), List.of(alone), because, making)));
        });
    }

    /** The same where the sheet gives the legs of the motors and no wires of a switch. */
    static Optional<Option> ofLegs(Job job, Lead lock, Lead unlock, LockLegs.Pair legs) {
        return new LockCuts(job, lock, unlock, legs.locking(), legs.unlocking()).option();
    }

    private Optional<Option> option() {
        Sheet sheet = job.brief().sheet();
        Severed both = new Severed(sheet, Set.of(locking.id(), unlocking.id()));
        Optional<Cut> lockCut = both.cut(locking.id());
        Optional<Cut> unlockCut = both.cut(unlocking.id());
        if (lockCut.isPresent()
                && unlockCut.isPresent()
                && both.isOneLoad(lockCut.get().load(), unlockCut.get().load())) {
            return Optional.of(guarded(
                    both.draws(lockCut.get().load()),
                    legRelays(),
                    making -> legs(lockCut.get(), unlockCut.get(), making)));
        }
        for (Circuit wire : List.of(locking, unlocking)) {
            Severed one = new Severed(sheet, Set.of(wire.id()));
            Circuit other = wire.equals(locking) ? unlocking : locking;
            Optional<Cut> cut = one.cut(wire.id());
            if (cut.isPresent()
                    && isOneWireForBoth()
                    && one.isOneLoad(new End.Tap(other.id()), cut.get().feed())) {
                return Optional.of(guarded(one.draws(cut.get().load()), 1, making -> singleWire(cut.get(), making)));
            }
        }
        return isHeldFirmly(locking) || isHeldFirmly(unlocking)
                ? Optional.of(held(Measurements.cutPlaceOf(locking)))
                : Optional.empty();
    }

    private boolean isHeldFirmly(Circuit circuit) {
        return switch (circuit.switching().active()) {
            case Level.Supply s -> job.draw().fromSupply(circuit).value() > FIRM_AMPS;
            case Level.Ground g -> job.draw().intoBody(circuit).value() > FIRM_AMPS;
            case Level.Open o -> false;
            case Level.Resistance r -> false;
            case Level.Voltage v -> false;
            case Level.Reversing r -> true;
            case Level.Data d -> false;
        };
    }

    /** One wire for both directions: each pole does one of them, or one pole does one and letting go the other. */
    private boolean isOneWireForBoth() {
        Optional<Optional<Side>> locks = given(locking);
        Optional<Optional<Side>> unlocks = given(unlocking);
        return locks.isPresent() && unlocks.isPresent() && !locks.equals(unlocks);
    }

    /** The pole that makes a wire active, nothing where it is let go; empty for any other kind of wire. */
    private static Optional<Optional<Side>> given(Circuit circuit) {
        return switch (circuit.switching().active()) {
            case Level.Ground g -> Optional.of(Optional.of(Side.LOW));
            case Level.Supply s -> Optional.of(Optional.of(Side.HIGH));
            case Level.Open o -> Optional.of(Optional.empty());
            case Level.Resistance r -> Optional.empty();
            case Level.Voltage v -> Optional.empty();
            case Level.Reversing r -> Optional.empty();
            case Level.Data d -> Optional.empty();
        };
    }

    /** How many relays a leg takes: one where the other leg rests at a pole through the car's switch, two where it floats. */
    private int legRelays() {
        return locking.switching().rest() instanceof Level.Open ? 2 : 1;
    }

    private interface Making {
        Option with(CutIn.Making making);
    }

    /** The option, when a feed and a relay are there and the wires may be cut; otherwise what stands against it. */
    private Option guarded(Amps carries, int coils, Making making) {
        for (Circuit wire : List.of(locking, unlocking)) {
            switch (job.finder().alike(wire, Joint.CUT)) {
                case Found.Waiting waiting -> {
                    return Option.of(Aside.allHeld(List.of(lock, unlock), WISH, waiting));
                }
                case Found.Forbidden(var reason, var possibleIf) -> {
                    return Option.refused(
                            new Refusal(WISH, reason, possibleIf), Aside.allRefused(List.of(lock, unlock), WISH));
                }
                case Found.Usable usable -> {}
            }
        }
        if (!(job.constant() instanceof Found.Usable constant)) {
            return job.constant() instanceof Found.Waiting waiting
                    ? Option.of(Aside.allHeld(List.of(lock, unlock), WISH, waiting))
                    : Option.of(List.of(Aside.misfit(lock, WISH), Aside.misfit(unlock, WISH)));
        }
        Optional<Lead> misfit = List.of(lock, unlock).stream()
                .filter(lead -> Side.of(lead.port()).isEmpty())
                .findFirst();
        if (misfit.isPresent()) {
            return Option.of(List.of(Aside.misfit(lock, WISH), Aside.misfit(unlock, WISH)));
        }
        Optional<RelayType> relay = job.listRelays().stream()
                .filter(type -> List.of(lock, unlock).stream()
                        .allMatch(lead -> RelayChoice.meets(type, job.need(carries, carries, lead.port(), coils))))
                .findFirst();
        if (relay.isEmpty()) {
            return Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of("refuse.locks.no-relay", locking.id(), carries, coils),
                            Phrase.of("possible.locks.no-relay")),
                    Aside.allRefused(List.of(lock, unlock), WISH));
        }
        return making.with(new CutIn.Making(
                        carries,
                        job.factorySize(locking),
                        job.run(locking),
                        relay.get(),
                        job.signalDiode(),
                        job.coilFeed(constant.first()),
                        Feed.from(constant.first(), new AddedPartId("lock-fuse"), job.run(constant.first()))))
                .beware(List.of(
                        Phrase.of("caution.locks-cut", locking.id(), unlocking.id()),
                        Phrase.of("caution.locks-last-switch")));
    }

    private Option held(Measurement until) {
        Found.Waiting waiting = new Found.Waiting(until, Phrase.of("hold.cut-place", locking.id(), unlocking.id()));
        return Option.of(Aside.allHeld(List.of(lock, unlock), WISH, waiting));
    }

    private static AddedPartId relay(Lead lead, String which) {
        return Draft.local(lead.id(), "relay" + which);
    }

    private Option legs(Cut lockLeg, Cut unlockLeg, CutIn.Making making) {
        Level lockRest = locking.switching().rest();
        Level unlockRest = unlocking.switching().rest();
        if (lockRest instanceof Level.Ground && unlockRest instanceof Level.Ground) {
            return restingLegs("coupling.legs-at-ground", lockLeg, unlockLeg, Side.HIGH, making);
        }
        if (lockRest instanceof Level.Supply && unlockRest instanceof Level.Supply) {
            return restingLegs("coupling.legs-at-supply", lockLeg, unlockLeg, Side.LOW, making);
        }
        if (lockRest instanceof Level.Open && unlockRest instanceof Level.Open) {
            return floatingLegs(lockLeg, unlockLeg, making);
        }
        return held(Measurements.levelsOf(locking));
    }

    /** One relay a leg: its make contact gives the pole, and the current comes back through the other leg's break contact. */
    private Option restingLegs(String key, Cut lockLeg, Cut unlockLeg, Side pole, CutIn.Making making) {
        Throw locks = new Throw(relay(lock, ""), Optional.of(lockLeg.load()), lockLeg.feed(), Optional.of(pole), false);
        Throw unlocks =
                new Throw(relay(unlock, ""), Optional.of(unlockLeg.load()), unlockLeg.feed(), Optional.of(pole), true);
        return joined(key, List.of(locks), List.of(unlocks), making);
    }

    /** Two relays a direction, so that both legs are driven and the car's switch is off them; locking has the last word. */
    private Option floatingLegs(Cut lockLeg, Cut unlockLeg, CutIn.Making making) {
        AddedPartId unlockOther = relay(unlock, " other leg");
        AddedPartId unlockOwn = relay(unlock, " own leg");
        List<Throw> locks = List.of(
                new Throw(
                        relay(lock, " own leg"),
                        Optional.of(lockLeg.load()),
                        Draft.at(unlockOther, "30"),
                        Optional.of(Side.HIGH),
                        false),
                new Throw(
                        relay(lock, " other leg"),
                        Optional.of(unlockLeg.load()),
                        Draft.at(unlockOwn, "30"),
                        Optional.of(Side.LOW),
                        false));
        List<Throw> unlocks = List.of(
                new Throw(unlockOwn, Optional.empty(), unlockLeg.feed(), Optional.of(Side.HIGH), true),
                new Throw(unlockOther, Optional.empty(), lockLeg.feed(), Optional.of(Side.LOW), true));
        return joined("coupling.legs-floating", locks, unlocks, making);
    }

    /**
     * Two relays in a row in the one wire; the one nearer to what works has the last word, so the poles never meet. A relay that
     * only lets go lies farther away: what gives a pole must not be undone by it.
     */
    private Option singleWire(Cut cut, CutIn.Making making) {
        Optional<Side> locks = given(locking).orElseThrow();
        Optional<Side> unlocks = given(unlocking).orElseThrow();
        boolean lockIsNearer = locks.equals(Optional.of(Side.LOW)) || unlocks.isEmpty();
        Lead near = lockIsNearer ? lock : unlock;
        Lead far = lockIsNearer ? unlock : lock;
        Throw first = new Throw(
                relay(near, ""),
                Optional.of(cut.load()),
                Draft.at(relay(far, ""), "30"),
                lockIsNearer ? locks : unlocks,
                false);
        Throw second = new Throw(relay(far, ""), Optional.empty(), cut.feed(), lockIsNearer ? unlocks : locks, false);
        return joined(
                locks.isPresent() && unlocks.isPresent() ? "coupling.either-pole" : "coupling.pole-or-open",
                List.of(lockIsNearer ? first : second),
                List.of(lockIsNearer ? second : first),
                making);
    }

    private Option joined(String key, List<Throw> locks, List<Throw> unlocks, CutIn.Making making) {
        List<CircuitId> wires = List.of(locking.id(), unlocking.id());
        Phrase because = Phrase.of(
                "rule." + key.substring("coupling.".length()),
                wires,
                making.carries(),
                making.type().name());
        return Option.of(List.of(
                join(lock, key, locking.id(), locks, because, making),
                join(unlock, key, unlocking.id(), unlocks, because, making)));
    }

    private static Decision join(
            Lead lead, String key, CircuitId circuit, List<Throw> relays, Phrase because, CutIn.Making making) {
        Draft draft = CutIn.of(key, lead, Side.of(lead.port()).orElseThrow(), relays, making);
        return new Decision.Join(lead, WISH, List.of(circuit), draft, because, List.of());
    }
}
