package org.loomproof.intake.field;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.intake.decode.Passage;

/**
 * Phrases and what they mean, from data files with lines {@code idea: phrase, phrase}. A phrase is found in any case, with
 * or without accents and common endings, put together with others into one word, or misspelt by a letter.
 */
public final class Lexicon {

    private static final int SHORTEST_STEM = 4;
    private static final List<String> ENDINGS = List.of("en", "er", "es", "em", "e", "n", "s", "a", "as", "os", "o");

    /** Words of every day that are no misspelling of anything. */
    private static final Set<String> ORDINARY = listPhrases(Lexicon.class, "ordinary.words", "ordinary");

    private record Entry(List<String> words, List<String> ideas) {}

    private final Map<String, List<Entry>> byFirstWord = new HashMap<>();
    private final Map<String, List<String>> single = new HashMap<>();
    private final Misspelling misspelling;
    private final ByEar byEar;
    private final Memo<List<Hit>> alone = new Memo<>(this::meaning);
    private final Memo<List<Entry>> first = new Memo<>(this::phrasesFrom);

    private Lexicon(Map<String, Set<String>> ideasByPhrase) {
        ideasByPhrase.forEach((phrase, ideas) -> {
            List<String> words = Word.of(phrase).stream().map(Word::text).toList();
            byFirstWord
                    .computeIfAbsent(words.getFirst(), w -> new ArrayList<>())
                    .add(new Entry(words, List.copyOf(ideas)));
            if (words.size() == 1) {
                single.put(words.getFirst(), List.copyOf(ideas));
            }
        });
        byFirstWord
                .values()
                .forEach(entries -> entries.sort(
                        Comparator.comparingInt((Entry e) -> e.words().size()).reversed()));
        misspelling = new Misspelling(single.keySet());
        byEar = new ByEar(single.keySet());
    }

    /** The lexicon in the files that lie beside the class. */
    public static Lexicon read(Class<?> beside, String... files) {
        Map<String, Set<String>> ideas = new HashMap<>();
        for (String file : files) {
            for (String line : lines(beside, file)) {
                int colon = line.indexOf(':');
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (colon <= 0) {
                    throw new IllegalStateException(file + ": no idea in front of a colon: " + line);
                }
                for (String phrase : line.substring(colon + 1).split(",", -1)) {
                    String folded = Passage.fold(phrase.strip());
                    if (Word.of(folded).isEmpty()) {
                        throw new IllegalStateException(file + ": an empty phrase: " + line);
                    }
                    // Singular and plural are one phrase: what either means, both may.
                    String stems =
                            Word.of(folded).stream().map(w -> stem(w.text())).collect(Collectors.joining(" "));
                    ideas.computeIfAbsent(stems, p -> new LinkedHashSet<>())
                            .add(line.substring(0, colon).strip());
                }
            }
        }
        return new Lexicon(ideas);
    }

    /** What its phrases may mean. */
    public Set<String> listIdeas() {
        return byFirstWord.values().stream()
                .flatMap(List::stream)
                .flatMap(entry -> entry.ideas().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The phrases that begin with the word, the longest first. */
    private List<Entry> phrasesFrom(String word) {
        return byFirstWord.getOrDefault(stem(word), List.of());
    }

    /** The phrases of one idea in a file that lies beside the class, folded: a list of words that only belong together. */
    public static Set<String> listPhrases(Class<?> beside, String file, String idea) {
        Set<String> phrases = lines(beside, file).stream()
                .filter(line -> line.startsWith(idea + ":"))
                .flatMap(line -> Arrays.stream(line.substring(idea.length() + 1).split(",", -1)))
                .map(phrase -> Passage.fold(phrase.strip()))
                .collect(Collectors.toUnmodifiableSet());
        if (phrases.isEmpty()) {
            throw new IllegalStateException(file + ": nothing stands behind " + idea);
        }
        return phrases;
    }

    private static List<String> lines(Class<?> beside, String file) {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("data file " + file + " is not beside " + beside.getName());
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("data file " + file + " cannot be read", e);
        }
    }

    /** The phrases in these words, in order, the longest at each place; no two share a word. */
    public List<Hit> find(List<Word> words) {
        List<Hit> hits = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<Entry> phrase = phraseAt(words, at);
            if (phrase.isPresent()) {
                int last = at + phrase.get().words().size() - 1;
                hits.add(new Hit(
                        phrase.get().ideas(),
                        words.get(at).from(),
                        words.get(last).to(),
                        Hit.Match.EXACT));
                at = last + 1;
            } else {
                hits.addAll(alone(words.get(at)));
                at++;
            }
        }
        return hits;
    }

