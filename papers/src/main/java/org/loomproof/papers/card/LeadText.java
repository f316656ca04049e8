package org.loomproof.papers.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.loom.LeadMark;
import org.loomproof.workshop.goods.loom.LoomMarks;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.words.Phrase;

/** What stands on the bench card of one lead. */
final class LeadText {

    private final Brief brief;
    private final Plan plan;
    private final Wording words;
    private final LoomMarks marks;
    private final Map<WireId, LeadId> firstLeads = new HashMap<>();

    LeadText(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.words = words;
        this.marks = LoomMarks.of(brief, plan);
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                connect.wires().forEach(wire -> firstLeads.putIfAbsent(wire, connect.lead()));
            }
        }
    }

    BenchLead of(Lead lead, List<Lead> samePlug) {
        Optional<Hookup> hookup = plan.findHookup(lead.id());
        List<Markup> work = new ArrayList<>(hookup.map(h -> work(lead, h)).orElseGet(this::undecided));
        work.addAll(hookup.map(this::why).orElse(List.of()));
        return new BenchLead(lead, hookup.map(BenchCard::kind).orElse("undecided"), appearance(lead, samePlug), work);
    }

    private List<Markup> appearance(Lead lead, List<Lead> samePlug) {
        List<Markup> look = new ArrayList<>();
        Element colour = Element.of("p").styled("colour");
        look.add(
                lead.colour().isPresent()
                        ? colour.addAll(Parts.colour(lead.colour().orElseThrow(), words))
                        : colour.add(words.of("bench-card.colour-not-said")));
        String size = words.size(lead.size().typical());
        look.add(Element.of("p", words.of("bench-card.role-size", words.role(lead.role()), size))
                .styled("role"));
        marks.find(lead.id())
                .ifPresent(mark -> look.add(Element.of("p", said(mark)).styled("look-alike")));
        List<LeadId> elsewhere = brief.kit().leads().stream()
                .filter(other -> !samePlug.contains(other))
                .filter(other -> lead.colour().isPresent() && other.colour().equals(lead.colour()))
                .map(Lead::id)
                .toList();
        if (!elsewhere.isEmpty()) {
            look.add(Element.of("p", words.of("bench-card.look-alike-elsewhere", elsewhere))
                    .styled("role alike-elsewhere"));
        }
        return look;
    }

    private String said(LeadMark mark) {
        return switch (mark) {
            case LeadMark.Twist(var alike, var with, var panel) ->
                words.of("bench-card.look-alike.twist", alike, with, panel);
            case LeadMark.Label(var alike) -> words.of("bench-card.look-alike.label", alike);
            case LeadMark.TrimAfter(var alike) -> words.of("bench-card.look-alike.trim-after", alike);
        };
    }

    private List<Markup> undecided() {
        return List.of(headline("undecided", words.of("bench-card.undecided")));
    }

    private List<Markup> work(Lead lead, Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect h -> connect(lead, h);
            case Hookup.Trim h -> List.of(headline("trim", words.of("bench-card.trim-how")));
            case Hookup.CapAndKeep h -> List.of(headline("cap-and-keep", words.of("bench-card.cap-how")));
            case Hookup.Hold h ->
                List.of(
                        headline("hold", words.of("bench-card.hold-how", words.wish(h.serves()))),
                        Element.of(
                                "p", words.of("bench-card.hold-until", h.until().what())),
                        Element.of("p", words.of("bench-card.reading", h.until().name()))
                                .styled("write-in"));
        };
    }

    private Element headline(String kind, String rest) {
        return Element.of("p")
                .styled("headline")
                .add(Element.of("strong", words.of("do." + kind)), new Text(" " + rest));
    }

    private List<Markup> connect(Lead lead, Hookup.Connect connect) {
        List<AddedWire> wires = plan.wires().stream()
                .filter(w -> connect.wires().contains(w.id()))
                .toList();
        List<Markup> work = new ArrayList<>();
        work.add(headline("connect", target(connect, wires)));
        for (CircuitId id : connect.circuits()) {
            work.add(circuit(brief.sheet().circuit(id), wires));
        }
        Element details = Element.of("dl").styled("details");
        details = details.addAll(Parts.fact(words.of("bench-card.through"), through(connect)));
        if (!wires.isEmpty()) {
            Element list = Element.of("ul").styled("wires");
            for (AddedWire wire : wires) {
                list = list.add(Element.of("li", wire(wire, lead)));
            }
            details = details.add(
                    Element.of("dt", words.of("bench-card.wires")),
                    Element.of("dd").add(list));
            details = details.add(
                    Element.of("dt", words.of("bench-card.joints-here")),
                    Element.of("dd")
                            .add(Parts.sentences(
                                    "joints-here", new JointText(new Joints(brief, plan), words).at(wires))));
        }
        List<Choice> set = brief.kit().standing(plan.settings(), lead.id());
        if (!set.isEmpty()) {
            String said = set.stream().map(c -> c.option() + ": " + c.setting()).collect(Collectors.joining("; "));
            details = details.addAll(Parts.fact(words.of("bench-card.set"), said));
        }
        work.add(details);
        return work;
    }

    private String target(Hookup.Connect connect, List<AddedWire> wires) {
        if (!connect.circuits().isEmpty()) {
            return connect.circuits().stream()
                    .map(id -> words.circuit(brief.sheet().circuit(id)))
                    .collect(Collectors.joining(", ", words.of("bench-card.to") + " ", ""));
        }
        if (!connect.parts().isEmpty()) {
            return connect.parts().stream()
                    .map(this::named)
                    .collect(Collectors.joining(", ", words.of("bench-card.to") + " ", ""));
        }
        boolean toBody = wires.stream().anyMatch(w -> isBody(w.from()) || isBody(w.to()));
        return toBody ? words.of("bench-card.to-body") : words.of("bench-card.as-plugged");
    }

    private static boolean isBody(End end) {
        return end instanceof End.Body;
    }

    private Element circuit(Circuit circuit, List<AddedWire> wires) {
        Element line = Element.of("p").styled("circuit");
        if (circuit.colour().isPresent()) {
            line = line.addAll(Parts.colour(circuit.colour().orElseThrow(), words));
        }
        List<String> said = new ArrayList<>();
        circuit.size().ifPresent(size -> said.add(words.size(size.typical())));
        String where = words.where(circuit.where());
        said.add(where.isEmpty() ? words.of("where.not-said") : where);
        line = line.add(" " + String.join(", ", said) + ". ");
        return line.add(Element.of("b", jointAt(circuit.id(), wires)).styled("joint"));
    }

    private String jointAt(CircuitId circuit, List<AddedWire> wires) {
        boolean cut = false;
        boolean tapped = false;
        for (AddedWire wire : wires) {
            for (End end : List.of(wire.from(), wire.to())) {
                switch (end) {
                    case End.Tap e -> tapped |= e.circuit().equals(circuit);
                    case End.CutBefore e -> cut |= e.circuit().equals(circuit);
                    case End.CutAfter e -> cut |= e.circuit().equals(circuit);
                    case End.OfLead e -> {}
                    case End.OfPart e -> {}
                    case End.Body e -> {}
                }
            }
        }
        if (cut) {
            return words.of("bench-card.cut-here");
        }
        return tapped ? words.of("bench-card.tap-here") : words.of("bench-card.through-others");
    }

    private String through(Hookup.Connect connect) {
        String coupling = words.coupling(connect.coupling());
        if (connect.parts().isEmpty()) {
            return coupling;
        }
        String parts = connect.parts().stream().map(this::named).collect(Collectors.joining(", "));
        return words.of("bench-card.coupling-of", coupling, parts);
    }

    private String named(AddedPartId id) {
        return plan.findPart(id)
                .map(part -> words.of("part.named", id.value(), words.kind(part)))
                .orElse(id.value());
    }

    /** A wire that an earlier lead brought along already is not to be added twice. */
    private String wire(AddedWire wire, Lead lead) {
        String text = words.of(
                "bench-card.wire", wire.id().value(), end(wire.from(), lead), end(wire.to(), lead), words.wire(wire));
        LeadId first = firstLeads.getOrDefault(wire.id(), lead.id());
        return first.equals(lead.id()) ? text : words.of("bench-card.wire-of", text, first.value());
    }

    private String end(End end, Lead lead) {
        return end.equals(new End.OfLead(lead.id())) ? words.of("end.this-lead") : words.end(end);
    }

    private List<Markup> why(Hookup hookup) {
        List<Markup> why = new ArrayList<>();
        why.add(Element.of("p", words.of(hookup.because())).styled("because"));
        for (Phrase lost : hookup.insteadOf()) {
            why.add(Element.of("p", words.of("bench-card.instead-of", lost)).styled("instead-of"));
        }
        return why;
    }
}
