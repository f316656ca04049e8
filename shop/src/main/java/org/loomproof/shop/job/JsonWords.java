package org.loomproof.shop.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What every answer in JSON shares: phrases in the language of the messages, margins, witnesses, situations. */
final class JsonWords {

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Messages messages;

    JsonWords(Messages messages) {
        this.messages = messages;
    }

    ObjectNode margin(Margin margin) {
        return mapper.createObjectNode()
                .put("slack", margin.slack())
                .put("unit", margin.unit())
                .put("computed", text(margin.computed()))
                .put("allowed", text(margin.allowed()));
    }

    ObjectNode witness(Witness witness) {
        ObjectNode node = mapper.createObjectNode();
        texts(node.putArray("steps"), witness.steps());
        node.set("situation", situation(witness.situation()));
        ArrayNode seen = node.putArray("seen");
        witness.seen().forEach(o -> seen.addObject().put("at", text(o.at())).put("reads", o.reads()));
        return node;
    }

    ObjectNode situation(Situation situation) {
        ObjectNode node = mapper.createObjectNode();
        ObjectNode positions = node.putObject("positions");
        situation.positions().forEach((operable, position) -> positions.put(operable.value(), position));
        return node.put("supply", situation.supply().word())
                .put("controller", situation.controller().word())
                .put("feed", situation.feed().word());
    }

    void texts(ArrayNode into, List<Phrase> phrases) {
        phrases.forEach(p -> into.add(text(p)));
    }

    String text(Phrase phrase) {
        return messages.text(phrase);
    }

    String written(ObjectNode root) {
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result of our own cannot be written", e);
        }
    }
}
