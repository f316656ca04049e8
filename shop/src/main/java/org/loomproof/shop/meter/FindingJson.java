package org.loomproof.shop.meter;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.meter.advice.Advisor.Standing;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.finding.StepValues;
import org.loomproof.workshop.meter.finding.WireFinding;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Findings as JSON for other programs. The shape is fixed by {@code docs/schemas/identify.schema.json}. */
public final class FindingJson {

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private final Messages messages;

    /** Words come from these messages. */
    public FindingJson(Messages messages) {
        this.messages = messages;
    }

    /** Every finding, with the costs it was reckoned by. */
    public String of(List<WireFinding> findings, Costs costs) {
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof wires 1");
        root.putObject("costs")
                .put("wrongTap", costs.wrongTap())
                .put("wrongCut", costs.wrongCut())
                .put("connectAt", costs.connectAt())
                .put("cutAt", costs.cutAt());
        ArrayNode wires = root.putArray("wires");
        findings.forEach(f -> wires.add(wire(f)));
        try {
            return mapper.writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a finding of our own cannot be written", e);
        }
    }

    private ObjectNode wire(WireFinding finding) {
        ObjectNode node = mapper.createObjectNode()
                .put("wire", finding.wire())
                .put("entry", finding.entry().map(CircuitId::value).orElse(""))
                .put("readings", finding.readings())
                .put("best", finding.best().word());
        ObjectNode chances = node.putObject("chances");
        finding.chances().forEach((role, chance) -> chances.put(role.word(), chance));
        texts(node.putArray("because"), finding.because());
        ArrayNode not = node.putArray("not");
        finding.not()
                .forEach(out -> not.addObject().put("role", out.role().word()).put("by", messages.text(out.by())));
        node.set("connect", standing(finding.connect()));
        node.set("cut", standing(finding.cut()));
        finding.next()
                .ifPresent(next -> node.set(
                        "next",
                        test(next.test())
                                .put("bits", next.bits())
                                .put("seconds", next.test().seconds())));
        finding.split().ifPresent(split -> {
            ObjectNode one = test(split.test());
            ArrayNode roles = one.putArray("roles");
            split.roles().forEach(role -> roles.add(role.word()));
            node.set("split", one);
        });
        finding.steps().ifPresent(steps -> node.set("steps", steps(steps)));
        texts(node.putArray("cautions"), finding.cautions());
        return node;
    }

    private ObjectNode test(MeterTest test) {
        return mapper.createObjectNode()
                .put("step", test.step().word())
                .put("kind", test.kind().word());
    }

    private ObjectNode standing(Standing standing) {
        ObjectNode node = mapper.createObjectNode().put("allowed", standing.allowed());
        texts(node.putArray(standing.allowed() ? "afterwards" : "lacks"), standing.lacks());
        return node;
    }

    private ObjectNode steps(StepValues steps) {
        ObjectNode node = mapper.createObjectNode();
        node.set("pullUpOhms", range(steps.pullUp()));
        ArrayNode switches = node.putArray("switches");
        steps.switches().forEach(button -> {
            ObjectNode one = switches.addObject().put("step", button.step().word());
            one.set("ohms", range(button.ohms()));
        });
        return node;
    }

    private ObjectNode range(Range<Ohms> range) {
        return mapper.createObjectNode()
                .put("low", range.low().value())
                .put("typical", range.typical().value())
                .put("high", range.high().value());
    }

    private void texts(ArrayNode into, List<Phrase> phrases) {
        phrases.forEach(p -> into.add(messages.text(p)));
    }
}
