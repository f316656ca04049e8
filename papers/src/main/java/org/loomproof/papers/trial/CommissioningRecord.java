package org.loomproof.papers.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.standby.Standby;

/**
 * How the car left the bay: everything it did before, tried at check-in and again; readings with what is usual or computed
 * beside them; the last checks; who, and when.
 */
public final class CommissioningRecord {

    /** A charged battery at rest. Common practice, no published source, as are the next two. */
    private static final List<Volts> REST = List.of(new Volts(12.4), new Volts(12.7));

    /** The least while the starter turns. */
    private static final Volts CRANKING = new Volts(9.6);

    /** With the engine running. */
    private static final List<Volts> CHARGING = List.of(new Volts(13.6), new Volts(14.6));

    /** When each thing is tried. */
    private static final List<String> TURNS = List.of("check-in", "unfed", "disarmed", "refitted");

    private final Brief brief;
    private final Plan plan;
    private final Wording words;

    private CommissioningRecord(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.words = words;
    }

    /** The record as a page. */
    public static Page page(Brief brief, Plan plan, Wording words) {
        return new CommissioningRecord(brief, plan, words).page();
    }

    private Page page() {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("commissioning.title"), brief, words).add(Parts.signature(words)));
        content.add(Parts.cautions(words.of("commissioning.cautions"), List.of(), words));
        content.add(asBefore());
        content.add(readings());
        content.add(last());
        return Page.of(words.of("commissioning.title"), brief, "commissioning", content, words);
    }

    private Element asBefore() {
        Element body = Element.of("tbody");
        for (Operable operable : brief.sheet().operables()) {
            for (String position :
                    operable.positions().subList(1, operable.positions().size())) {
                body = body.add(tried(operable, position));
            }
        }
        List<String> titles =
                new ArrayList<>(List.of(words.of("commissioning.operate"), words.of("commissioning.works")));
        TURNS.forEach(turn -> titles.add(words.of("commissioning.turn." + turn)));
        return Element.of("section")
                .add(
                        Element.of("h2", words.of("commissioning.as-before")),
                        Element.of("p", words.of("commissioning.as-before-how")).styled("joints"),
                        Element.of("table")
                                .styled("list turns")
                                .add(Parts.tableHead(titles.toArray(String[]::new)), body));
    }

    private Element tried(Operable operable, String position) {
        String done = words.of("situation.moved", operable.id().value(), position);
        String works = brief.sheet().circuits().stream()
                .filter(circuit -> circuit.follows().contains(operable.id()))
                .map(words::circuit)
                .collect(Collectors.joining(", "));
        Element row = Element.of("tr")
                .add(
                        Element.of("th", done).with("scope", "row"),
                        Parts.cell(
                                words.of("commissioning.works"),
                                works.isEmpty() ? words.of("commissioning.nothing-known") : works));
        for (String turn : TURNS) {
            String title = words.of("commissioning.turn." + turn);
            row = row.add(
                    Parts.tick(words.of("commissioning.tick", done, title)).with("data-title", title));
        }
        return row;
    }

    private Element readings() {
        Element body = Element.of("tbody");
        body = body.add(reading(
                words.of("commissioning.at-rest"),
                words.of("commissioning.between", words.figure(REST.getFirst()), words.figure(REST.getLast()))));
        body = body.add(reading(
                words.of("commissioning.cranking"), words.of("commissioning.at-least", words.figure(CRANKING))));
        body = body.add(reading(
                words.of("commissioning.charging"),
                words.of(
                        "commissioning.between", words.figure(CHARGING.getFirst()), words.figure(CHARGING.getLast()))));
        body = body.add(reading(
                words.of("commissioning.sleep"),
                words.of(
                        "commissioning.sleep-usual",
                        words.figure(Standby.added(brief, plan, ControllerState.ARMED)),
                        words.figure(brief.sheet().vehicle().sleepCurrent().typical()))));
        for (AddedWire wire : plan.wires()) {
            if (wire.from() instanceof End.Body || wire.to() instanceof End.Body) {
                body = body.add(reading(
                        words.of("commissioning.ground", wire.id().value()), words.of("commissioning.ground-usual")));
            }
        }
        for (var cut : JoinedCircuits.cut(plan)) {
            body = body.add(reading(
                    words.of("commissioning.cut", words.circuit(brief.sheet().circuit(cut))),
                    words.of("commissioning.cut-usual")));
        }
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Fuse fuse) {
                body = body.add(
                        reading(words.of("commissioning.fuse", fuse.id().value()), words.figure(fuse.rating())));
            }
        }
        return Element.of("section")
                .add(
                        Element.of("h2", words.of("commissioning.readings")),
                        Element.of("table")
                                .styled("list readings")
                                .add(
                                        Parts.tableHead(
                                                words.of("commissioning.what"),
                                                words.of("commissioning.usual"),
                                                words.of("commissioning.turn.check-in"),
                                                words.of("commissioning.now"),
                                                words.of("commissioning.by")),
                                        body));
    }

    private Element reading(String what, String usual) {
        return Element.of("tr")
                .add(
                        Element.of("th", what).with("scope", "row"),
                        Parts.cell(words.of("commissioning.usual"), usual),
                        blank("commissioning.turn.check-in"),
                        blank("commissioning.now"),
                        blank("commissioning.by"));
    }

    private Element blank(String key) {
        return Parts.cell(words.of(key), "\u00A0").styled("blank");
    }

    private Element last() {
        Element body = Element.of("tbody");
        for (String check : List.of("tests", "repeat", "panels", "lamps", "range", "settings", "slip")) {
            String said = words.of("commissioning.last." + check);
            body = body.add(Element.of("tr").add(Parts.tick(said), Element.of("td", said), blank("commissioning.by")));
        }
        return Element.of("section")
                .add(
                        Element.of("h2", words.of("commissioning.last")),
                        Element.of("table")
                                .styled("list last")
                                .add(
                                        Parts.tableHead(
                                                words.of("bench-card.done"),
                                                words.of("commissioning.check"),
                                                words.of("commissioning.by")),
                                        body),
                        Element.of("p", words.of("commissioning.passed")).styled("write-in"));
    }
}
