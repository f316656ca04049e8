package org.loomproof.papers.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.connector.Workmanship;
import org.loomproof.workshop.trade.wire.Copper;

/** The loom plug by plug, each lead once, with a box to tick; then the parts and the wires to add. */
public final class BenchCard {

    /** Conductors on either side of where the gap at a crimp changes: 20 and 18 AWG. */
    private static final SquareMillimetres THIN = Copper.area(20);

    private static final SquareMillimetres THICK = Copper.area(18);

    private final Brief brief;
    private final Plan plan;
    private final Wording words;

    private BenchCard(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.words = words;
    }

    /** The card as a page. */
    public static Page page(Brief brief, Plan plan, Wording words) {
        return new BenchCard(brief, plan, words).page();
    }

    private Page page() {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("bench-card.title"), brief, words).add(Parts.signature(words)));
        content.add(tally());
        content.add(Element.of(
                        "p",
                        words.of(
                                "bench-card.joints",
                                words.joint(brief.order().shop().joint())))
                .styled("joints"));
        content.add(Element.of(
                        "p",
                        words.of(
                                "bench-card.crimps",
                                gap(Workmanship.leastGap()),
                                gap(Workmanship.mostGap(THIN)),
                                gap(Workmanship.mostGap(THICK)),
                                Math.round(100 * Workmanship.retentionShare()),
                                words.size(THICK)))
                .styled("joints"));
        content.add(Parts.cautions(words.of("bench-card.cautions"), plan.cautions(), words));
        BenchLead.byPlug(brief, plan, words).forEach((plug, leads) -> content.add(plug(plug, leads)));
        content.add(new PartTable(plan, words).section());
        content.add(new WireTable(brief, plan, words).section());
        return Page.of(words.of("bench-card.title"), brief, "bench-card", content, words);
    }

    private String gap(Metres gap) {
        return words.millimetres(gap);
    }

    private Element tally() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (String kind : List.of("connect", "trim", "cap-and-keep", "hold", "undecided")) {
            counts.put(kind, 0);
        }
        for (Lead lead : brief.kit().leads()) {
            counts.merge(plan.findHookup(lead.id()).map(BenchCard::kind).orElse("undecided"), 1, Integer::sum);
        }
        Element list = Element.of("ul").styled("tally");
        for (Map.Entry<String, Integer> entry : counts.entrySet()) {
            if (entry.getValue() > 0) {
                list = list.add(Element.of("li")
                        .add(
                                Element.of("b", String.valueOf(entry.getValue())),
                                new Text(" " + words.of("do." + entry.getKey()))));
            }
        }
        return list;
    }

    /** The word of a decision in files, styles and message keys. */
    static String kind(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect h -> "connect";
            case Hookup.Trim h -> "trim";
            case Hookup.CapAndKeep h -> "cap-and-keep";
            case Hookup.Hold h -> "hold";
        };
    }

    private Element plug(String plug, List<BenchLead> leads) {
        Element body = Element.of("tbody", leads.stream().map(this::row).toList());
        Element table = Element.of("table")
                .styled("leads")
                .add(
                        Parts.tableHead(
                                words.of("bench-card.done"),
                                words.of("bench-card.position"),
                                words.of("bench-card.lead"),
                                words.of("bench-card.what-to-do")),
                        body);
        return Element.of("section")
                .styled("plug")
                .add(
                        Element.of("h2", words.of("bench-card.plug", plug))
                                .add(Element.of("small", words.of("bench-card.lead-count", leads.size()))),
                        table);
    }

    private Element row(BenchLead lead) {
        String id = lead.lead().id().value();
        return Element.of("tr")
                .styled("lead do-" + lead.kind())
                .add(
                        Parts.tick(words.of("bench-card.tick", id)),
                        Element.of("td")
                                .styled("position")
                                .add(Element.of("b", lead.lead().position()), Element.of("small", id)),
                        Element.of("td").styled("wire").addAll(lead.look()),
                        Element.of("td").styled("work").addAll(lead.work()));
    }
}
