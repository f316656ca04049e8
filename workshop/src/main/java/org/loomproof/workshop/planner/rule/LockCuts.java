package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
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
import org.loomproof.workshop.planner.coupling.AddedActuators.Leg;
import org.loomproof.workshop.planner.coupling.CutIn;
import org.loomproof.workshop.planner.coupling.CutIn.Throw;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.planner.survey.Severed;
import org.loomproof.workshop.planner.survey.Severed.Cut;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Phrase;

/**
 * Locks whose wires cannot be worked beside the car's own switch, because that switch holds them: the two legs of reversing
 * motors, and a single wire that takes either pole. They are cut behind the last switch, and relays are put in.
 */
final class LockCuts {

    private static final Wish WISH = Wish.LOCKS;

    /** The contacts of all relays in lock wires hang behind one fuse. */
    private static final AddedPartId FUSE = new AddedPartId("lock-fuse");

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
    static Option withDriverFirst(Job job, Lead first, Option both) {
        return switch (job.finder().one(CircuitRole.LOCK_MOTOR_LEG, Joint.CUT)) {
            case Found.Usable leg -> both.and(LegCut.of(job, first, WISH, leg.first(), FUSE, true, "driver-first"));
            case Found.Waiting waiting -> both.and(Option.of(List.of(Aside.hold(first, WISH, waiting))));
            case Found.Forbidden barred -> both.and(Option.of(List.of(Aside.refused(first, WISH))));
        };
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
                HeldWire wires = new HeldWire(job, WISH, List.of(lock, unlock), List.of(locking, unlocking));
                return wires.objection()
                        .or(() -> Optional.of(
                                guarded(one.draws(cut.get().load()), 1, making -> singleWire(cut.get(), making))));
            }
        }
        return LegCut.isHeld(job, locking) || LegCut.isHeld(job, unlocking)
                ? Optional.of(held(Measurements.cutPlaceOf(locking)))
                : Optional.empty();
    }

    /** One wire for both directions: each pole does one of them, or one pole does one and letting go the other. */
    private boolean isOneWireForBoth() {
        Optional<Optional<Side>> locks = LegCut.given(locking);
        Optional<Optional<Side>> unlocks = LegCut.given(unlocking);
        return locks.isPresent() && unlocks.isPresent() && !locks.equals(unlocks);
    }

    /** How many relays a leg takes: one where the other leg rests at a pole through the car's switch, two where it floats. */
    private int legRelays() {
        return locking.switching().rest() instanceof Level.Open ? 2 : 1;
    }

    private Option guarded(Amps carries, int coils, Cutting.Making making) {
        return new Cutting(job, List.of(lock, unlock), WISH, List.of(locking, unlocking), FUSE)
                .option(carries, coils, making)
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
            Option legs = restingLegs("coupling.legs-at-ground", lockLeg, unlockLeg, Side.HIGH, making);
            return job.wants(Wish.LOCK_ACTUATORS) ? withFollowers(legs) : legs;
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

    /** Doors without a motor: their actuators follow each driven leg by a relay of their own. */
    private Option withFollowers(Option legs) {
        Circuit constant = ((Found.Usable) job.constant()).first();
        List<Decision> decisions = new ArrayList<>();
        for (Decision decision : legs.decisions()) {
            Decision.Join join = (Decision.Join) decision;
            Leg leg = join.of().equals(lock) ? Leg.LOCKS : Leg.UNLOCKS;
            Optional<Draft> follower = LockActuators.following(job, join.of(), leg, relay(join.of(), ""), constant);
            if (follower.isEmpty()) {
                return legs;
            }
            decisions.add(new Decision.Join(
                    join.of(),
                    join.serves(),
                    join.circuits(),
                    join.draft().and(follower.get(), "coupling.legs-and-followers"),
                    Phrase.of("rule.legs-and-followers", join.circuits(), join.because()),
                    join.insteadOf()));
        }
        return new Option(decisions, legs.refusals(), legs.cautions())
                .and(new Option(
                        List.of(),
                        List.of(),
                        List.of(Phrase.of("caution.actuators-free"), Phrase.of("caution.actuators-way-out"))));
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
        Optional<Side> locks = LegCut.given(locking).orElseThrow();
        Optional<Side> unlocks = LegCut.given(unlocking).orElseThrow();
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