    private Optional<Entry> phraseAt(List<Word> words, int at) {
        for (Entry entry : first.of(words.get(at).text())) {
            if (fits(entry, words, at)) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    private static boolean fits(Entry entry, List<Word> words, int at) {
        if (at + entry.words().size() > words.size()) {
            return false;
        }
        for (int i = 1; i < entry.words().size(); i++) {
            if (!stem(words.get(at + i).text()).equals(entry.words().get(i))) {
                return false;
            }
        }
        return true;
    }

    /** What one word means that begins no phrase as it stands. */
    private List<Hit> alone(Word word) {
        List<Hit> hits = alone.of(word.text());
        return hits.isEmpty()
                ? hits
                : hits.stream()
                        .map(h -> new Hit(h.ideas(), h.from() + word.from(), h.to() + word.from(), h.match()))
                        .toList();
    }

    private List<Hit> meaning(String text) {
        Word word = new Word(text, 0, text.length());
        if (word.isNumber() || word.text().length() < SHORTEST_STEM) {
            return List.of();
        }
        for (String ending : ENDINGS) {
            if (text.endsWith(ending) && text.length() - ending.length() >= SHORTEST_STEM) {
                List<String> ideas = single.get(stem(text.substring(0, text.length() - ending.length())));
                if (ideas != null) {
                    return List.of(new Hit(ideas, word.from(), word.to(), Hit.Match.EXACT));
                }
            }
        }
        List<Hit> parts = Compound.parts(word, single);
        if (!parts.isEmpty()) {
            return parts;
        }
        return ORDINARY.contains(text) ? List.of() : misspelt(word);
    }

    private List<Hit> misspelt(Word word) {
        return misspelling
                .meant(word.text())
                .flatMap(meant -> hit(meant, word, Hit.Match.MISSPELT))
                .map(List::of)
                .orElse(List.of());
    }

    /** What {@link #find} finds, and words that only sound like one of ours where it finds nothing. */
    public List<Hit> hear(List<Word> words) {
        List<Hit> found = find(words);
        List<Hit> heard = words.stream()
                .filter(word -> !ORDINARY.contains(word.text())
                        && found.stream().noneMatch(hit -> hit.from() < word.to() && word.from() < hit.to()))
                .flatMap(word -> heard(word).stream())
                .toList();
        return heard.isEmpty()
                ? found
                : Stream.concat(found.stream(), heard.stream())
                        .sorted(Comparator.comparingInt(Hit::from))
                        .toList();
    }

    /** What a word sounds like, when all it sounds like means the same. */
    private Optional<Hit> heard(Word word) {
        List<Hit> alike = byEar.listAlike(stem(word.text())).stream()
                .flatMap(meant -> hit(meant, word, Hit.Match.BY_EAR).stream())
                .distinct()
                .toList();
        return alike.size() == 1 ? Optional.of(alike.getFirst()) : Optional.empty();
    }

    private Optional<Hit> hit(String meant, Word word, Hit.Match match) {
        return Optional.ofNullable(single.get(meant)).map(ideas -> new Hit(ideas, word.from(), word.to(), match));
    }

    /** A word without the s of a plural. */
    private static String stem(String word) {
        return word.length() >= SHORTEST_STEM && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }
}
