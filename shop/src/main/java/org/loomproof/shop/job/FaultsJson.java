package org.loomproof.shop.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MaskedPairs;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Showing;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Messages;

/** What the faults and slips of a plan come to, as JSON for other programs; {@code docs/schemas/faults.schema.json}. */
public final class FaultsJson {

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonWords words;

    /** Words come from these messages. */
    public FaultsJson(Messages messages) {
        this.words = new JsonWords(messages);
    }

    /** The whole. */
    public String of(TriedFaults tried) {
        FaultProof faults = tried.faults();
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof faults 1");
        ObjectNode coverage =
                root.putObject("coverage").put("percent", faults.coverage().percent());
        for (Severity severity : Severity.values()) {
            coverage.putObject(severity.word())
                    .put("all", faults.coverage(severity).all())
                    .put("noticed", faults.coverage(severity).noticed());
        }
        ArrayNode mishaps = root.putArray("mishaps");
        for (int k = 0; k < faults.results().size(); k++) {
            mishaps.add(mishap(faults, k));
        }
        ArrayNode tests = root.putArray("tests");
        for (int t = 0; t < faults.testOrder().tests().size(); t++) {
            tests.add(test(faults, t));
        }
        root.put("testsTooManyAtMost", faults.testOrder().gap()).put("notLookedAt", faults.left());
        root.putObject("effort")
                .put("situations", faults.effort().situations())
                .put("walked", faults.effort().walked())
                .put("solves", faults.effort().solves());
        words.texts(root.putArray("bounds"), faults.bounds());
        tried.pairs().ifPresent(pairs -> root.set("pairs", pairs(pairs)));
        return words.written(root);
    }

    private ObjectNode pairs(MaskedPairs pairs) {
        ObjectNode node = mapper.createObjectNode()
                .put("lookedAt", pairs.lookedAt())
                .put("apart", pairs.apart())
                .put("hidden", pairs.hidden())
                .put("notLookedAt", pairs.left());
        ArrayNode passing = node.putArray("passing");
        for (MaskedPairs.Masked pair : pairs.passing()) {
            ObjectNode two = passing.addObject()
                    .put("one", pair.one().id())
                    .put("hiddenBy", pair.other().id())
                    .put("severity", pair.severity().word())
                    .put("restless", pair.isRestless());
            breaks(two.putArray("breaks"), pair.breaks());
        }
        return node;
    }

    private void breaks(ArrayNode node, List<Break> breaks) {
        for (Break each : breaks) {
            ObjectNode broken = node.addObject()
                    .put("claim", each.claim())
                    .put("severity", each.severity().word());
            broken.set("margin", words.margin(each.worst()));
            broken.set("witness", words.witness(each.witness()));
        }
    }

    private ObjectNode mishap(FaultProof faults, int place) {
        MishapResult result = faults.results().get(place);
        ObjectNode node = mapper.createObjectNode()
                .put("id", result.mishap().id())
                .put("kind", result.mishap() instanceof Slip ? "slip" : "fault")
                .put("what", words.text(result.mishap().words()))
                .put("severity", result.severity().word());
        words.texts(node.putArray("effects"), result.effects());
        words.texts(node.putArray("opens"), result.opens());
        words.texts(node.putArray("undecided"), result.undecided());
        breaks(node.putArray("breaks"), result.breaks());
        ArrayNode noticedBy = node.putArray("noticedBy");
        faults.testOrder()
                .noticedBy()
                .get(place)
                .forEach(t -> noticedBy.add(faults.testOrder().tests().get(t).id()));
        if (!faults.isNoticed(place)) {
            node.put("inspection", words.text(faults.inspection(place)));
        }
        return node;
    }

    private ObjectNode test(FaultProof faults, int place) {
        HandTest test = faults.testOrder().tests().get(place);
        ObjectNode node = mapper.createObjectNode()
                .put("id", test.id())
                .put("takes", test.kind().word())
                .put("from", test.from().word())
                .put("seconds", test.seconds());
        words.texts(node.putArray("steps"), test.steps());
        signs(node.putArray("watch"), faults.watch().get(place));
        ArrayNode expected = node.putArray("expected");
        for (Showing showing : faults.expected().get(place)) {
            ObjectNode shows = expected.addObject();
            shows.set("when", words.situation(showing.when()));
            signs(shows.putArray("there"), showing.there());
            signs(shows.putArray("absent"), showing.absent());
        }
        return node;
    }

    private void signs(ArrayNode node, List<Sign> signs) {
        words.texts(node, signs.stream().map(Sign::words).toList());
    }
}
