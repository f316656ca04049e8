package org.loomproof.papers.record;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Markup;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Parts;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.words.Messages;

/** Every joint with its number, how it was made and room for its place and picture; then the drawings as fitted. */
public final class WarrantyRecord {

    private static final String JOINT = "joint";
    private static final String NO_PICTURE = "\u00A0";

    private final Brief brief;
    private final Wording words;
    private final Joints joints;
    private final JointText text;

    private WarrantyRecord(Brief brief, Plan plan, Wording words) {
        this.brief = brief;
        this.words = words;
        this.joints = new Joints(brief, plan);
        this.text = new JointText(joints, words);
    }

    /**
     * The record as a page, without pictures.
     *
     * @param drawings the schematic, sheet by sheet
     */
    public static Page page(Brief brief, Plan plan, List<Element> drawings, Wording words) {
        return new WarrantyRecord(brief, plan, words).page(drawings);
    }

    /**
     * A record with pictures of the work, which are taken when it was written long before.
     *
     * @param photos one whose name begins with a joint's is told at that joint
     */
    public static Page with(Page record, List<Photo> photos) {
        if (photos.isEmpty()) {
            return record;
        }
        Wording words = new Wording(Messages.in(record.language()));
        Page numbered = record.changed(
                element -> JOINT.equals(element.attributes().get("class")) ? numbered(element, photos) : element);
        List<Markup> content = new ArrayList<>(numbered.content());
        content.add(drawingsIn(content), pictures(photos, words));
        return numbered.with(content);
    }

    /** Where the drawings begin: each of them has a sheet of its own, behind everything else. */
    private static int drawingsIn(List<Markup> content) {
        return (int) content.stream()
                .takeWhile(markup -> !(markup instanceof Element element
                        && "drawings".equals(element.attributes().get("class"))))
                .count();
    }

    private static Element numbered(Element row, List<Photo> photos) {
        List<Markup> cells = new ArrayList<>(row.children());
        if (cells.getFirst() instanceof Element head
                && head.children().getFirst() instanceof Text name
                && cells.removeLast() instanceof Element cell) {
            cells.add(new Element(cell.name(), cell.attributes(), List.of(new Text(numbers(name.value(), photos)))));
        }
        return new Element(row.name(), row.attributes(), cells);
    }

    private Page page(List<Element> drawings) {
        List<Markup> content = new ArrayList<>();
        content.add(Parts.heading(words.of("warranty.title"), brief, words));
        content.add(Element.of("section")
                .styled("cautions")
                .add(Element.of("h2", words.of("warranty.for-the-shop")), Element.of("p", words.of("warranty.keep"))));
        content.add(places());
        content.add(joints());
        content.add(Parts.drawings("schematic", words.of("schematic.title"), drawings));
        return Page.of(words.of("warranty.title"), brief, "warranty", content, words);
    }

    private Element places() {
        Element section = Element.of("section").add(Element.of("h2", words.of("warranty.places")));
        section = section.add(blank("warranty.controller-at"));
        section = section.add(brief.order()
                .overridePlace()
                .map(place -> Element.of("p", words.of("override-slip.place", place)))
                .orElseGet(() -> blank("warranty.override-at")));
        for (String key : List.of("warranty.fitted-by", "warranty.fitted-on", "warranty.odometer")) {
            section = section.add(blank(key));
        }
        return section;
    }

    private Element blank(String key) {
        return Element.of("p", words.of(key)).styled("write-in");
    }

    private Element joints() {
        Element body = Element.of("tbody");
        for (PlacedJoint joint : joints.list()) {
            String wires = joint.wires().stream().map(WireId::value).collect(Collectors.joining(", "));
            body = body.add(Element.of("tr")
                    .styled(JOINT)
                    .add(
                            Element.of("th", joint.name()).with("scope", "row"),
                            Parts.cell(words.of("warranty.place"), place(joint.place())),
                            Parts.cell(words.of("bench-card.wires"), wires),
                            Parts.cell(words.of("warranty.how"), text.how(joint)),
                            Parts.cell(words.of("warranty.picture"), NO_PICTURE)));
        }
        return Element.of("section")
                .add(
                        Element.of("h2", words.of("warranty.joints"))
                                .add(Element.of(
                                        "small",
                                        words.of(
                                                "pick-list.count", joints.list().size()))),
                        Element.of("table")
                                .styled("list")
                                .add(
                                        Parts.tableHead(
                                                words.of("warranty.joint"),
                                                words.of("warranty.place"),
                                                words.of("bench-card.wires"),
                                                words.of("warranty.how"),
                                                words.of("warranty.picture")),
                                        body));
    }

    /** The numbers of the pictures that show a joint; room for one where there is none. */
    private static String numbers(String joint, List<Photo> photos) {
        String numbers = IntStream.range(0, photos.size())
                .filter(i -> photos.get(i).shows(joint))
                .mapToObj(i -> String.valueOf(i + 1))
                .collect(Collectors.joining(", "));
        return numbers.isEmpty() ? NO_PICTURE : numbers;
    }

    private static Element pictures(List<Photo> photos, Wording words) {
        Element section = Element.of("section").styled("photos").add(Element.of("h2", words.of("warranty.pictures")));
        for (int i = 0; i < photos.size(); i++) {
            Photo photo = photos.get(i);
            String caption = words.of("warranty.picture-of", i + 1, photo.name());
            section = section.add(Element.of("figure")
                    .add(
                            Element.of("img")
                                    .with("src", "data:image/jpeg;base64," + photo.jpeg())
                                    .with("width", String.valueOf(photo.width()))
                                    .with("height", String.valueOf(photo.height()))
                                    .with("alt", caption),
                            Element.of("p", caption)));
        }
        return section;
    }

    private String place(End place) {
        return switch (place) {
            case End.Tap(var circuit) ->
                onCircuit(place, words.where(brief.sheet().circuit(circuit).where()));
            case End.CutBefore(var circuit) ->
                onCircuit(place, words.where(brief.sheet().circuit(circuit).where()));
            case End.CutAfter(var circuit) ->
                onCircuit(place, words.where(brief.sheet().circuit(circuit).where()));
            case End.Body body -> words.end(place);
            case End.OfLead lead -> words.end(place);
            case End.OfPart part -> words.end(place);
        };
    }

    private String onCircuit(End place, String where) {
        return where.isEmpty() ? words.end(place) : words.of("warranty.at", words.end(place), where);
    }
}
