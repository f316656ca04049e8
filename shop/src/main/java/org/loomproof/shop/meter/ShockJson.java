package org.loomproof.shop.meter;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.shock.Knock;
import org.loomproof.workshop.meter.shock.ShockFinding;
import org.loomproof.workshop.meter.shock.ShockSetting.Judged;

/** How the setting of a shock sensor stands, as JSON for other programs; {@code docs/schemas/shock.schema.json}. */
public final class ShockJson {

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** The whole. */
    public String of(ShockFinding finding) {
        ObjectNode root =
                mapper.createObjectNode().put("format", "loomproof shock 1").put("advice", Words.of(finding.advice()));
        finding.setting().ifPresent(setting -> root.put("setting", setting));
        finding.next().ifPresent(next -> root.set("next", knock(next)));
        ArrayNode settings = root.putArray("settings");
        finding.settings().forEach(each -> settings.add(judged(each)));
        ArrayNode ladder = root.putArray("ladder");
        finding.ladder().forEach(knock -> ladder.add(knock(knock)));
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a finding of our own cannot be written", e);
        }
    }

    private ObjectNode judged(Judged judged) {
        ObjectNode node =
                mapper.createObjectNode().put("setting", judged.setting()).put("doesIt", judged.doesIt());
        judged.estimate()
                .ifPresent(estimate -> node.put("halfJoules", Math.pow(10, estimate.mean()))
                        .put("spreadDecades", estimate.deviation())
                        .put("spreadSure", estimate.isSpreadSure())
                        .put("counted", estimate.counted())
                        .put("falseAMonth", judged.falseAMonth())
                        .put("noticedShare", judged.noticedShare()));
        return node;
    }

    private ObjectNode knock(Knock knock) {
        return mapper.createObjectNode()
                .put("kilograms", knock.kilograms())
                .put("metres", knock.height().value())
                .put("joules", knock.joules());
    }
}
