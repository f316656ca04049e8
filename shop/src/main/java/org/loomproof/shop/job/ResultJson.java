package org.loomproof.shop.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.ThreatResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.weigh.Search;
import org.loomproof.workshop.words.Messages;

/**
 * A result, or the problems that stood in its way, as JSON for other programs. The shape is fixed by
 * {@code docs/schemas/result.schema.json}; words are rendered in the language of the messages.
 */
public final class ResultJson {

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonWords words;

    /** Words come from these messages. */
    public ResultJson(Messages messages) {
        this.words = new JsonWords(messages);
    }

    /** Every problem of input that could not be used. */
    public String ofProblems(List<Problem> problems) {
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof problems 1");
        ArrayNode list = root.putArray("problems");
        for (Problem problem : problems) {
            list.addObject()
                    .put("file", problem.at().file())
                    .put("line", problem.at().line())
                    .put("column", problem.at().column())
                    .put("path", problem.at().path())
                    .put("kind", problem.kind().id())
                    .put("found", problem.found())
                    .put("wanted", words.text(problem.wanted()))
                    .put("hint", words.text(problem.hint()));
        }
        return words.written(root);
    }

    /** A plan with its proof, and the files written, relative to the folder. */
    public String ofResult(Kit kit, Plan plan, Proof proof, Search search, String folder, List<String> files) {
        Answer answer = Answer.of(plan, proof);
        VerdictCounts counts = VerdictCounts.of(proof);
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof result 1");
        root.putObject("answer")
                .put("word", answer.name().toLowerCase(Locale.ROOT))
                .put("code", answer.code());
        root.putObject("counts")
                .put("holds", counts.holds())
                .put("broken", counts.broken())
                .put("open", counts.open())
                .put("declared", counts.declared());
        ArrayNode settings = root.putArray("settings");
        kit.standing(plan.settings())
                .forEach(choice ->
                        settings.addObject().put("option", choice.option()).put("setTo", choice.setting()));
        ArrayNode hookups = root.putArray("hookups");
        plan.hookups().forEach(h -> hookups.add(hookup(h)));
        ArrayNode refusals = root.putArray("refusals");
        plan.refusals().forEach(r -> refusals.add(refusal(r)));
        words.texts(root.putArray("cautions"), plan.cautions());
        ArrayNode claims = root.putArray("claims");
        proof.results().forEach(c -> claims.add(claim(c)));
        ArrayNode threats = root.putArray("threats");
        proof.threats().forEach(t -> threats.add(threat(t)));
        ArrayNode residuals = root.putArray("residuals");
        proof.residuals().forEach(r -> residuals.addObject().put("id", r.id()).put("what", words.text(r.what())));
        root.putObject("effort")
                .put("modes", proof.effort().modes())
                .put("transitions", proof.effort().transitions())
                .put("situations", proof.effort().situations())
                .put("solves", proof.effort().solves())
                .put("corners", proof.effort().corners())
                .set("reached", reached(proof.effort().reached()));
        root.set("search", search(search));
        words.texts(root.putArray("bounds"), proof.bounds());
        root.put("folder", folder);
        ArrayNode written = root.putArray("files");
        files.forEach(written::add);
        return words.written(root);
    }

    private ObjectNode reached(Proof.Reached reached) {
        return mapper.createObjectNode()
                .put("states", reached.states())
                .put("standFor", reached.standFor())
                .put("transitions", reached.transitions())
                .put("solves", reached.solves())
                .put("unsettled", reached.unsettled())
                .put("complete", reached.complete());
    }

    private ObjectNode search(Search search) {
        ObjectNode node = mapper.createObjectNode()
                .put("plansProven", search.plansProven())
                .put("solves", search.solves());
        ArrayNode leads = node.putArray("leads");
        for (Searched each : search.leads()) {
            Enumeration<?> found = each.enumeration();
            ObjectNode lead = leads.addObject().put("lead", each.lead().value());
            ArrayNode circuits = lead.putArray("circuits");
            each.circuits().forEach(circuit -> circuits.add(circuit.value()));
            lead.put("enumerated", found.enumerated())
                    .put("offered", found.words().size());
            ObjectNode leftOut = lead.putObject("leftOut");
            found.leftOut().forEach((reason, count) -> leftOut.put(reason.word(), count));
        }
        return node;
    }

    private ObjectNode hookup(Hookup hookup) {
        ObjectNode node = mapper.createObjectNode().put("lead", hookup.lead().value());
        switch (hookup) {
            case Hookup.Connect connect -> {
                node.put("do", "connect").put("serves", connect.serves().word()).put("coupling", connect.coupling());
                ArrayNode circuits = node.putArray("circuits");
                connect.circuits().forEach(c -> circuits.add(c.value()));
                ArrayNode parts = node.putArray("parts");
                connect.parts().forEach(p -> parts.add(p.value()));
                ArrayNode wires = node.putArray("wires");
                connect.wires().forEach(w -> wires.add(w.value()));
            }
            case Hookup.Trim ignored -> node.put("do", "trim");
            case Hookup.CapAndKeep ignored -> node.put("do", "cap-and-keep");
            case Hookup.Hold hold -> {
                node.put("do", "hold").put("serves", hold.serves().word());
                node.set("until", measurement(hold.until()));
            }
        }
        node.put("because", words.text(hookup.because()));
        words.texts(node.putArray("insteadOf"), hookup.insteadOf());
        return node;
    }

    private ObjectNode refusal(Refusal refusal) {
        return mapper.createObjectNode()
                .put("wish", refusal.wish().word())
                .put("because", words.text(refusal.because()))
                .put("possibleIf", words.text(refusal.possibleIf()));
    }

    private ObjectNode claim(ClaimResult claim) {
        ObjectNode node =
                mapper.createObjectNode().put("id", claim.id()).put("statement", words.text(claim.statement()));
        switch (claim.verdict()) {
            case Verdict.Holds holds -> {
                node.put("verdict", "holds").set("margin", words.margin(holds.tightest()));
                node.set("deciding", words.situation(holds.deciding()));
            }
            case Verdict.Broken broken -> {
                node.put("verdict", "broken").set("margin", words.margin(broken.worst()));
                node.set("witness", words.witness(broken.witness()));
            }
            case Verdict.Declared declared -> {
                node.put("verdict", "declared").put("found", words.text(declared.found()));
                node.putObject("change")
                        .put("of", declared.change().of().value())
                        .put("becomes", declared.change().becomes().word())
                        .put("told", declared.change().told())
                        .put("because", declared.change().because());
                node.set("witness", words.witness(declared.witness()));
            }
            case Verdict.Open open -> {
                node.put("verdict", "open").put("because", words.text(open.because()));
                ArrayNode readings = node.putArray("settledBy");
                open.settledBy().forEach(m -> readings.add(measurement(m)));
            }
        }
        ArrayNode rests = node.putArray("restsOn");
        for (Assumption assumption : claim.restsOn()) {
            rests.addObject()
                    .put("figure", assumption.figure())
                    .put("low", assumption.low())
                    .put("high", assumption.high())
                    .set("settledBy", measurement(assumption.settledBy()));
        }
        return node;
    }

    private ObjectNode threat(ThreatResult threat) {
        ObjectNode node = mapper.createObjectNode()
                .put("id", threat.id())
                .put("deed", words.text(threat.deed()))
                .put("load", words.text(threat.load()))
                .put("outcome", threat.outcome().word());
        words.texts(node.putArray("steps"), threat.steps());
        return node;
    }

    private ObjectNode measurement(Measurement measurement) {
        return mapper.createObjectNode().put("name", measurement.name()).put("what", words.text(measurement.what()));
    }
}
