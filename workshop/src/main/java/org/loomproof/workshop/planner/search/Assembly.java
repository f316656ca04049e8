package org.loomproof.workshop.planner.search;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Run;
import org.loomproof.workshop.planner.rule.Decision;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.planner.rule.Option;
import org.loomproof.workshop.planner.survey.LookAlikes;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.standby.Standby;
import org.loomproof.workshop.words.Phrase;

/** Makes a plan of one answer to every question: numbers and sizes for parts and wires, a hookup for every lead. */
final class Assembly {

    private final Job job;
    private final Map<LeadId, Decision> decisions = new LinkedHashMap<>();
    private final Set<Refusal> refusals = new LinkedHashSet<>();
    private final Set<Phrase> cautions = new LinkedHashSet<>();
    private final Map<LeadId, Draft> drafts = new LinkedHashMap<>();
    private final Ledger ledger = new Ledger();

    private Assembly(Job job) {
        this.job = job;
    }

    /** The plan of those answers. */
    static Plan of(Job job, List<Option> answers, List<Refusal> furtherRefusals, List<Phrase> generalCautions) {
        Assembly assembly = new Assembly(job);
        assembly.cautions.addAll(generalCautions);
        answers.forEach(assembly::take);
        assembly.refusals.addAll(furtherRefusals);
        return assembly.plan();
    }

    private void take(Option option) {
        for (Decision decision : option.decisions()) {
            if (decisions.put(decision.lead(), decision) != null) {
                throw new IllegalStateException("lead " + decision.lead() + " is decided twice");
            }
        }
        refusals.addAll(option.refusals());
        cautions.addAll(option.cautions());
    }

    private Plan plan() {
        List<Lead> leads = job.brief().kit().leads();
        Crossings crossings = new Crossings(job.brief());
        double throughController = 0;
        for (Lead lead : leads) {
            if (decisions.get(lead.id()) instanceof Decision.Join join) {
                Draft draft = crossings.over(join.draft());
                drafts.put(lead.id(), draft);
                ledger.enter(draft);
                throughController += join.draft().throughController().value();
            }
        }
        Sizes sizes = new Sizes(job, ledger, new Amps(throughController));
        List<AddedPart> parts = ledger.listPieces().stream()
                .map(same -> part(same.getFirst(), sizes))
                .toList();
        List<AddedWire> wires =
                ledger.listRuns().stream().map(same -> wire(same, sizes)).toList();
        List<Hookup> hookups = leads.stream().map(this::hookup).toList();
        cautions.addAll(sizes.cautions());
        cautions.addAll(LookAlikes.cautions(job.brief().sheet(), joined(hookups)));
        Plan plan = new Plan(hookups, parts, wires, List.copyOf(refusals), List.of());
        cautions.add(Standby.phrase(job.brief(), plan));
        return plan.withCautions(List.copyOf(cautions));
    }

    private static List<CircuitId> joined(List<Hookup> hookups) {
        return hookups.stream()
                .flatMap(h -> h instanceof Hookup.Connect connect ? connect.circuits().stream() : Stream.empty())
                .toList();
    }

    private AddedPart part(Piece piece, Sizes sizes) {
        AddedPartId id = ledger.number(piece.name());
        return switch (piece) {
            case Piece.Relay(var name, var type) ->
                new AddedPart.Relay(
                        id,
                        type.coil(),
                        type.pullIn(),
                        type.dropOut(),
                        type.makeRating(),
                        type.breakRating().orElseThrow());
            case Piece.Buffer(var name, var type) ->
                new AddedPart.Buffer(
                        id,
                        type.worksOnGround() ? Port.Active.LOW : Port.Active.HIGH,
                        type.input(),
                        type.switchesAt(),
                        type.letsGoAt(),
                        type.closed(),
                        type.rating());
            case Piece.Diode(var name, var type) -> new AddedPart.Diode(id, type.average(), type.reverse());
            case Piece.Zener(var name, var type) -> new AddedPart.Zener(id, type.carries(), type.volts());
            case Piece.Resistor(var name, var resistance) -> new AddedPart.Resistor(id, resistance);
            case Piece.Fuse fuse -> new AddedPart.Fuse(id, sizes.rating(fuse.name()));
            case Piece.Pole pole -> new AddedPart.Pole(id, pole.connector(), pole.to(), sizes.contact(pole));
            case Piece.Load(var name, var extra, var draws, var forward) ->
                new AddedPart.Load(id, extra, draws, forward);
            case Piece.StandbyBattery(var name, var extra, var charging, var charged) ->
                new AddedPart.StandbyBattery(id, extra, charging, charged);
            case Piece.Sender(var name, var extra) -> sender(id, extra);
            case Piece.Pin(var name, var opening) -> new AddedPart.PinSwitch(id, opening);
        };
    }

    /** A contact is drawn at its worst; what a thing draws, as the kit says it usually does. */
    private static AddedPart sender(AddedPartId id, Extra extra) {
        Extra.Contact contact = extra.contact().orElseThrow();
        return new AddedPart.Sender(
                id,
                extra.name(),
                contact.closes() == Extra.Closes.DRY
                        ? Optional.empty()
                        : extra.draws().map(Figure::typical),
                contact.closes(),
                contact.twoStage(),
                contact.closed().high());
    }

    private AddedWire wire(List<Run> same, Sizes sizes) {
        Run run = same.getFirst();
        return new AddedWire(
                ledger.number(run),
                ledger.numbered(run.from()),
                ledger.numbered(run.to()),
                run.length(),
                sizes.size(same));
    }

    private Hookup hookup(Lead lead) {
        Decision decision = decisions.get(lead.id());
        if (decision == null) {
            throw new IllegalStateException("lead " + lead.id() + " is not decided");
        }
        return switch (decision) {
            case Decision.Leave(var hookup) -> hookup;
            case Decision.Join join -> {
                Draft draft = requireNonNull(drafts.get(lead.id()));
                yield new Hookup.Connect(
                        lead.id(),
                        join.serves(),
                        join.circuits(),
                        draft.key(),
                        draft.pieces().stream()
                                .map(p -> ledger.number(p.name()))
                                .distinct()
                                .toList(),
                        draft.runs().stream().map(ledger::number).distinct().toList(),
                        join.because(),
                        join.insteadOf());
            }
        };
    }
}
