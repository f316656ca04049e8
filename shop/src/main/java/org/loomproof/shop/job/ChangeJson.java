package org.loomproof.shop.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.change.Undo;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.words.Messages;

/** What changes between two plans, as JSON for other programs; the shape is fixed by {@code docs/schemas/change.schema.json}. */
public final class ChangeJson {

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Messages messages;

    /** Words come from these messages. */
    public ChangeJson(Messages messages) {
        this.messages = messages;
    }

    /** The change as a document. */
    public String of(PlanChange change) {
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof change 1");
        ArrayNode leads = root.putArray("leads");
        for (PlanChange.LeadChange lead : change.leads()) {
            ObjectNode node = leads.addObject().put("lead", lead.lead().value());
            put(node, "before", lead.before());
            put(node, "after", lead.after());
        }
        ArrayNode articles = root.putArray("articles");
        change.articles()
                .forEach((article, more) -> articles.addObject()
                        .put("kind", article.kind().word())
                        .put("size", article.size())
                        .put("more", more));
        root.putObject("minutes").put("before", change.minutesBefore()).put("after", change.minutesAfter());
        change.prices()
                .ifPresent(prices -> root.putObject("price")
                        .put("currency", prices.after().getCurrencyUnit().getCode())
                        .put("before", prices.before().getAmount())
                        .put("after", prices.after().getAmount()));
        ArrayNode undo = root.putArray("undo");
        for (Undo each : change.undo()) {
            switch (each) {
                case Undo.RejoinCut(var circuit) ->
                    undo.addObject().put("do", "rejoin-cut").put("circuit", circuit.value());
                case Undo.TakeOffTap(var circuit) ->
                    undo.addObject().put("do", "take-off-tap").put("circuit", circuit.value());
                case Undo.TakeOutPart(var part, var lead) ->
                    undo.addObject()
                            .put("do", "take-out-part")
                            .put("part", part.value())
                            .put("lead", lead.value());
            }
        }
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a change of our own cannot be written", e);
        }
    }

    private void put(ObjectNode node, String side, Optional<Hookup> hookup) {
        hookup.ifPresent(h -> {
            ObjectNode at = node.putObject(side);
            at.put("do", word(h));
            if (h instanceof Hookup.Connect connect) {
                at.put("coupling", connect.coupling());
                ArrayNode circuits = at.putArray("circuits");
                connect.circuits().forEach(c -> circuits.add(c.value()));
            }
            at.put("because", messages.text(h.because()));
        });
    }

    private static String word(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect c -> "connect";
            case Hookup.Trim t -> "trim";
            case Hookup.CapAndKeep c -> "cap-and-keep";
            case Hookup.Hold h -> "hold";
        };
    }
}
