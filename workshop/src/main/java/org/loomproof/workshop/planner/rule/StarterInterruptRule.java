package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.BreakContact;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.words.Phrase;

/**
 * The starter interrupt: the break contact of a relay in the cut starter wire, its coil between the fused ignition and an
 * output that goes to ground while armed. Only the starter wire is ever cut. A controller without supply cannot hold the
 * relay, so its loss never strands the driver, and with the key out nothing flows.
 */
public final class StarterInterruptRule implements Rule {

    private static final Wish WISH = Wish.STARTER_INTERRUPT;

    /** Under this a contact for large currents is not kept bright. Common practice, no published source. */
    private static final double LEAST_CONTACT_AMPS = 0.1;

    @Override
    public Set<LeadRole> roles() {
        return Set.of(LeadRole.STARTER_INTERRUPT);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(WISH);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return leads.isEmpty() ? List.of() : List.of(new Question("starter-interrupt", ways(job, leads)));
    }

    /** As it is; where the output leaks back, also behind a diode; last of all not at all. */
    private static List<Option> ways(Job job, List<Lead> leads) {
        Option plain = decide(job, leads, false);
        Optional<Lead> leaking = leads.stream()
                .filter(l -> l.port() instanceof Port.LowSide out && (out.bodyDiode() || out.clamp()))
                .filter(l -> plain.decisions().stream()
                        .anyMatch(d ->
                                d instanceof Decision.Join join && join.of().equals(l)))
                .findFirst();
        if (leaking.isEmpty()) {
            return List.of(plain);
        }
        Refusal refusal = new Refusal(
                WISH, Phrase.of("refuse.clamping-output", leaking.get().id()), Phrase.of("possible.clamping-output"));
        return List.of(plain, decide(job, leads, true), Option.refused(refusal, Aside.allRefused(leads, WISH)));
    }

