package org.loomproof.intake.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.field.Word;

/** Whether what holds for some vehicles only holds for the one at hand, by what is known of it. */
public enum HoldsFor {
    /** All that it asks is known, and is so. */
    THIS,
    /** Something that it asks is known to be otherwise. */
    OTHERS,
    /** Only a person can tell. */
    NOT_KNOWN;

    private static final String TRIM = "trim";
    private static final Lexicon LINKS = Lexicon.read(HoldsFor.class, "bound.words");

    /** Stands for anything else than what is asked. */
    public static final String SOMETHING_ELSE = "other";

    /** True for what only notes ask of a vehicle, and a sheet has no place for. */
    public static boolean isOfNotesOnly(String key, Set<String> sheetKeys) {
        return key.equals(TRIM) || (VehicleFacts.KEYS.contains(key) && !sheetKeys.contains(key));
    }

    /** What must be known of the vehicle to tell whom lines hold for: the values they ask for, by their keys, in the order of the lines. */
    public static Map<String, Set<String>> asks(Collection<String> validities) {
        Map<String, Set<String>> asks = new LinkedHashMap<>();
        for (String validity : validities) {
            for (String bound : validity.split(";", -1)) {
                Set<String> trims = Validity.trims(bound);
                String folded = Passage.fold(bound);
                trims.stream().sorted().forEach(trim -> add(asks, TRIM, trim));
                if (trims.isEmpty()) {
                    asked(VehicleFacts.exact(Word.of(folded)), folded)
                            .forEach((key, all) -> all.forEach(one -> add(asks, key, one.value())));
                }
            }
        }
        return asks;
    }

    private static void add(Map<String, Set<String>> asks, String key, String value) {
        asks.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(value);
    }

    /**
     * What the words of a bound ask, held against what is known.
     *
     * @param validity as written: "only with automatic gearbox", "LX only"; several parted by semicolons
     * @param known values by their keys, in the words of a sheet; {@code trim} in the writer's
     */
    public static HoldsFor of(String validity, Map<String, String> known) {
        HoldsFor all = THIS;
        for (String bound : validity.split(";", -1)) {
            HoldsFor one = ofOne(bound, known);
            if (one == OTHERS) {
                return OTHERS;
            }
            all = one == NOT_KNOWN ? NOT_KNOWN : all;
        }
        return all;
    }

    private record Asked(String value, boolean denied) {}

    private static HoldsFor ofOne(String bound, Map<String, String> known) {
        Set<String> trims = Validity.trims(bound);
        if (!trims.isEmpty()) {
            String trim = known.getOrDefault(TRIM, "");
            return trim.isEmpty() ? NOT_KNOWN : trims.contains(trim) ? THIS : OTHERS;
        }
        String folded = Passage.fold(bound);
        List<Word> words = Word.of(folded);
        List<Hit> facts = VehicleFacts.exact(words);
        Map<String, List<Asked>> asked = asked(facts, folded);
        HoldsFor all = isAllKnown(words, facts) && !asked.isEmpty() ? THIS : NOT_KNOWN;
        for (Map.Entry<String, List<Asked>> one : asked.entrySet()) {
            String is = known.getOrDefault(one.getKey(), "");
            if (is.isEmpty()) {
                all = NOT_KNOWN;
            } else if (one.getValue().stream().noneMatch(a -> a.value().equals(is) != a.denied())) {
                return OTHERS;
            }
        }
        return all;
    }

    private static Map<String, List<Asked>> asked(List<Hit> facts, String folded) {
        Map<String, List<Asked>> asked = new LinkedHashMap<>();
        for (int i = 0; i < facts.size(); i++) {
            boolean denied = i > 0
                    && facts.get(i - 1).means("none")
                    && folded.substring(facts.get(i - 1).to(), facts.get(i).from())
                            .isBlank();
            for (String idea : facts.get(i).ideas()) {
                int sign = idea.indexOf('=');
                if (sign >= 0) {
                    String key = idea.substring(idea.lastIndexOf(' ', sign) + 1, sign);
                    asked.computeIfAbsent(key, k -> new ArrayList<>()).add(new Asked(idea.substring(sign + 1), denied));
                }
            }
        }
        return asked;
    }

    /** True when every word is of a fact, or only binds. */
    private static boolean isAllKnown(List<Word> words, List<Hit> facts) {
        List<Hit> links = LINKS.find(words);
        return words.stream()
                .allMatch(w -> facts.stream().anyMatch(h -> h.from() <= w.from() && w.to() <= h.to())
                        || links.stream().anyMatch(h -> h.isExact() && h.from() <= w.from() && w.to() <= h.to()));
    }
}
