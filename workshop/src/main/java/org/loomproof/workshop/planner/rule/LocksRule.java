package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * The locks are worked at the wires of the lock switch. Both directions stand or fall together: a car that can be locked and
 * not unlocked is worse than one without the wish.
 */
public final class LocksRule implements Rule {

    private static final Wish WISH = Wish.LOCKS;

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.LOCK, LeadRole.UNLOCK, LeadRole.DRIVER_UNLOCK);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(WISH, Wish.LOCK_ACTUATORS);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        if (leads.isEmpty()) {
            return List.of();
        }
        if (!job.wants(WISH)) {
            return List.of(Question.settled(
                    "locks",
                    Option.of(
                            leads.stream().map(l -> Aside.notAskedFor(l, WISH)).toList())));
        }
        List<Option> ways = bothWays(job, leads).stream()
                .map(way -> FactoryAlarm.leftAlone(job, way))
                .toList();
        return List.of(new Question(
                "locks",
                job.wants(Wish.LOCK_ACTUATORS)
                        ? ways.stream().map(LocksRule::orWithoutActuators).toList()
                        : ways));
    }

    /** Actuators that were asked for and hang on nothing are turned down. */
    private static Option orWithoutActuators(Option way) {
        boolean hung = way.decisions().stream()
                .anyMatch(d -> d instanceof Decision.Join join
                        && join.draft().pieces().stream().anyMatch(Piece.Load.class::isInstance));
        return hung
                ? way
                : way.and(Option.refused(
                        new Refusal(
                                Wish.LOCK_ACTUATORS,
                                Phrase.of("refuse.actuators.nothing-to-follow"),
                                Phrase.of("possible.actuators.nothing-to-follow")),
                        List.of()));
    }

    private static List<Option> bothWays(Job job, List<Lead> leads) {
        Optional<Lead> lock = first(leads, LeadRole.LOCK);
        Optional<Lead> unlock = first(leads, LeadRole.UNLOCK);
        List<Lead> pair = Stream.of(lock, unlock).flatMap(Optional::stream).toList();
        if (lock.isPresent() && unlock.isPresent()) {
            List<Option> cutIn = LockCuts.options(job, lock.get(), unlock.get());
            if (!cutIn.isEmpty() && !cutIn.getFirst().refusals().isEmpty()) {
                Option refused = cutIn.getFirst();
                List<Option> added = LockActuators.options(
                        job,
                        lock.get(),
                        unlock.get(),
                        refused.refusals().getFirst().because());
                return withTheRest(leads, pair, added.isEmpty() ? List.of(refused) : added);
            }
            if (!cutIn.isEmpty()) {
                return withDriverFirst(job, leads, lock.get(), unlock.get(), cutIn);
            }
            if (hasNone(job, CircuitRole.LOCK) && hasNone(job, CircuitRole.UNLOCK)) {
                if (!hasNone(job, CircuitRole.LOCK_MOTOR_LEG)) {
                    return withTheRest(leads, pair, onlyLegs(job, lock.get(), unlock.get()));
                }
                List<Option> added =
                        LockActuators.options(job, lock.get(), unlock.get(), Phrase.of("rule.actuators.no-locks"));
                if (!added.isEmpty()) {
                    return withTheRest(leads, pair, added);
                }
            }
        }
        List<List<Option>> ways = pair.stream().map(lead -> ways(job, lead)).toList();
        Optional<Refusal> refusal = ways.stream()
                .flatMap(List::stream)
                .flatMap(o -> o.refusals().stream())
                .findFirst();
        if (refusal.isPresent() && lock.isPresent() && unlock.isPresent()) {
            List<Option> added =
                    LockActuators.options(job, lock.get(), unlock.get(), Phrase.of("rule.actuators.instead"));
            if (!added.isEmpty()) {
                return withTheRest(leads, pair, added);
            }
        }
        if (refusal.isPresent()) {
            return List.of(Option.refused(refusal.get(), Aside.allRefused(leads, WISH)));
        }
        Optional<Hookup.Hold> held = ways.stream()
                .flatMap(way -> way.getFirst().decisions().stream())
                .flatMap(LocksRule::heldBy)
                .findFirst();
        if (held.isPresent()) {
            Found.Waiting waiting =
                    new Found.Waiting(held.get().until(), held.get().because());
            return withTheRest(leads, pair, List.of(Option.of(Aside.allHeld(pair, WISH, waiting))));
        }
        return withTheRest(leads, pair, together(ways));
    }

    /** Every way of one lead with every way of the other, those first that stay nearest to what each would take. */
    private static List<Option> together(List<List<Option>> ways) {
        List<List<Option>> all = List.of(List.of());
        for (List<Option> way : ways) {
            all = all.stream()
                    .flatMap(chosen -> way.stream()
                            .map(option -> Stream.concat(chosen.stream(), Stream.of(option))
                                    .toList()))
                    .toList();
        }
        return all.stream()
                .sorted(Comparator.comparingInt(chosen -> IntStream.range(0, chosen.size())
                        .map(i -> ways.get(i).indexOf(chosen.get(i)))
                        .sum()))
                .map(chosen -> chosen.stream().reduce(Option.of(List.of()), Option::and))
                .toList();
    }

    /** Where both legs are cut, a lead for the driver's door alone may lie in that door's own leg. */
    private static List<Option> withDriverFirst(Job job, List<Lead> leads, Lead lock, Lead unlock, List<Option> cutIn) {
        Optional<Lead> driver = first(leads, LeadRole.DRIVER_UNLOCK);
        boolean joined = cutIn.getFirst().decisions().stream().allMatch(Decision.Join.class::isInstance);
        if (driver.isEmpty() || !joined) {
            return withTheRest(leads, List.of(lock, unlock), cutIn);
        }
        return withTheRest(
                leads,
                List.of(lock, unlock, driver.get()),
                together(List.of(cutIn, LockCuts.driverFirst(job, driver.get()))));
    }

    /** The sheet gives motor legs and no wires of a switch: they are cut like those, once it is known which is which. */
    private static List<Option> onlyLegs(Job job, Lead lock, Lead unlock) {
        List<Option> apart = LockLegs.of(job)
                .map(legs -> LockCuts.ofLegs(job, lock, unlock, legs))
                .orElse(List.of());
        if (!apart.isEmpty()) {
            return apart;
        }
        List<Circuit> legs = job.finder().list(CircuitRole.LOCK_MOTOR_LEG);
        return List.of(Option.of(Aside.allHeld(
                List.of(lock, unlock),
                WISH,
                new Found.Waiting(
                        Measurements.legsApart(legs),
                        Phrase.of(
                                "hold.legs-alike",
                                legs.stream().map(Circuit::id).toList())))));
    }

    private static List<Option> withTheRest(List<Lead> leads, List<Lead> pair, List<Option> options) {
        return options.stream().map(option -> withTheRest(leads, pair, option)).toList();
    }

    /** Any further lead of these roles is kept. */
    private static Option withTheRest(List<Lead> leads, List<Lead> pair, Option option) {
        List<Decision> decisions = new ArrayList<>(option.decisions());
        leads.stream()
                .filter(l -> !pair.contains(l))
                .map(l -> l.role() == LeadRole.DRIVER_UNLOCK
                        ? Aside.cap(l, Phrase.of("cap.no-driver-leg"))
                        : Aside.another(l, first(leads, l.role()).orElseThrow()))
                .forEach(decisions::add);
        return new Option(decisions, option.refusals(), option.cautions(), option.searches());
    }

    private static Optional<Lead> first(List<Lead> leads, LeadRole role) {
        return leads.stream().filter(l -> l.role() == role).findFirst();
    }

    private static Stream<Hookup.Hold> heldBy(Decision decision) {
        return decision instanceof Decision.Leave(Hookup.Hold hold) ? Stream.of(hold) : Stream.empty();
    }

    private static boolean hasNone(Job job, CircuitRole role) {
        return job.finder().list(role).isEmpty();
    }

    private static List<Option> ways(Job job, Lead lead) {
        CircuitRole role = lead.role() == LeadRole.LOCK ? CircuitRole.LOCK : CircuitRole.UNLOCK;
        Found wires = FactoryAlarm.beside(job, role, job.finder().one(role, Joint.POWER_TAP));
        return FactoryOutputs.options(job, lead, WISH, wires, AllowedDrop.LOCK_MOTOR);
    }
}
