package org.loomproof.shop.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.drain.DrainFinding;
import org.loomproof.workshop.meter.drain.DrainFinding.Band;
import org.loomproof.workshop.meter.drain.Hunt;
import org.loomproof.workshop.words.Messages;

/** What a log of the current after locking says, as JSON for other programs; {@code docs/schemas/drain.schema.json}. */
public final class DrainJson {

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonWords words;

    /** Words come from these messages. */
    public DrainJson(Messages messages) {
        this.words = new JsonWords(messages);
    }

    /** The whole. */
    public String of(DrainFinding finding) {
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof drain 1");
        finding.settled().ifPresent(behind -> root.put("settled", Words.of(behind)));
        root.put("longEnough", finding.isLongEnough()).put("watched", finding.isWatched());
        ObjectNode chances = root.putObject("chances");
        finding.chances().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> chances.put(Words.of(e.getKey()), e.getValue()));
        ArrayNode plateaus = root.putArray("plateaus");
        finding.plateaus()
                .forEach(p -> plateaus.addObject()
                        .put("fromMinutes", p.fromMinutes())
                        .put("toMinutes", p.toMinutes())
                        .put("amps", p.amps())
                        .put("samples", p.samples()));
        root.set("expectedAmps", band(finding.expected()));
        root.set("drawnAmps", band(finding.drawn()));
        finding.waking().ifPresent(waking -> {
            ObjectNode node = root.putObject("waking")
                    .put("times", waking.times())
                    .put("regular", waking.isRegular())
                    .put("amps", waking.amps());
            waking.everyMinutes().ifPresent(minutes -> node.put("everyMinutes", minutes));
        });
        finding.mild().ifPresent(days -> root.set("daysMild", band(days)));
        finding.cold().ifPresent(days -> root.set("daysCold", band(days)));
        finding.hunt().ifPresent(hunt -> root.set("hunt", hunt(hunt)));
        return words.written(root);
    }

    private ObjectNode hunt(Hunt hunt) {
        ObjectNode node = mapper.createObjectNode();
        ArrayNode branches = node.putArray("branches");
        hunt.chances().forEach(chance -> {
            ObjectNode one = branches.addObject()
                    .put("name", chance.branch().name())
                    .put("way", Words.of(chance.branch().way()))
                    .put("ours", chance.branch().isOurs())
                    .put("probability", chance.probability());
            chance.branch().seen().ifPresent(seen -> one.put("amps", seen.amps()));
        });
        node.put("elsewhere", hunt.elsewhere());
        hunt.found().ifPresent(found -> node.put("found", found.name()));
        hunt.next()
                .ifPresent(next -> node.putObject("next")
                        .put("name", next.name())
                        .put("way", Words.of(next.way()))
                        .put("bits", hunt.bits())
                        .put("minutes", next.way().minutes()));
        return node;
    }

    private ObjectNode band(Band band) {
        return mapper.createObjectNode()
                .put("low", band.low())
                .put("typical", band.typical())
                .put("high", band.high());
    }
}
