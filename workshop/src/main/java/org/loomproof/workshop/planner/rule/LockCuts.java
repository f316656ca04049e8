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
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.cut.CutComposer;
import org.loomproof.workshop.planner.cut.CutWire;
import org.loomproof.workshop.planner.cut.CutWire.Hand;
import org.loomproof.workshop.planner.cut.Given;
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

    /** The ways to do with both leads; none where the wires can be worked beside the car's switch, or are not known. */
    static List<Option> options(Job job, Lead lock, Lead unlock) {
        if (job.finder().one(CircuitRole.LOCK, Joint.POWER_TAP) instanceof Found.Usable locking
                && job.finder().one(CircuitRole.UNLOCK, Joint.POWER_TAP) instanceof Found.Usable unlocking) {
            return new LockCuts(job, lock, unlock, locking.first(), unlocking.first()).options();
        }
        return List.of();
    }

    /**
     * The driver's door first: a further relay in that door's own unlocking leg, behind the branch to the other doors, so that a
     * first command works its motor alone while both legs of the others rest together.
     */
    static List<Option> driverFirst(Job job, Lead first) {
        return switch (job.finder().one(CircuitRole.LOCK_MOTOR_LEG, Joint.CUT)) {
            case Found.Usable leg -> LegCut.of(job, first, WISH, leg.first(), FUSE, true, "driver-first");
            case Found.Waiting waiting -> List.of(Option.of(List.of(Aside.hold(first, WISH, waiting))));
            case Found.Forbidden barred -> List.of(Option.of(List.of(Aside.refused(first, WISH))));
        };
    }

    /** The same where the sheet gives the legs of the motors and no wires of a switch. */
    static List<Option> ofLegs(Job job, Lead lock, Lead unlock, LockLegs.Pair legs) {
        return new LockCuts(job, lock, unlock, legs.locking(), legs.unlocking()).options();
    }

    private List<Option> options() {
        Sheet sheet = job.brief().sheet();
        Severed both = new Severed(sheet, Set.of(locking.id(), unlocking.id()));
        Optional<Cut> lockCut = both.cut(locking.id());
        Optional<Cut> unlockCut = both.cut(unlocking.id());
        if (lockCut.isPresent()
                && unlockCut.isPresent()
                && both.isOneLoad(lockCut.get().load(), unlockCut.get().load())) {
            return legs(
                    List.of(lockCut.get(), unlockCut.get()),
                    both.draws(lockCut.get().load()));
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
                        .map(List::of)
                        .orElseGet(
                                () -> singleWire(cut.get(), one.draws(cut.get().load())));
            }
        }
        return LegCut.isHeld(job, locking) || LegCut.isHeld(job, unlocking)
                ? List.of(held(Measurements.cutPlaceOf(locking)))
                : List.of();
    }

    /** One wire for both directions: each pole does one of them, or one pole does one and letting go the other. */
    private boolean isOneWireForBoth() {
        Optional<Optional<Side>> locks = LegCut.given(locking);
        Optional<Optional<Side>> unlocks = LegCut.given(unlocking);
        return locks.isPresent() && unlocks.isPresent() && !locks.equals(unlocks);
    }

    private List<Option> guarded(
            List<CutWire> shape, List<Cut> cuts, Amps carries, int coils, String key, Optional<Side> followed) {
        return new Cutting(job, List.of(lock, unlock), WISH, List.of(locking, unlocking), FUSE)
                        .options(shape, cuts, carries, coils, false, (way, composer) -> {
                            Option joined = joined(key, way, composer, carries);
                            return followed.map(gives -> withFollowers(joined, composer, gives))
                                    .orElse(List.of(joined));
                        })
                        .stream()
                        .map(option -> option.beware(List.of(
                                Phrase.of("caution.locks-cut", locking.id(), unlocking.id()),
                                Phrase.of("caution.locks-last-switch"))))
                        .toList();
    }

    private Option held(Measurement until) {
        Found.Waiting waiting = new Found.Waiting(until, Phrase.of("hold.cut-place", locking.id(), unlocking.id()));
        return Option.of(Aside.allHeld(List.of(lock, unlock), WISH, waiting));
    }

    /**
     * Two legs of motors. Where they rest at a pole one relay a leg does: its make contact gives the other pole, and the current
     * comes back through the other leg's break contact. Where they float both legs must be driven.
     */
    private List<Option> legs(List<Cut> cuts, Amps carries) {
        Optional<Given> rest = restOfLegs();
        if (rest.isEmpty()) {
            return List.of(held(Measurements.levelsOf(locking)));
        }
        Given moves = rest.get() == Given.HIGH ? Given.LOW : Given.HIGH;
        Given comesBack = moves == Given.HIGH ? Given.LOW : Given.HIGH;
        List<CutWire> shape = List.of(
                new CutWire(rest.get(), Hand.COMES_BACK, List.of(moves, comesBack)),
                new CutWire(rest.get(), Hand.COMES_BACK, List.of(comesBack, moves)));
        Optional<Side> followed = job.wants(Wish.LOCK_ACTUATORS) ? moves.pole() : Optional.empty();
        return switch (rest.get()) {
            case LOW -> guarded(shape, cuts, carries, 1, "coupling.legs-at-ground", followed);
            case HIGH -> guarded(shape, cuts, carries, 1, "coupling.legs-at-supply", followed);
            case NOTHING -> guarded(shape, cuts, carries, 2, "coupling.legs-floating", followed);
        };
    }

    /** What both legs rest at; empty where they rest apart, or at no pole that is known. */
    private Optional<Given> restOfLegs() {
        Level locks = locking.switching().rest();
        Level unlocks = unlocking.switching().rest();
        if (locks instanceof Level.Ground && unlocks instanceof Level.Ground) {
            return Optional.of(Given.LOW);
        }
        if (locks instanceof Level.Supply && unlocks instanceof Level.Supply) {
            return Optional.of(Given.HIGH);
        }
        return locks instanceof Level.Open && unlocks instanceof Level.Open
                ? Optional.of(Given.NOTHING)
                : Optional.empty();
    }

    /** Doors without a motor: their actuators follow each driven leg. */
    private List<Option> withFollowers(Option legs, CutComposer composer, Side gives) {
        Circuit constant = ((Found.Usable) job.constant()).first();
        return LockActuators.following(
                job,
                legs,
                List.of(
                        CoilSource.leg(lock, composer.driven(0), gives),
                        CoilSource.leg(unlock, composer.driven(1), gives)),
                constant);
    }

    /** Two relays in a row in the one wire; the one nearer to what works has the last word, so the poles never meet. */
    private List<Option> singleWire(Cut cut, Amps carries) {
        Optional<Side> locks = LegCut.given(locking).orElseThrow();
        Optional<Side> unlocks = LegCut.given(unlocking).orElseThrow();
        CutWire wire = new CutWire(Given.NOTHING, Hand.STAYS, List.of(Given.of(locks), Given.of(unlocks)));
        String key = locks.isPresent() && unlocks.isPresent() ? "coupling.either-pole" : "coupling.pole-or-open";
        return guarded(List.of(wire), List.of(cut), carries, 1, key, Optional.empty());
    }

    private Option joined(String key, CutWords.Way way, CutComposer composer, Amps carries) {
        List<CircuitId> wires = List.of(locking.id(), unlocking.id());
        Phrase because = Phrase.of(
                "rule." + key.substring("coupling.".length()),
                wires,
                carries,
                way.relay().name());
        return Option.of(List.of(
                join(lock, locking.id(), composer.draft(0, key), way.guarded(0, because)),
                join(unlock, unlocking.id(), composer.draft(1, key), way.guarded(1, because))));
    }

    private static Decision join(Lead lead, CircuitId circuit, Draft draft, Phrase because) {
        return new Decision.Join(lead, WISH, List.of(circuit), draft, because, List.of());
    }
}
