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
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.cut.CutComposer;
import org.loomproof.workshop.planner.cut.CutWire;
import org.loomproof.workshop.planner.cut.CutWire.Hand;
import org.loomproof.workshop.planner.cut.CutWord;
import org.loomproof.workshop.planner.cut.Given;
import org.loomproof.workshop.planner.cut.WireEnd;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Duties;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Joint;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.trade.wire.AllowedDrop;
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

    /** Every word that a relay does for; where the output leaks back, last of all not at all. */
    private static List<Option> ways(Job job, List<Lead> leads) {
        List<Option> ways = decide(job, leads);
        Optional<Lead> leaking = leads.stream()
                .filter(l -> l.port() instanceof Port.LowSide out && (out.bodyDiode() || out.clamp()))
                .filter(l -> ways.getFirst().decisions().stream()
                        .anyMatch(d ->
                                d instanceof Decision.Join join && join.of().equals(l)))
                .findFirst();
        if (leaking.isEmpty()) {
            return ways;
        }
        Refusal refusal = new Refusal(
                WISH, Phrase.of("refuse.clamping-output", leaking.get().id()), Phrase.of("possible.clamping-output"));
        List<Option> all = new ArrayList<>(ways);
        all.add(Option.refused(refusal, Aside.allRefused(leads, WISH)));
        return all;
    }

    private static List<Option> decide(Job job, List<Lead> leads) {
        if (!job.wants(WISH)) {
            return List.of(Option.of(
                    leads.stream().map(l -> Aside.notAskedFor(l, WISH)).toList()));
        }
        Optional<Refusal> refusal = vehicleForbids(job.brief().sheet().vehicle());
        if (refusal.isPresent()) {
            return List.of(Option.refused(refusal.get(), Aside.allRefused(leads, WISH)));
        }
        Behaviour behaviour = job.brief().kit().behaviour();
        Optional<Lead> armed =
                leads.stream().filter(l -> isGroundWhileArmed(l, behaviour)).findFirst();
        if (armed.isEmpty()) {
            return List.of(Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of("refuse.interrupt.no-armed-output"),
                            Phrase.of("possible.interrupt.no-armed-output")),
                    Aside.allRefused(leads, WISH)));
        }
        return with(job, leads, armed.get());
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

    private static List<Option> with(Job job, List<Lead> leads, Lead armed) {
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
                    return List.of(held(leads, armed, waiting));
                }
                case Found.Forbidden(var because, var possibleIf) -> {
                    return List.of(
                            Option.refused(new Refusal(WISH, because, possibleIf), Aside.allRefused(leads, WISH)));
                }
            }
        }
        Optional<Circuit> strange = starters.stream()
                .filter(c -> !Family.of(c.switching()).isPlain())
                .findFirst();
        if (strange.isPresent()) {
            return List.of(Option.refused(
                    new Refusal(
                            WISH,
                            Phrase.of(
                                    "refuse.interrupt.family",
                                    strange.get().id(),
                                    Family.of(strange.get().switching()).phrase()),
                            Phrase.of("possible.interrupt.no-key-start")),
                    Aside.allRefused(leads, WISH)));
        }
        return switch (job.finder().ignition(Joint.POWER_TAP)) {
            case Found.Usable usable -> cut(job, leads, armed, starters, usable.first(), lost);
            case Found.Waiting waiting -> List.of(held(leads, armed, waiting));
            case Found.Forbidden(var because, var possibleIf) ->
                List.of(Option.refused(new Refusal(WISH, because, possibleIf), Aside.allRefused(leads, WISH)));
        };
    }

    private static List<Option> cut(
            Job job, List<Lead> leads, Lead armed, List<Circuit> starters, Circuit ignition, List<Phrase> lost) {
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
        List<RelayType> relays =
                fromBox(job, need, starters.size(), reasons).map(List::of).orElseGet(job::listRelays);
        List<CoilSource> sources = List.of(CoilSource.of(armed));
        CutWords.Ways ways = new CutWords(
                        job, sources, starters.stream().map(Circuit::id).toList(), new Amps(0), contact)
                .ways(
                        starters.stream()
                                .map(c -> new CutWire(Given.NOTHING, Hand.STAYS, List.of(Given.NOTHING)))
                                .toList(),
                        relays);
        if (ways.list().isEmpty()) {
            return List.of(
                    noRelay(job, leads, armed, starters.getFirst(), need, most).searched(ways.searched()));
        }
        List<CircuitId> circuits =
                new ArrayList<>(starters.stream().map(Circuit::id).toList());
        circuits.add(ignition.id());
        List<CutComposer.Wire> wires =
                starters.stream().map(c -> wireOf(job, c)).toList();
        List<Phrase> cautions = new ArrayList<>(List.of(
                Phrase.of("caution.starter-only", starters.getFirst().id()),
                Phrase.of("caution.starter-last"),
                Phrase.of("caution.no-wire-piercing")));
        if (most.value() < LEAST_CONTACT_AMPS) {
            cautions.add(Phrase.of(
                    "caution.small-signal-contact", starters.getFirst().id()));
        }
        Feed feed = job.ignitionFeed(ignition);
        List<Option> options = new ArrayList<>();
        for (CutWords.Way way : ways.list()) {
            RelayType relay = way.relay();
            CutComposer composer = new CutComposer(
                    way.word(),
                    sources,
                    wires,
                    new CutComposer.Making(relay, job.signalDiode(), feed, feed, job.run(starters.getFirst()), false));
            Phrase because = Phrase.of(
                    "rule.starter-interrupt",
                    starters.getFirst().id(),
                    most,
                    relay.name(),
                    relay.breakRating().orElseThrow(),
                    ignition.id(),
                    CoilCurrent.most(relay.coil()),
                    Job.ratingOf(armed.port()));
            Decision join = new Decision.Join(
                    armed,
                    WISH,
                    circuits,
                    composer.draft(0, key(way.word().drives().getFirst())),
                    way.guarded(0, because),
                    reasons);
            options.add(Option.of(others(leads, armed, join)).beware(cautions).searched(ways.searched()));
        }
        return options;
    }

    private static String key(CutWord.Drive drive) {
        if (drive.buffered()) {
            return "coupling.break-contact-buffered";
        }
        return drive.isolated() ? "coupling.break-contact-isolated" : "coupling.break-contact";
    }

    private static Amps carries(Job job, Circuit starter) {
        return Family.of(starter.switching()) == Family.POSITIVE
                ? job.draw().atWork(starter)
                : job.draw().intoBody(starter);
    }

    private static CutComposer.Wire wireOf(Job job, Circuit starter) {
        boolean fedFromBefore = job.draw().isFedFromBefore(starter);
        End before = new End.CutBefore(starter.id());
        End after = new End.CutAfter(starter.id());
        SquareMillimetres size = job.factorySize(starter);
        return new CutComposer.Wire(
                starter.id().value(),
                new WireEnd.Cut(fedFromBefore ? after : before, size),
                new WireEnd.Cut(fedFromBefore ? before : after, size),
                carries(job, starter),
                AllowedDrop.STARTER_CUT);
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
