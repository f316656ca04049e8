package org.loomproof.intake.role;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Word;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/**
 * Reads what a circuit is for. Words name ideas (door, trigger, release), in four languages; a role is a set of ideas. So
 * words that nobody put together before are understood, and unknown words stay unknown.
 */
public final class Roles {

    private static final Lexicon WORDS = Lexicon.read(Roles.class, "en.words", "es.words", "de.words", "fr.words");
    private static final List<RoleRule> RULES = RoleRule.readAll();
    private static final String NOISE = "noise";
    private static final String KNOWN_OTHER = "known-other";

    private Roles() {}

    /** The role that the open words of a cell name; the words that carry it are claimed. */
    public static Optional<Found<RoleReading>> inColumn(Claims claims) {
        return read(claims, claims.words(), Evidence.IN_ITS_COLUMN);
    }

    /** The role that the open words between two offsets name; the words that carry it are claimed. */
    public static Optional<Found<RoleReading>> among(Claims claims, int from, int to) {
        List<Word> words = claims.words().stream()
                .filter(w -> w.from() >= from && w.to() <= to)
                .toList();
        return read(claims, words, Evidence.AMONG_OTHERS);
    }

    /** True when the text names a role without any doubt. */
    public static boolean names(String folded) {
        List<Word> words = Word.of(folded);
        return choose(carrying(WORDS.find(words)))
                .filter(r -> r.named() == RoleRule.Named.FULL)
                .isPresent();
    }

    /** True when a word is one of the little ones that carry nothing by themselves. */
    public static boolean isNoise(String folded) {
        List<Word> words = Word.of(folded);
        List<Hit> hits = WORDS.find(words);
        return words.stream()
                .allMatch(w -> hits.stream()
                        .anyMatch(h -> h.from() <= w.from()
                                && w.to() <= h.to()
                                && h.ideas().contains(NOISE)));
    }

    private static Optional<Found<RoleReading>> read(Claims claims, List<Word> words, Evidence best) {
        List<Hit> hits = WORDS.find(words);
        Map<Hit, String> carrying = carrying(hits);
        Optional<RoleRule> rule = choose(carrying);
        if (rule.isEmpty()) {
            return Optional.empty();
        }
        List<Hit> used = used(rule.get(), carrying);
        int from = used.stream().mapToInt(Hit::from).min().orElseThrow();
        int to = used.stream().mapToInt(Hit::to).max().orElseThrow();
        List<String> because = used.stream()
                .map(h -> claims.passage().text().substring(h.from(), h.to()))
                .distinct()
                .toList();
        boolean unknownBeside = best == Evidence.IN_ITS_COLUMN && hasUnknown(words, hits);
        Found<RoleReading> found = new Found<>(
                new RoleReading(rule.get().role(), because),
                evidence(rule.get(), used, unknownBeside, best),
                claims.passage().origin(from, to),
                claims.passage().text().substring(from, to));
        hits.stream()
                .filter(h -> used.contains(h) || (h.ideas().contains(NOISE) && h.match() != Hit.Match.MISSPELT))
                .forEach(h -> claims.claim(h.from(), h.to()));
        return Optional.of(found);
    }

    private static Evidence evidence(RoleRule rule, List<Hit> used, boolean unknownBeside, Evidence best) {
        if (rule.named() == RoleRule.Named.AMBIGUOUS) {
            return Evidence.AMBIGUOUS;
        }
        if (rule.named() == RoleRule.Named.HALF) {
            return Evidence.HALF_NAMED;
        }
        if (used.stream().anyMatch(h -> h.match() == Hit.Match.MISSPELT)) {
            return Evidence.MISSPELT;
        }
        if (unknownBeside) {
            return Evidence.BESIDE_UNKNOWN;
        }
        return used.stream().anyMatch(h -> h.match() == Hit.Match.COMPOUND) ? Evidence.COMPOUND : best;
    }

    private static boolean hasUnknown(List<Word> words, List<Hit> hits) {
        return words.stream()
                .filter(w ->
                        w.text().length() > 2 && Character.isLetter(w.text().charAt(0)))
                .anyMatch(w -> hits.stream().noneMatch(h -> h.from() < w.to() && w.from() < h.to()));
    }

    /** Each phrase that carries something, with the idea it is taken for. */
    private static Map<Hit, String> carrying(List<Hit> hits) {
        Map<Hit, String> carrying = new LinkedHashMap<>();
        for (Hit hit : hits) {
            hit.ideas().stream()
                    .filter(idea -> !idea.equals(NOISE))
                    .findFirst()
                    .ifPresent(idea -> carrying.put(hit, idea));
        }
        return carrying;
    }

    private static Optional<RoleRule> choose(Map<Hit, String> carrying) {
        Set<String> ideas = new TreeSet<>(carrying.values());
        if (ideas.contains(KNOWN_OTHER)) {
            // A lamp or switch that is known and none of ours is never taken for one of ours.
            return Optional.of(new RoleRule(CircuitRole.OTHER, Set.of(KNOWN_OTHER), Set.of(), RoleRule.Named.FULL));
        }
        List<RoleRule> fitting = RULES.stream()
                .filter(rule -> rule.fits(ideas))
                .sorted(Comparator.comparingInt((RoleRule r) -> r.needs().size())
                        .reversed())
                .toList();
        if (fitting.isEmpty()) {
            return Optional.empty();
        }
        int most = fitting.getFirst().needs().size();
        List<RoleRule> best =
                fitting.stream().filter(r -> r.needs().size() == most).toList();
        if (best.stream().map(RoleRule::role).distinct().count() == 1) {
            return Optional.of(best.getFirst());
        }
        // Several roles are named as fully: the one named first, and it is said to be ambiguous.
        List<String> order = new ArrayList<>(carrying.values());
        return best.stream()
                .min(Comparator.comparingInt(
                        r -> r.needs().stream().mapToInt(order::indexOf).min().orElse(0)))
                .map(r -> new RoleRule(r.role(), r.needs(), r.bars(), RoleRule.Named.AMBIGUOUS));
    }

    private static List<Hit> used(RoleRule rule, Map<Hit, String> carrying) {
        return carrying.entrySet().stream()
                .filter(e -> rule.needs().contains(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }
}
