package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code behaviour}: what the controller does with its leads in each of its states. */
final class BehaviourReader {

    private static final Map<String, ControllerState> STATES_WITH_SUPPLY = statesWithSupply();

    private final Map<String, Lead> leads = new LinkedHashMap<>();

    BehaviourReader(List<Lead> leads) {
        leads.forEach(lead -> this.leads.putIfAbsent(lead.id().value(), lead));
    }

    Behaviour read(MappingCursor in, FigureReader figures) {
        Set<LeadId> triggers = inputs(in, "triggers");
        Set<LeadId> instant = inputs(in, "instant");
        for (Cursor item : in.items("instant")) {
            if (leads.containsKey(item.found()) && !triggers.contains(new LeadId(item.found()))) {
                item.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.instant-trigger"));
            }
        }
        Behaviour behaviour = new Behaviour(
                figures.orUsual(in, "arming-delay", Unit.SECONDS, "kit.arming-delay"),
                triggers,
                instant,
                outputs(in),
                figures.find(in, "sounding-time", Unit.SECONDS));
        in.close();
        return behaviour;
    }

    private Set<LeadId> inputs(MappingCursor in, String key) {
        Set<LeadId> ids = new LinkedHashSet<>();
        for (Cursor item : in.items(key)) {
            Optional<Lead> lead = item.reference(leads);
            if (lead.isPresent()
                    && !(lead.get().port() instanceof Port.Input || lead.get().port() instanceof Port.ToExtra)) {
                item.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.input-lead"));
            }
            lead.ifPresent(known -> ids.add(known.id()));
        }
        return ids;
    }

    private List<OutputBehaviour> outputs(MappingCursor in) {
        References named = new References();
        List<OutputBehaviour> outputs = new ArrayList<>();
        for (Cursor item : in.items("outputs")) {
            MappingCursor output = item.mapping();
            Optional<Cursor> at = output.need("lead");
            Optional<Lead> lead = at.flatMap(cursor -> cursor.reference(leads));
            if (at.isPresent() && lead.isPresent()) {
                checkOutput(at.get(), lead.get().port());
                named.give(lead.get().id().value(), at.get());
            }
            Set<ControllerState> onIn = new LinkedHashSet<>();
            for (Cursor state : output.itemsNeeded("on-in")) {
                state.word(STATES_WITH_SUPPLY).ifPresent(onIn::add);
            }
            OutputTiming timing = output.wordOr("timing", OutputTiming.STEADY);
            output.close();
            lead.ifPresent(known -> outputs.add(new OutputBehaviour(known.id(), onIn, timing)));
        }
        return outputs;
    }

    private static void checkOutput(Cursor at, Port port) {
        boolean acts = switch (port) {
            case Port.LowSide lowSide -> true;
            case Port.HighSide highSide -> true;
            case Port.ToExtra extra -> true;
            case Port.Supply supply -> false;
            case Port.Ground ground -> false;
            case Port.Input input -> false;
        };
        if (!acts) {
            at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.output-lead"));
        }
    }

    private static Map<String, ControllerState> statesWithSupply() {
        Map<String, ControllerState> states = new LinkedHashMap<>(Words.all(ControllerState.class));
        states.remove(ControllerState.WITHOUT_SUPPLY.word());
        return states;
    }
}
