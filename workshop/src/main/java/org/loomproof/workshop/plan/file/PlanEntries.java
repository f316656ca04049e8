package org.loomproof.workshop.plan.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Reads the plan of a plan file: parts first, then wires between them, then what happens to each lead. */
final class PlanEntries {

    private final MappingCursor in;
    private final Optional<Brief> brief;
    private final Messages words;
    private final PlanNames names;
    private final FigureReader figures = FigureReader.of(PartDefaults.none(), Certainty.STATED);
    private final List<AddedPart> parts = new ArrayList<>();
    private final List<AddedWire> wires = new ArrayList<>();
    private final Map<LeadId, MappingCursor> decisions = new HashMap<>();
    private final Map<LeadId, Cursor> wiredLeads = new HashMap<>();

    /** While an end cannot be read, a lead without a wire may be the one that was meant. */
    private boolean everyEndIsKnown = true;

    PlanEntries(MappingCursor in, Optional<Brief> brief, Messages words) {
        this.in = in;
        this.brief = brief;
        this.words = words;
        this.names = new PlanNames(brief);
    }

    Plan plan() {
        List<Choice> settings = settings();
        readParts();
        readWires();
        List<Hookup> hookups = hookups();
        List<Refusal> refusals = refusals(hookups);
        List<Phrase> cautions =
                in.items("cautions").stream().map(Written::phrase).toList();
        in.close();
        return new Plan(settings, hookups, parts, wires, refusals, cautions);
    }

    /** What is set otherwise than it comes; what says nothing new is left out. */
    private List<Choice> settings() {
        References named = new References();
        List<Choice> settings = new ArrayList<>();
        for (Cursor item : in.items("settings")) {
            MappingCursor entry = item.mapping();
            Optional<Cursor> optionAt = entry.need("option");
            Optional<Cursor> settingAt = entry.need("set-to");
            Optional<KitOption> option = optionAt.flatMap(names::option);
            entry.close();
            if (optionAt.isPresent() && settingAt.isPresent() && option.isPresent()) {
                named.give(option.get().name(), optionAt.get());
                settingAt
                        .get()
                        .reference(byName(option.get()))
                        .filter(setting -> !setting.equals(option.get().usual()))
                        .ifPresent(
                                setting -> settings.add(new Choice(option.get().name(), setting.name())));
            }
        }
        return settings;
    }

    private static Map<String, KitOption.Setting> byName(KitOption option) {
        Map<String, KitOption.Setting> settings = new LinkedHashMap<>();
        option.settings().forEach(setting -> settings.put(setting.name(), setting));
        return settings;
    }

    private void readParts() {
        References given = new References();
        PartReader reader = new PartReader(figures, names);
        for (Cursor item : in.items("parts")) {
            MappingCursor entry = item.mapping();
            String id = entry.id("id");
            entry.find("id").ifPresent(at -> giveName(given, id, at));
            reader.read(entry, id).ifPresent(part -> {
                names.add(part);
                parts.add(part);
            });
        }
    }

