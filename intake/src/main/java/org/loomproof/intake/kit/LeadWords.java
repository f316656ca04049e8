package org.loomproof.intake.kit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Word;
import org.loomproof.intake.kit.LeadReading.RelayContact;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** What a lead is meant for: by words that only a kit has, else by the circuit that its words name. */
final class LeadWords {

    private static final Lexicon WORDS = Lexicon.read(LeadWords.class, "leads.words");
    private static final Map<String, Row> BY_CIRCUIT = rows(true);
    private static final Map<String, Row> BY_LEAD = rows(false);
    private static final List<String> DIRECTIONS = List.of("output", "input");
    private static final String RELAY = "relay";

    private LeadWords() {}

    /** Which way a lead works. */
    enum Way {
        FEED,
        GROUND,
        INPUT,
        OUTPUT,
        EXTRA,
        UNSAID
    }

    /** What a lead is meant for, and which way it works. */
    record Use(Answer<LeadRole> role, Way way) {}

    /** The use in a folded text whose circuit has been read already; empty when neither says anything. */
    static Optional<Use> use(String folded, Optional<Answer<RoleReading>> circuit) {
        List<Hit> hits =
                WORDS.find(Word.of(folded)).stream().filter(h -> !h.isOff()).toList();
        Optional<Hit> own = hits.stream()
                .filter(h -> !DIRECTIONS.contains(h.ideas().getFirst())
                        && !h.ideas().getFirst().startsWith(RELAY))
                .findFirst();
        if (own.isPresent()) {
            String role = own.get().ideas().getFirst();
            Origin origin = circuit.map(Answer::origin).orElse(new Origin(1, 1, 1, 1));
            String written = folded.substring(own.get().from(), own.get().to());
            Answer<LeadRole> answer = new Answer<>(role(role), Evidence.AMONG_OTHERS, OWN_WORD_SURE, origin, written);
            return Optional.of(new Use(answer, way(BY_LEAD.get(role), hits)));
        }
        return circuit.flatMap(answer -> Optional.ofNullable(
                        BY_CIRCUIT.get(answer.value().role().word()))
                .map(row -> new Use(
                        new Answer<>(
                                role(row.text("lead")),
                                answer.evidence(),
                                answer.sure(),
                                answer.origin(),
                                answer.written()),
                        way(row, hits))));
    }

    /** Whether the text says that a lead goes out of the box or into it, by words for just one of the two. */
    static Optional<Way> direction(String folded) {
        List<String> said = said(WORDS.find(Word.of(folded)));
        return said.size() == 1 ? Optional.of(Way.valueOf(said.getFirst().toUpperCase(Locale.ROOT))) : Optional.empty();
    }

    /** True when a text speaks of relays in the box. */
    static boolean speaksOfRelays(String folded) {
        return WORDS.find(Word.of(folded)).stream().anyMatch(hit -> hit.isExact() && hit.means(RELAY));
    }

    /** Which contact of a relay a lead of a list with relays is; empty when it is none, or said to be several. */
    static Optional<RelayContact> contact(String folded) {
        List<RelayContact> said = WORDS.find(Word.of(folded)).stream()
                .filter(Hit::isExact)
                .flatMap(hit -> Arrays.stream(RelayContact.values())
                        .filter(contact -> hit.means(RELAY + "-" + Words.of(contact))))
                .distinct()
                .toList();
        return said.size() == 1 ? Optional.of(said.getFirst()) : Optional.empty();
    }

    private static List<String> said(List<Hit> hits) {
        return hits.stream()
                .filter(hit -> !hit.isOff())
                .map(h -> h.ideas().getFirst())
                .filter(DIRECTIONS::contains)
                .distinct()
                .toList();
    }

    /** The text without the words that only a kit has. */
    static String without(String folded) {
        StringBuilder rest = new StringBuilder(folded);
        for (Hit hit : WORDS.find(Word.of(folded))) {
            for (int i = hit.from(); i < hit.to() && !hit.isOff(); i++) {
                rest.setCharAt(i, ' ');
            }
        }
        return rest.toString();
    }

    /** How sure a word is that only a kit has; common practice, not yet measured on lists of other hands. */
    private static final double OWN_WORD_SURE = 0.95;

    /** The way the text says, where the use leaves it open or may be either. */
    private static Way way(@Nullable Row row, List<Hit> hits) {
        Way usual = row == null ? Way.UNSAID : Way.valueOf(row.text("way").toUpperCase(Locale.ROOT));
        if (usual == Way.FEED || usual == Way.GROUND || usual == Way.EXTRA) {
            return usual;
        }
        List<String> said = said(hits);
        if (said.size() == 1 && usual == Way.UNSAID) {
            return Way.valueOf(said.getFirst().toUpperCase(Locale.ROOT));
        }
        return usual;
    }

    private static LeadRole role(String word) {
        return Arrays.stream(LeadRole.values())
                .filter(r -> r.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no lead is meant for " + word));
    }

    private static Map<String, Row> rows(boolean byCircuit) {
        Map<String, Row> rows = new HashMap<>();
        for (Row row : Table.read(LeadWords.class, "leads.csv").listRows()) {
            boolean own = row.text("circuit").equals("-");
            if (byCircuit != own) {
                rows.put(row.text(byCircuit ? "circuit" : "lead"), row);
            }
        }
        return Map.copyOf(rows);
    }
}
