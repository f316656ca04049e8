package org.loomproof.workshop.plan.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Reads the decision for one lead. */
final class HookupReader {

    static final String CONNECT = "connect";
    static final String TRIM = "trim";
    static final String CAP_AND_KEEP = "cap-and-keep";
    static final String HOLD = "hold";

    private static final Map<String, String> DECISIONS = same(CONNECT, TRIM, CAP_AND_KEEP, HOLD);

    private final PlanNames names;
    private final References decided;
    private final Map<String, String> couplings = new LinkedHashMap<>();

    HookupReader(PlanNames names, References decided, Messages words) {
        this.names = names;
        this.decided = decided;
        words.keys().stream()
                .filter(key -> key.startsWith(PlanFileWriter.COUPLING))
                .forEach(key -> couplings.put(key.substring(PlanFileWriter.COUPLING.length()), key));
    }

    /** The decision; empty, with a problem noted, when it cannot be read. */
    Optional<Hookup> read(MappingCursor in) {
        Optional<Cursor> leadAt = in.need("lead");
        LeadId lead = new LeadId(leadAt.map(names::lead).orElse(Cursor.UNREADABLE));
        leadAt.ifPresent(at -> decided.give(lead.value(), at));
        Phrase because = in.find("because").map(Written::phrase).orElse(Written.nothing());
        List<Phrase> insteadOf =
                in.items("instead-of").stream().map(Written::phrase).toList();
        Optional<String> decision = in.need("do").flatMap(at -> at.word(DECISIONS));
        Optional<Hookup> hookup = decision.map(word -> switch (word) {
            case CONNECT -> connect(lead, in, because, insteadOf);
            case TRIM -> new Hookup.Trim(lead, because, insteadOf);
            case CAP_AND_KEEP -> new Hookup.CapAndKeep(lead, because, insteadOf);
            case HOLD -> hold(lead, in, because, insteadOf);
            default -> throw new IllegalStateException("no decision is called " + word);
        });
        if (hookup.isPresent()) {
            in.close();
        }
        return hookup;
    }

    private Hookup connect(LeadId lead, MappingCursor in, Phrase because, List<Phrase> insteadOf) {
        Wish serves = in.word("serves", Wish.class);
        List<CircuitId> circuits = ids(in, "circuits", names::circuit, CircuitId::new);
        String coupling = in.find("coupling").flatMap(at -> at.word(couplings)).orElse(PlanFileWriter.BY_HAND);
        List<AddedPartId> parts = ids(in, "parts", names::part, AddedPartId::new);
        List<WireId> wires = ids(in, "wires", names::wire, WireId::new);
        return new Hookup.Connect(lead, serves, circuits, coupling, parts, wires, because, insteadOf);
    }

    private static Hookup hold(LeadId lead, MappingCursor in, Phrase because, List<Phrase> insteadOf) {
        Wish serves = in.word("serves", Wish.class);
        MappingCursor until = in.mapping("until");
        Measurement measurement = new Measurement(
                until.text("name"), until.need("what").map(Written::phrase).orElse(Written.nothing()));
        until.close();
        return new Hookup.Hold(lead, serves, measurement, because, insteadOf);
    }

    private static <I> List<I> ids(
            MappingCursor in, String key, Function<Cursor, String> known, Function<String, I> maker) {
        References named = new References();
        List<I> ids = new ArrayList<>();
        for (Cursor item : in.items(key)) {
            String id = known.apply(item);
            named.give(id, item);
            ids.add(maker.apply(id));
        }
        return ids;
    }

    private static Map<String, String> same(String... words) {
        Map<String, String> map = new LinkedHashMap<>();
        for (String word : words) {
            map.put(word, word);
        }
        return map;
    }
}
