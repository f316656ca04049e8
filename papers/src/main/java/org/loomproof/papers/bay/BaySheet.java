package org.loomproof.papers.bay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Mark;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.QrCode;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.meter.expected.ReadingWords;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;

/** The work in the car, station by station. */
public final class BaySheet {

    private final Brief brief;
    private final Plan plan;
    private final Optional<ShopAddress> shop;
    private final Wording words;
    private final JointText joints;
    private final ReadingWords said;
    private final Map<CircuitId, CircuitReadings> readings = new HashMap<>();
    private int number;

    private BaySheet(Brief brief, Plan plan, Optional<ShopAddress> shop, Wording words) {
        this.shop = shop;
        this.brief = brief;
        this.plan = plan;
        this.words = words;
        this.joints = new JointText(new Joints(brief, plan), words);
        this.said = new ReadingWords(brief);
        ExpectedReadings.of(brief, plan).forEach(circuit -> readings.put(circuit.circuit(), circuit));
    }

    /**
     * The sheet as a page.
     *
     * @param shop where its pages are found; without it there are no QR codes
     */
    public static Page page(Brief brief, Plan plan, Optional<ShopAddress> shop, Wording words) {
        return new BaySheet(brief, plan, shop, words).page();
    }

    private Page page() {
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
        Element section = Element.of("section").styled("station").add(Element.of("h2", heading(station)));
        if (station.kind() == Station.Kind.PANEL || station.kind() == Station.Kind.CUT) {
            section = section.add(
                    restraints(),
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
        String check = checkAfter(station);
        return check.isEmpty()
                ? section
                : section.add(
                        Element.of("p", words.of("bay-sheet.goes-back", check)).styled("goes-back"));
    }

    /** What may hurt behind any panel stands at each of them. */
    private Element restraints() {
        String where = brief.sheet().vehicle().restraints();
        return Element.of("p")
                .styled("caution-here")
                .add(
                        Mark.CAUTION.drawn(),
                        new Text(
                                where.isBlank()
                                        ? words.of("bay-sheet.restraints-not-said")
                                        : words.of("bay-sheet.restraints", where)));
    }

    private String heading(Station station) {
        String panel = station.panel().isBlank() ? words.of("bay-sheet.panel-not-said") : station.panel();
        return switch (station.kind()) {
            case GROUND -> words.of("bay-sheet.ground");
            case PANEL -> words.of("bay-sheet.panel", panel);
            case MOUNT -> words.of("bay-sheet.mount");
            case CUT -> words.of("bay-sheet.cut", panel);
            case FUSE -> words.of("bay-sheet.fuse");
        };
    }

    /** What a person operates on the circuits behind a panel must work when it is back. */
    private String checkAfter(Station station) {
        Set<OperableId> operables = new LinkedHashSet<>();
        for (Visit visit : station.visits()) {
            switch (visit) {
                case Visit.Tapped(var id, var wires) ->
                    operables.addAll(brief.sheet().circuit(id).follows());
                case Visit.Cut(var id, var wires) ->
                    operables.addAll(brief.sheet().circuit(id).follows());
                case Visit.Ground ground -> {}
                case Visit.Mounted mounted -> {}
                case Visit.SupplyFuse fuse -> {}
            }
        }
        return operables.stream().map(OperableId::value).collect(Collectors.joining(", "));
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
        switch (visit) {
            case Visit.Ground ground -> said.add(headline(words.of("bay-sheet.do-ground")));
            case Visit.Tapped(var id, var wires) -> {
                said.add(link(id));
                said.add(headline(words.of("bay-sheet.do-tap", name(id))));
                said.add(appearance(id));
            }
            case Visit.Mounted(var part, var wires) ->
                said.add(headline(words.of(
                        "bay-sheet.do-mount",
                        part.value(),
                        words.kind(plan.findPart(part).orElseThrow()))));
            case Visit.Cut(var id, var wires) -> {
                said.add(link(id));
                said.add(headline(words.of("bay-sheet.do-cut", name(id))));
                said.add(appearance(id));
                said.add(Element.of("p", words.of("bay-sheet.cut-how")));
            }
            case Visit.SupplyFuse(var part, var wires) ->
                said.add(headline(words.of("bay-sheet.do-fuse", part.value())));
        }
        List<AddedWire> wires = wires(visit.wires());
        said.add(Element.of(
                "p", words.of("bay-sheet.wires", wires.stream().map(this::wire).toList())));
        List<String> here = joints.at(wires);
        if (!here.isEmpty() && !(visit instanceof Visit.SupplyFuse)) {
            said.add(Parts.sentences("joints-here", here));
        }
        return said;
    }

    /** Opens the same step on the device; where nobody said where the shop's pages are, the step's name alone. */
    private Element link(CircuitId id) {
        Element link = Element.of("div").styled("step-link");
        Element name = Element.of("span", ShopAddress.stepId(id)).styled("step-id");
        return shop.map(pages -> pages.step(brief.order(), id))
                .map(address -> link.add(Element.of("a")
                        .with("href", address)
                        .add(QrCode.of(address, words.of("bay-sheet.qr", address)), name)))
                .orElseGet(() -> link.add(name));
    }

    private List<AddedWire> wires(List<WireId> names) {
        return plan.wires().stream().filter(w -> names.contains(w.id())).toList();
    }

    private String wire(AddedWire wire) {
        return words.of(
                "bay-sheet.wire",
                wire.id().value(),
                words.size(wire.size()),
                words.end(wire.from()),
                words.end(wire.to()));
    }

    private Element headline(String text) {
        return Element.of("p").styled("headline").add(Element.of("strong", text));
    }

    private String name(CircuitId id) {
        return words.circuit(brief.sheet().circuit(id));
    }

    private Element appearance(CircuitId id) {
        Circuit circuit = brief.sheet().circuit(id);
        Element line = Element.of("p").styled("circuit");
        line = circuit.colour().isPresent()
                ? line.addAll(Parts.colour(circuit.colour().get(), words))
                : line.add(words.of("bench-card.colour-not-said") + " ");
        String size = circuit.size().map(s -> words.size(s.typical()) + ", ").orElse("");
        String where = words.where(circuit.where());
        return line.add(size + (where.isEmpty() ? words.of("where.not-said") : where));
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