    private static Option decide(Job job, List<Lead> leads, boolean isolated) {
        if (!job.wants(WISH)) {
            return Option.of(leads.stream().map(l -> Aside.notAskedFor(l, WISH)).toList());
        }
        Optional<Refusal> refusal = vehicleForbids(job.brief().sheet().vehicle());
        if (refusal.isPresent()) {
            return Option.refused(refusal.get(), Aside.allRefused(leads, WISH));
        }
        Behaviour behaviour = job.brief().kit().behaviour();
        Optional<Lead> armed =
                leads.stream().filter(l -> isGroundWhileArmed(l, behaviour)).findFirst();
        if (armed.isEmpty()) {
            return Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of("refuse.interrupt.no-armed-output"),
                            Phrase.of("possible.interrupt.no-armed-output")),
                    Aside.allRefused(leads, WISH));
        }
        return with(job, leads, armed.get(), isolated);
    }

    private static Optional<Refusal> vehicleForbids(VehicleFacts vehicle) {
        if (vehicle.drive() != VehicleFacts.Drive.COMBUSTION) {
            return Optional.of(new Refusal(
                    WISH, Phrase.of("refuse.interrupt.high-voltage"), Phrase.of("possible.interrupt.high-voltage")));
        }
        return switch (vehicle.start()) {
            case KEY -> Optional.empty();
            case BUTTON, DATA_ONLY ->
                Optional.of(new Refusal(
                        WISH,
                        Phrase.of("refuse.interrupt.no-key-start"),
                        Phrase.of("possible.interrupt.no-key-start")));
        };
    }

    /** On while armed and never while disarmed, arming or overridden. */
    private static boolean isGroundWhileArmed(Lead lead, Behaviour behaviour) {
        return lead.port() instanceof Port.LowSide
                && behaviour.isOn(lead.id(), ControllerState.ARMED)
                && !behaviour.isOn(lead.id(), ControllerState.DISARMED)
                && !behaviour.isOn(lead.id(), ControllerState.ARMING)
                && !behaviour.isOn(lead.id(), ControllerState.OVERRIDE);
    }

    private static Option with(Job job, List<Lead> leads, Lead armed, boolean isolated) {
        List<Circuit> starters = new ArrayList<>();
        List<Phrase> lost = new ArrayList<>();
        List<CircuitRole> roles = job.finder().list(CircuitRole.SECOND_STARTER).isEmpty()
                ? List.of(CircuitRole.STARTER)
                : List.of(CircuitRole.STARTER, CircuitRole.SECOND_STARTER);
        for (CircuitRole role : roles) {
            switch (job.finder().one(role, Joint.CUT)) {
                case Found.Usable usable -> {
                    starters.add(usable.first());
                    lost.addAll(usable.passedOver());
                }
                case Found.Waiting waiting -> {
                    return held(leads, armed, waiting);
                }
                case Found.Forbidden(var because, var possibleIf) -> {
                    return Option.refused(new Refusal(WISH, because, possibleIf), Aside.allRefused(leads, WISH));
                }
            }
        }
        Optional<Circuit> strange = starters.stream()
                .filter(c -> !Family.of(c.switching()).isPlain())
                .findFirst();
        if (strange.isPresent()) {
            return Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of(
                                    "refuse.interrupt.family",
                                    strange.get().id(),
                                    Family.of(strange.get().switching()).phrase()),
                            Phrase.of("possible.interrupt.no-key-start")),
                    Aside.allRefused(leads, WISH));
        }
        return switch (job.finder().ignition(Joint.POWER_TAP)) {
            case Found.Usable usable -> cut(job, leads, armed, starters, usable.first(), lost, isolated);
            case Found.Waiting waiting -> held(leads, armed, waiting);
            case Found.Forbidden(var because, var possibleIf) ->
                Option.refused(new Refusal(WISH, because, possibleIf), Aside.allRefused(leads, WISH));
        };
    }

    private static Option cut(
            Job job,
            List<Lead> leads,
            Lead armed,
            List<Circuit> starters,
            Circuit ignition,
            List<Phrase> lost,
            boolean isolated) {
        Amps most = starters.stream()
                .map(c -> carries(job, c))
                .reduce((a, b) -> a.value() >= b.value() ? a : b)
                .orElseThrow();
        Amps contact = starters.stream()
                .map(c -> Duties.of(c).rating(carries(job, c)))
                .reduce((a, b) -> a.value() >= b.value() ? a : b)
                .orElseThrow();
        RelayChoice.Need need = job.need(new Amps(0), contact, armed.port(), starters.size());
        List<Phrase> reasons = new ArrayList<>(lost);
        Optional<RelayType> relay =
                fromBox(job, need, starters.size(), reasons).or(() -> RelayChoice.first(job.listRelays(), need));
        if (relay.isEmpty()) {
            return noRelay(job, leads, armed, starters.getFirst(), need, most);
        }
        List<CircuitId> circuits =
                new ArrayList<>(starters.stream().map(Circuit::id).toList());
        circuits.add(ignition.id());
        Decision join = new Decision.Join(
                armed,
                WISH,
                circuits,
                BreakContact.of(
                        armed,
                        starters.stream().map(c -> cutOf(job, c)).toList(),
                        job.ignitionFeed(ignition),
                        relay.get(),
                        job.signalDiode(),
                        isolated),
                Phrase.of(
                        "rule.starter-interrupt",
                        starters.getFirst().id(),
                        most,
                        relay.get().name(),
                        relay.get().breakRating().orElseThrow(),
                        ignition.id(),
                        CoilCurrent.most(relay.get().coil()),
                        Job.ratingOf(armed.port())),
                reasons);
        List<Phrase> cautions = new ArrayList<>(List.of(
                Phrase.of("caution.starter-only", starters.getFirst().id()),
                Phrase.of("caution.starter-last"),
                Phrase.of("caution.no-wire-piercing")));
        if (most.value() < LEAST_CONTACT_AMPS) {
            cautions.add(Phrase.of(
                    "caution.small-signal-contact", starters.getFirst().id()));
        }
        return Option.of(others(leads, armed, join)).beware(cautions);
    }

    private static Amps carries(Job job, Circuit starter) {
        return Family.of(starter.switching()) == Family.POSITIVE
                ? job.draw().atWork(starter)
                : job.draw().intoBody(starter);
    }

    private static BreakContact.Cut cutOf(Job job, Circuit starter) {
        boolean fedFromBefore = job.draw().isFedFromBefore(starter);
        End before = new End.CutBefore(starter.id());
        End after = new End.CutAfter(starter.id());
        return new BreakContact.Cut(
                starter.id().value(),
                fedFromBefore ? before : after,
                fedFromBefore ? after : before,
                carries(job, starter),
                job.run(starter),
                job.factorySize(starter));
    }

    /** The relay out of the kit's box, when its contact is rated for the current; otherwise the reason is kept. */
    private static Optional<RelayType> fromBox(Job job, RelayChoice.Need need, int wanted, List<Phrase> reasons) {
        List<Extra> boxed = job.listExtras(Extra.Kind.INTERRUPT_RELAY);
        for (Extra extra : boxed) {
            if (extra.coil().isEmpty() || extra.breakRating().isEmpty()) {
                reasons.add(Phrase.of("lost.relay-not-stated", extra.name()));
                continue;
            }
            RelayType type = new RelayType(
                    extra.name(),
                    extra.coil().get().typical(),
                    Relays.usual().pullIn(),
                    Relays.usual().dropOut(),
                    extra.makeRating().orElse(extra.breakRating().get()).low(),
                    Optional.of(extra.breakRating().get().low()),
                    Relays.usual().contact());
            if (boxed.size() < wanted) {
                reasons.add(Phrase.of("lost.too-few-relays", extra.name(), boxed.size(), wanted));
            } else if (!RelayChoice.contactsCarry(type, need)) {
                reasons.add(Phrase.of(
                        "lost.break-contact-too-small",
                        extra.name(),
                        extra.breakRating().get().low(),
                        need.breaking()));
            } else if (!RelayChoice.meets(type, need)) {
                reasons.add(Phrase.of(
                        "lost.coil-does-not-fit", extra.name(), CoilCurrent.most(type.coil()), need.driver()));
            } else {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }

    private static Option noRelay(
            Job job, List<Lead> leads, Lead armed, Circuit starter, RelayChoice.Need need, Amps most) {
        boolean contactExists = job.listRelays().stream().anyMatch(r -> RelayChoice.contactsCarry(r, need));
        if (contactExists) {
            return Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of("refuse.output-too-weak", armed.id(), need.driver()),
                            Phrase.of("possible.output-too-weak")),
                    Aside.allRefused(leads, WISH));
        }
        if (isLoadUncertain(starter)) {
            return held(
                    leads,
                    armed,
                    new Found.Waiting(
                            Measurements.currentOf(starter), Phrase.of("hold.starter-current", starter.id(), most)));
        }
        return Option.refused(
                new Refusal(
                        WISH,
                        Phrase.of("refuse.interrupt.no-relay", starter.id(), most),
                        Phrase.of("possible.interrupt.no-relay")),
                Aside.allRefused(leads, WISH));
    }

    private static boolean isLoadUncertain(Circuit starter) {
        return starter.paths().stream()
                .flatMap(List::stream)
                .anyMatch(step ->
                        (step instanceof PathStep.Load load && load.resistance().isRange())
                                || (step instanceof PathStep.Coil coil
                                        && coil.resistance().isRange()));
    }

    private static Option held(List<Lead> leads, Lead armed, Found.Waiting waiting) {
        return Option.of(others(leads, armed, Aside.hold(armed, WISH, waiting)));
    }

    private static List<Decision> others(List<Lead> leads, Lead armed, Decision decision) {
        return leads.stream()
                .map(l -> l.equals(armed) ? decision : Aside.another(l, armed))
                .toList();
    }
}
