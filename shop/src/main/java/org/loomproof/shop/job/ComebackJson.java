package org.loomproof.shop.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.loomproof.workshop.meter.comeback.Cause;
import org.loomproof.workshop.meter.comeback.ComebackWords;
import org.loomproof.workshop.meter.comeback.NextLook;
import org.loomproof.workshop.meter.comeback.Suspect;
import org.loomproof.workshop.words.Messages;

/** What is behind a comeback, as JSON for other programs; {@code docs/schemas/comeback.schema.json}. */
public final class ComebackJson {

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonWords words;

    /** Words come from these messages. */
    public ComebackJson(Messages messages) {
        this.words = new JsonWords(messages);
    }

    /** The whole. */
    public String of(Diagnosis diagnosis) {
        ObjectNode root = mapper.createObjectNode()
                .put("format", "loomproof comeback 1")
                .put("nowAndThen", diagnosis.nowAndThen())
                .put("measured", diagnosis.measured())
                .put("settled", diagnosis.finding().isSettled());
        ArrayNode said = root.putArray("symptoms");
        diagnosis.said().stream().sorted().forEach(symptom -> said.add(symptom.word()));
        ArrayNode suspects = root.putArray("suspects");
        diagnosis.finding().suspects().forEach(suspect -> suspects.add(suspect(suspect)));
        diagnosis.finding().next().ifPresent(next -> root.set("next", next(next, diagnosis)));
        return words.written(root);
    }

    private ObjectNode suspect(Suspect suspect) {
        ObjectNode node = mapper.createObjectNode()
                .put("probability", suspect.probability())
                .put("what", words.text(ComebackWords.of(suspect)));
        ArrayNode causes = node.putArray("causes");
        for (Cause cause : suspect.causes()) {
            ArrayNode mishaps = causes.addArray();
            cause.mishaps().forEach(mishap -> mishaps.add(mishap.id()));
        }
        words.texts(node.putArray("inspect"), ComebackWords.inspections(suspect));
        return node;
    }

    private ObjectNode next(NextLook next, Diagnosis diagnosis) {
        ObjectNode node = mapper.createObjectNode()
                .put("wire", next.look().at().name())
                .put("step", diagnosis.words().word(next.look().when()))
                .put("where", words.text(ComebackWords.at(next.look().at())))
                .put("when", words.text(new ComebackWords(diagnosis.brief()).when(next.look())))
                .put("seconds", next.seconds())
                .put("bits", next.bits());
        ArrayNode answers = node.putArray("answers");
        for (NextLook.Answer answer : next.answers()) {
            answers.addObject()
                    .put("low", answer.low())
                    .put("high", answer.high())
                    .put("probability", answer.probability())
                    .put("then", words.text(ComebackWords.of(answer.likeliest())));
        }
        return node;
    }
}