    /** The first words of an end that is no part would make {@code lead 85} mean two things. */
    private static void giveName(References given, String id, Cursor at) {
        if (Set.of(EndText.LEAD, EndText.CIRCUIT, EndText.BODY).contains(id)) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.part-id"));
        } else {
            given.give(id, at);
        }
    }

    private void readWires() {
        References given = new References();
        EndReader ends = new EndReader(names, brief.isPresent());
        for (Cursor item : in.items("wires")) {
            MappingCursor entry = item.mapping();
            String id = entry.id("id");
            entry.find("id").ifPresent(at -> given.give(id, at));
            Optional<Cursor> fromAt = entry.need("from");
            Optional<Cursor> toAt = entry.need("to");
            Optional<End> from = fromAt.flatMap(ends::read);
            Optional<End> to = toAt.flatMap(ends::read);
            everyEndIsKnown &= from.isPresent() && to.isPresent();
            AddedWire wire = new AddedWire(
                    new WireId(id),
                    from.orElse(new End.Body()),
                    to.orElse(new End.Body()),
                    figures.value(entry, "length", Unit.METRES),
                    figures.value(entry, "size", Unit.SQUARE_MILLIMETRES));
            entry.close();
            if (from.isPresent() && from.equals(to)) {
                toAt.ifPresent(at -> at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.two-ends")));
            }
            fromAt.ifPresent(at -> noteLead(from, at));
            toAt.ifPresent(at -> noteLead(to, at));
            names.add(wire);
            wires.add(wire);
        }
    }

    private void noteLead(Optional<End> end, Cursor at) {
        if (end.isPresent() && end.get() instanceof End.OfLead(LeadId lead)) {
            wiredLeads.putIfAbsent(lead, at);
        }
    }

    private List<Hookup> hookups() {
        References decided = new References();
        HookupReader reader = new HookupReader(names, decided, words);
        List<Hookup> hookups = new ArrayList<>();
        for (Cursor item : in.itemsNeeded("hookups")) {
            MappingCursor entry = item.mapping();
            Optional<Hookup> hookup = reader.read(entry);
            // A lead that is decided twice has its problem; the plan itself takes only one.
            if (hookup.isPresent() && decisions.putIfAbsent(hookup.get().lead(), entry) == null) {
                hookups.add(hookup.get());
            }
        }
        for (Lead lead : names.listLeads()) {
            if (!decided.isGiven(lead.id().value())) {
                in.find("hookups")
                        .ifPresent(at -> at.missing(
                                Phrase.of("problem.wanted.hookup", lead.id()), Phrase.of("problem.hint.none")));
            }
        }
        for (Hookup hookup : hookups) {
            checkWired(hookup);
        }
        List<LeadId> order = names.listLeads().stream().map(Lead::id).toList();
        hookups.sort(Comparator.comparingInt(hookup -> order.indexOf(hookup.lead())));
        return hookups;
    }

    /** A connected lead has a wire, unless it goes to an extra by its own plug; any other lead has none. */
    private void checkWired(Hookup hookup) {
        Optional<Cursor> wire = Optional.ofNullable(wiredLeads.get(hookup.lead()));
        boolean connects = switch (hookup) {
            case Hookup.Connect connect -> true;
            case Hookup.Trim trim -> false;
            case Hookup.CapAndKeep cap -> false;
            case Hookup.Hold hold -> false;
        };
        boolean needsWire = names.findLead(hookup.lead().value())
                .filter(lead -> everyEndIsKnown && !(lead.port() instanceof Port.ToExtra))
                .isPresent();
        if (connects && wire.isEmpty() && needsWire) {
            Optional.ofNullable(decisions.get(hookup.lead()))
                    .ifPresent(at -> at.missing("wires", Phrase.of("problem.wanted.wire-of-lead", hookup.lead())));
        } else if (!connects) {
            wire.ifPresent(at ->
                    at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.connected-lead", hookup.lead())));
        }
    }

    private List<Refusal> refusals(List<Hookup> hookups) {
        Set<Wish> served = new HashSet<>();
        for (Hookup hookup : hookups) {
            if (hookup instanceof Hookup.Connect connect) {
                served.add(connect.serves());
            }
        }
        References named = new References();
        List<Refusal> refusals = new ArrayList<>();
        for (Cursor item : in.items("refusals")) {
            MappingCursor entry = item.mapping();
            Wish wish = entry.word("wish", Wish.class);
            entry.find("wish").ifPresent(at -> {
                named.give(wish.word(), at);
                if (served.contains(wish)) {
                    at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.refused-or-served", wish.word()));
                }
            });
            refusals.add(new Refusal(
                    wish,
                    entry.need("because").map(Written::phrase).orElse(Written.nothing()),
                    entry.find("possible-if").map(Written::phrase).orElse(Written.nothing())));
            entry.close();
        }
        return refusals;
    }
}
