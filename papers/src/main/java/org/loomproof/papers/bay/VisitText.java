package org.loomproof.papers.bay;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Mark;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;

/** Says what is done at each place in the car, on paper and on a screen. */
public final class VisitText {

    private final Brief brief;
    private final Plan plan;
    private final Wording words;
    private final JointText joints;

    public VisitText(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.words = words;
        this.joints = new JointText(new Joints(brief, plan), words);
    }

    /** What may hurt behind any panel stands at each of them. */
    public Element restraints() {
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

    /** Where the work of a station is. */
    public String heading(Station station) {
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
    public String checkAfter(Station station) {
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

    /** What is done, in one line. */
    public String headline(Visit visit) {
        return switch (visit) {
            case Visit.Ground ground -> words.of("bay-sheet.do-ground");
            case Visit.Tapped(var id, var wires) -> words.of("bay-sheet.do-tap", name(id));
            case Visit.Mounted(var part, var wires) ->
                words.of(
                        "bay-sheet.do-mount",
                        part.value(),
                        words.kind(plan.findPart(part).orElseThrow()));
            case Visit.Cut(var id, var wires) -> words.of("bay-sheet.do-cut", name(id));
            case Visit.SupplyFuse(var part, var wires) -> words.of("bay-sheet.do-fuse", part.value());
        };
    }

    /** The added wires that are worked on, each with its size and its two ends. */
    public List<String> wires(Visit visit) {
        return added(visit.wires()).stream().map(this::wire).toList();
    }

    /** How each joint there is made; nothing where the wires are joined already. */
    public List<String> joints(Visit visit) {
        return visit instanceof Visit.SupplyFuse ? List.of() : joints.at(added(visit.wires()));
    }

    private List<AddedWire> added(List<WireId> names) {
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

    /** What a circuit is called. */
    public String name(CircuitId id) {
        return words.circuit(brief.sheet().circuit(id));
    }

    /** How a factory wire is known and where it is: its insulation drawn, its size, its place. */
    public Element appearance(CircuitId id) {
        Circuit circuit = brief.sheet().circuit(id);
        Element line = Element.of("p").styled("circuit");
        line = circuit.colour().isPresent()
                ? line.addAll(Parts.colour(circuit.colour().get(), words))
                : line.add(words.of("bench-card.colour-not-said") + " ");
        String size = circuit.size().map(s -> words.size(s.typical()) + ", ").orElse("");
        String where = words.where(circuit.where());
        return line.add(size + (where.isEmpty() ? words.of("where.not-said") : where));
    }
}
