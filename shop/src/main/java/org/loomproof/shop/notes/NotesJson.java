package org.loomproof.shop.notes;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Finding;
import org.loomproof.intake.correct.Suggestion;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.fact.VehicleFact;
import org.loomproof.intake.kit.LeadReading;
import org.loomproof.intake.sheet.HeldBack;
import org.loomproof.intake.sheet.Merge;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.words.Messages;

/**
 * Notes that were read, as JSON for other programs; the shapes are fixed by {@code docs/schemas/sheet-notes.schema.json} and
 * {@code docs/schemas/kit-notes.schema.json}.
 */
public final class NotesJson {

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Messages messages;

    /** Words come from these messages. */
    public NotesJson(Messages messages) {
        this.messages = messages;
    }

    /** Wiring notes as a document. */
    public String of(SheetReading reading) {
        ObjectNode root = root("loomproof sheet notes 1", reading.source());
        ArrayNode entries = root.putArray("entries");
        reading.review().forEach(line -> {
            ObjectNode node = entries.addObject();
            entry(node, line.entry());
            suggestions(node.putArray("suggestions"), line.suggestions());
        });
        ArrayNode held = root.putArray("held-back");
        for (HeldBack each : reading.draft().heldBack()) {
            origin(held.addObject(), each.entry().origin())
                    .put("reason", Words.of(each.reason()))
                    .put("ask", messages.text(each.ask()));
        }
        ArrayNode findings = root.putArray("findings");
        for (Finding finding : reading.notes().findings()) {
            ObjectNode node = findings.addObject()
                    .put("kind", Words.of(finding.kind()))
                    .put("says", messages.text(finding.says()))
                    .put("ask", messages.text(finding.ask()));
            ArrayNode about = node.putArray("entries");
            finding.entries().forEach(about::add);
        }
        passages(root.putArray("loose"), reading.notes().loose());
        ArrayNode missing = root.putArray("missing");
        reading.missing().forEach(m -> {
            ArrayNode wishes = missing.addObject().put("role", m.role().word()).putArray("wishes");
            m.wishes().forEach(w -> wishes.add(w.word()));
        });
        ArrayNode vehicle = root.putArray("vehicle");
        reading.vehicle().agreed().forEach(fact -> fact(vehicle.addObject(), fact, true));
        reading.vehicle().differing().forEach(fact -> fact(vehicle.addObject(), fact, false));
        ArrayNode facts = root.putArray("missing-facts");
        reading.missingFacts().keySet().forEach(facts::add);
        reading.merge().ifPresent(merge -> merge(root.putObject("merge"), merge));
        return written(root.put("sheet", reading.text()).put("table", reading.table()));
    }

    /** A list of leads as a document. */
    public String of(KitReading reading) {
        ObjectNode root = root("loomproof kit notes 1", reading.source());
        ArrayNode leads = root.putArray("leads");
        for (LeadReading lead : reading.notes().leads()) {
            ObjectNode node = origin(leads.addObject(), lead.origin())
                    .put("id", lead.id())
                    .put("name", lead.name())
                    .put("plug", lead.plug())
                    .put("position", lead.position());
            field(node, "role", lead.role(), a -> a.value().word());
            field(node, "colour", lead.colour(), a -> a.value().letters());
            field(node, "size", lead.size(), a -> QuantityWriter.write(a.value()));
            lead.port().ifPresent(port -> node.put("port", Words.of(port)));
            lead.contact().ifPresent(contact -> node.put("relay-contact", Words.of(contact)));
            lead.rating().ifPresent(amps -> node.put("rating", QuantityWriter.write(amps)));
            lead.pulse().ifPresent(time -> node.put("pulse", QuantityWriter.write(time)));
            ArrayNode asks = node.putArray("asks");
            lead.asks().forEach(ask -> asks.add(messages.text(ask)));
            passages(node.putArray("left-over"), lead.leftOver());
        }
        passages(root.putArray("loose"), reading.notes().loose());
        return written(root.put("kit", reading.text()));
    }

    private static void merge(ObjectNode node, Merge merge) {
        ArrayNode agreements = node.putArray("agreements");
        merge.agreements().forEach(id -> agreements.add(id.value()));
        ArrayNode conflicts = node.putArray("conflicts");
        merge.conflicts()
                .forEach(c -> conflicts
                        .addObject()
                        .put("there", c.there().value())
                        .put("beside", c.beside().value()));
        ArrayNode added = node.putArray("added");
        merge.added().forEach(id -> added.add(id.value()));
    }

    private ObjectNode root(String format, SourceLines source) {
        return mapper.createObjectNode()
                .put("format", format)
                .put("source", source.name())
                .put("encoding", source.encoding())
                .put("lines", source.lines().size());
    }

    private static void entry(ObjectNode node, Entry entry) {
        origin(node, entry.origin()).put("name", entry.name());
        field(node, "role", entry.role(), a -> a.value().role().word());
        field(node, "colour", entry.colour(), a -> a.value().letters());
        field(node, "size", entry.size(), a -> QuantityWriter.write(a.value()));
        field(node, "switching", entry.behaviour(), a -> Words.of(a.value().kind()));
        field(node, "place", entry.spot(), a -> a.value().panel());
        entry.spot()
                .ifPresent(a -> node.put("connector", a.value().connector())
                        .put("cavity", a.value().cavity()));
        node.put("colour-as-written", entry.colourAsWritten())
                .put("steering", entry.steering())
                .put("validity", entry.validity())
                .put("doubted", entry.doubted());
        passages(node.putArray("notes"), entry.notes());
        passages(node.putArray("left-over"), entry.leftOver());
    }

    private static void fact(ObjectNode node, VehicleFact fact, boolean agreed) {
        origin(node.put("key", fact.key()).put("value", fact.value()), fact.origin())
                .put("written", fact.written())
                .put("agreed", agreed);
    }

    /** What the shop once said of such a text; none of it is taken by itself. */
    private static void suggestions(ArrayNode into, List<Suggestion> suggestions) {
        for (Suggestion each : suggestions) {
            into.addObject()
                    .put("field", Words.of(each.correction().field()))
                    .put("written", each.correction().written())
                    .put("means", each.correction().means())
                    .put("times", each.times())
                    .put("of-all", each.ofAll())
                    .put("sure", each.sure());
        }
    }

    private static <T> void field(
            ObjectNode node, String name, Optional<Answer<T>> answer, Function<Answer<T>, String> text) {
        answer.ifPresent(a -> origin(node.putObject(name), a.origin())
                .put("value", text.apply(a))
                .put("sure", a.sure())
                .put("evidence", Words.of(a.evidence()))
                .put("written", a.written()));
    }

    private static void passages(ArrayNode into, List<Passage> passages) {
        passages.stream()
                .filter(p -> !p.isBlank())
                .forEach(p -> origin(into.addObject(), p.origin()).put("text", p.text()));
    }

    private static ObjectNode origin(ObjectNode node, Origin origin) {
        return node.put("line", origin.line())
                .put("column", origin.column())
                .put("last-line", origin.lastLine())
                .put("last-column", origin.lastColumn());
    }

    private String written(ObjectNode root) {
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("notes of our own cannot be written", e);
        }
    }
}
