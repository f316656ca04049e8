package org.loomproof.papers.bay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.meter.expected.ReadingWords;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.plan.Plan;

/** The work in the car, station by station. */
public final class BaySheet {

    private final Brief brief;
    private final Wording words;
    private final VisitText text;
    private final ReadingWords said;
    private final Map<CircuitId, CircuitReadings> readings = new HashMap<>();
    private int number;

    private BaySheet(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.words = words;
        this.text = new VisitText(brief, plan, words);
        this.said = new ReadingWords(brief);
        ExpectedReadings.of(brief, plan).forEach(circuit -> readings.put(circuit.circuit(), circuit));
    }

    /**
     * The sheet as a page.
     *
     * @param shop where its pages are found; without it there are no QR codes
     */
    public static Page page(Brief brief, Plan plan, Optional<ShopAddress> shop, Wording words) {
        Page page = new BaySheet(brief, plan, words).page(plan);
        return shop.map(pages -> StepCodes.on(page, pages.job(brief.order()))).orElse(page);
    }

    private Page page(Plan plan) {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("bay-sheet.title"), brief, words));
        content.add(Element.of("p", words.of("bay-sheet.meter")).styled("joints"));
        content.add(Parts.cautions(words.of("bay-sheet.cautions"), plan.cautions(), words));
        brief.order()
                .hiddenPlace()
                .ifPresent(place -> content.add(Element.of("p", words.of("bay-sheet.override-place", place))
                        .styled("caution-here")));
        BayOrder.of(brief, plan).stations().forEach(station -> content.add(section(station)));
        return Page.of(words.of("bay-sheet.title"), brief, "bay-sheet", content, words);
    }

    private Element section(Station station) {
        Element section = Element.of("section").styled("station").add(Element.of("h2", text.heading(station)));
        if (station.kind() == Station.Kind.PANEL || station.kind() == Station.Kind.CUT) {
            section = section.add(
                    text.restraints(),
                    Element.of("p", words.of("bay-sheet.fasteners")).styled("write-in"));
        }
        Element body = Element.of("tbody");
        for (Visit visit : station.visits()) {
            body = body.add(row(visit));
        }
        section = section.add(Element.of("table")
                .styled("visits")
                .add(
                        Parts.tableHead(
                                words.of("bench-card.done"),
                                words.of("bay-sheet.step"),
                                words.of("bay-sheet.work"),
                                words.of("bay-sheet.measured")),
                        body));
        String check = text.checkAfter(station);
        return check.isEmpty()
                ? section
                : section.add(
                        Element.of("p", words.of("bay-sheet.goes-back", check)).styled("goes-back"));
    }

    private Element row(Visit visit) {
        number++;
        return Element.of("tr")
                .add(
                        Parts.tick(words.of("bay-sheet.tick", number)),
                        Element.of("th", String.valueOf(number)).with("scope", "row"),
                        Element.of("td").styled("work").addAll(work(visit)),
                        Element.of("td").styled("measured").addAll(measured(visit)));
    }

    private List<Markup> work(Visit visit) {
        List<Markup> said = new ArrayList<>();
        visit.findCircuit().ifPresent(id -> said.add(StepCodes.named(id)));
        said.add(Element.of("p").styled("headline").add(Element.of("strong", text.headline(visit))));
        visit.findCircuit().ifPresent(id -> said.add(text.appearance(id)));
        if (visit instanceof Visit.Cut) {
            said.add(Element.of("p", words.of("bay-sheet.cut-how")));
        }
        said.add(Element.of("p", words.of("bay-sheet.wires", text.wires(visit))));
        List<String> here = text.joints(visit);
        if (!here.isEmpty()) {
            said.add(Parts.sentences("joints-here", here));
        }
        return said;
    }

    /**
     * What the meter must show before anything is joined, and after a cut at both of its ends, with room for what it does show.
     */
    private List<Markup> measured(Visit visit) {
        return switch (visit) {
            case Visit.Ground ground -> blanks("bay-sheet.reads-ground");
            case Visit.Tapped(var id, var wires) -> expected(found(id).whole());
            case Visit.Mounted mounted -> blanks("bay-sheet.works");
            case Visit.Cut(var id, var wires) -> {
                List<Markup> lines = new ArrayList<>(expected(found(id).whole()));
                lines.addAll(blanks("bay-sheet.evidence"));
                for (Touch.End end : List.of(Touch.End.BEFORE_CUT, Touch.End.AFTER_CUT)) {
                    lines.add(Element.of("p", words.of(ReadingWords.at(new Touch(id, end)))));
                    lines.addAll(expected(found(id).cut().stream()
                            .filter(reading -> reading.at().end() == end)
                            .toList()));
                }
                yield lines;
            }
            case Visit.SupplyFuse fuse -> blanks("bay-sheet.sleep-current");
        };
    }

    private CircuitReadings found(CircuitId id) {
        return Objects.requireNonNull(readings.get(id));
    }

    private List<Markup> expected(List<ExpectedReading> there) {
        return said.lines(there).stream()
                .map(line -> (Markup) Element.of("p", words.of(line)).styled("write-in reading"))
                .toList();
    }

    private List<Markup> blanks(String... keys) {
        List<Markup> lines = new ArrayList<>();
        for (String key : keys) {
            lines.add(Element.of("p", words.of(key)).styled("write-in"));
        }
        return lines;
    }
}
