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
import org.loomproof.intake.field.Memo;
import org.loomproof.intake.field.Word;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/**
 * Reads what a circuit is for. Words name ideas (door, trigger, release), in four languages; a role is a set of ideas. So
 * words that nobody put together before are understood, and unknown words stay unknown.
 */
public final class Roles {

    private static final Lexicon WORDS = Lexicon.read(Roles.class, "en.words", "es.words", "de.words", "fr.words");
    private static final List<RoleRule> RULES = RoleRule.readAll();
    private static final Memo<List<RoleRule>> BY_IDEAS = new Memo<>(Roles::fitting);
    private static final String NOISE = "noise";
    private static final String KNOWN_OTHER = "known-other";
    private static final int MOST_READINGS = 32;

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
        return choose(WORDS.find(words))
                .filter(c -> c.rule().named() == RoleRule.Named.FULL)
                .isPresent();
    }

    /** Where phrases of several words stand that carry a role: what they say together is not for other readers to pick apart. */
    public static List<int[]> phrases(Claims claims) {
        return claims.hits(WORDS).stream()
                .filter(h -> h.match() == Hit.Match.EXACT
                        && claims.open().substring(h.from(), h.to()).indexOf(' ') > 0
                        && h.ideas().stream().anyMatch(PHRASED::contains))
                .map(h -> new int[] {h.from(), h.to()})
                .toList();
    }

    private static final Set<String> PHRASED =
            Set.of("constant", "ignition", "accessory", "starter", "position-lamp", KNOWN_OTHER);

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

    /** True for a word that carries something, or is one of the little ones. */
    public static boolean isKnown(String folded) {
        List<Word> words = Word.of(folded);
        return !hasUnknown(words, WORDS.find(words));
    }

    private static Optional<Found<RoleReading>> read(Claims claims, List<Word> words, Evidence best) {
        List<Hit> hits = WORDS.hear(words);
        Optional<Choice> chosen = choose(hits);
        boolean unknown = hasUnknown(words, hits);
        if (chosen.isEmpty() || (chosen.get().rule().named() == RoleRule.Named.ALONE && unknown)) {
            return Optional.empty();
        }
        RoleRule rule = chosen.get().rule();
        List<Hit> used = used(rule, chosen.get().carrying());
        int from = used.stream().mapToInt(Hit::from).min().orElseThrow();
        int to = used.stream().mapToInt(Hit::to).max().orElseThrow();
        List<String> because = used.stream()
                .map(h -> claims.passage().text().substring(h.from(), h.to()))
                .distinct()
                .toList();
        boolean unknownBeside = best == Evidence.IN_ITS_COLUMN && unknown;
        Found<RoleReading> found = new Found<>(
                new RoleReading(rule.role(), because),
                evidence(rule, used, unknownBeside, best),
                claims.passage().origin(from, to),
                claims.passage().text().substring(from, to));
        hits.stream()
                .filter(h -> used.contains(h) || (h.ideas().contains(NOISE) && !h.isOff()))
                .forEach(h -> claims.claim(h.from(), h.to()));
        return Optional.of(found);
    }

    private static Evidence evidence(RoleRule rule, List<Hit> used, boolean unknownBeside, Evidence best) {
        if (rule.named() == RoleRule.Named.AMBIGUOUS) {
            return Evidence.AMBIGUOUS;
        }
        if (rule.named() == RoleRule.Named.HALF || rule.named() == RoleRule.Named.ALONE) {
            return Evidence.HALF_NAMED;
        }
        if (used.stream().anyMatch(h -> h.match() == Hit.Match.BY_EAR)) {
            return Evidence.BY_EAR;
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

    /** A rule with the reading it fits: each phrase that carries something, with the idea it is taken for. */
    private record Choice(RoleRule rule, Map<Hit, String> carrying) {}

    /** The rule that needs most, of all ways to take the phrases that may mean several things. */
    private static Optional<Choice> choose(List<Hit> hits) {
        Optional<Choice> best = Optional.empty();
        for (Map<Hit, String> reading : readings(hits)) {
            Optional<Choice> choice = choose(reading).map(rule -> new Choice(rule, reading));
            if (choice.isPresent() && (best.isEmpty() || BETTER.compare(choice.get(), best.get()) < 0)) {
                best = choice;
            }
        }
        return best;
    }

    private static final Comparator<Choice> BETTER = Comparator.comparingInt(
                    (Choice c) -> -c.rule().needs().size())
            .thenComparing(c -> c.rule().named());

    /** A word that is a letter off from something that is none of our roles may well be a word nobody knows. */
    private static boolean isCarried(String idea, Hit hit) {
        return !idea.equals(NOISE) && !(idea.equals(KNOWN_OTHER) && hit.isOff());
    }

    private static List<Map<Hit, String>> readings(List<Hit> hits) {
        List<Map<Hit, String>> readings = new ArrayList<>(List.of(new LinkedHashMap<>()));
        for (Hit hit : hits) {
            List<String> ideas =
                    hit.ideas().stream().filter(idea -> isCarried(idea, hit)).toList();
            List<Map<Hit, String>> longer = new ArrayList<>();
            for (Map<Hit, String> reading : readings) {
                // Of very many ways only the first idea of each further phrase is tried.
                for (String idea :
                        readings.size() < MOST_READINGS ? ideas : ideas.subList(0, Math.min(1, ideas.size()))) {
                    Map<Hit, String> next = new LinkedHashMap<>(reading);
                    next.put(hit, idea);
                    longer.add(next);
                }
            }
            readings = ideas.isEmpty() ? readings : longer;
        }
        return readings;
    }

    private static Optional<RoleRule> choose(Map<Hit, String> carrying) {
        Set<String> ideas = new TreeSet<>(carrying.values());
        if (ideas.contains(KNOWN_OTHER)) {
            // A lamp or switch that is known and none of ours is never taken for one of ours.
            return Optional.of(new RoleRule(CircuitRole.OTHER, Set.of(KNOWN_OTHER), Set.of(), RoleRule.Named.FULL));
        }
        List<RoleRule> best = BY_IDEAS.of(String.join(" ", ideas));
        if (best.isEmpty()) {
            return Optional.empty();
        }
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

    /** The rules that fit the ideas, given with blanks between, and need most of them. */
    private static List<RoleRule> fitting(String ideas) {
        Set<String> all = Set.of(ideas.split(" ", -1));
        List<RoleRule> fitting = RULES.stream().filter(rule -> rule.fits(all)).toList();
        int most = fitting.stream().mapToInt(r -> r.needs().size()).max().orElse(0);
        return fitting.stream().filter(r -> r.needs().size() == most).toList();
    }

    private static List<Hit> used(RoleRule rule, Map<Hit, String> carrying) {
        return carrying.entrySet().stream()
                .filter(e -> rule.needs().contains(e.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }
}
