package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.role.Roles;

/**
 * Short forms that the notes explain themselves: {@code (G) = makes ground}, {@code gr = grau}, {@code DKP: driver kick panel}. What stands for
 * what holds in all of the notes, before any dictionary: elsewhere "gr" is green or grey. A short form is put out in full where it stands, and
 * keeps its place in the source.
 */
final class Legend {

    /** A short form, alone or in brackets, in front of an equals sign or a colon. */
    private static final Pattern PAIR =
            Pattern.compile("(?<![\\p{L}\\p{N}])(\\(\\p{L}{1,4}\\)|\\p{L}{1,4})\\s*(?:=|:(?=\\s))\\s*");

    /** Where the meaning of a short form ends. */
    private static final Pattern END = Pattern.compile("[,;.|/)\\]\\t]|\\s{2,}|\\s-\\s|$");

    /** A short form right before its meaning, as in {@code (ve verde, vi violeta)}. */
    private static final Pattern BARE_PAIR =
            Pattern.compile("\\s*(\\p{L}{1,3})\\s+(\\p{L}{3,12})(?:\\s*[,;]\\s*|\\s+)");

    private static final Pattern BRACKETS_AROUND = Pattern.compile("^\\(|\\)$");
    private static final Pattern LED_ON = Pattern.compile(" (?:at|in|on|by|under|behind|am|an|im|en|au|dans|sur)\\b");
    private static final Pattern GREY_OR_GREEN = Pattern.compile("\\bg[rn]\\b");
    private static final int LEAST_BARE = 3;
    private static final int LEAST_PAIRS = 2;
    private static final int MOST_WORDS = 5;
    private static final Pattern TOKEN =
            Pattern.compile("\\(\\p{L}{1,4}\\)|(?<![\\p{L}\\p{N}'])\\p{L}{1,4}(?![\\p{L}\\p{N}'])");

    private final Map<String, Meaning> meanings = new HashMap<>();
    private final Set<Passage> lines = new HashSet<>();

    private Legend() {}

    private record Meaning(String text, boolean isColour) {}

    private record Pair(String shortForm, Meaning meaning) {}

    /** The legend in these lines; empty when they explain nothing. */
    static Legend of(List<Passage> lines) {
        Legend legend = new Legend();
        List<Passage> block = new ArrayList<>();
        List<Pair> blockPairs = new ArrayList<>();
        for (Passage line : lines) {
            List<Pair> pairs = pairs(line);
            if (pairs.size() >= LEAST_PAIRS) {
                legend.learn(List.of(line), pairs);
            } else if (pairs.size() == 1) {
                block.add(line);
                blockPairs.addAll(pairs);
                continue;
            }
            legend.learnBlock(block, blockPairs);
        }
        legend.learnBlock(block, blockPairs);
        legend.inferred(lines);
        return legend;
    }

    private void learnBlock(List<Passage> block, List<Pair> pairs) {
        if (pairs.size() >= LEAST_PAIRS) {
            learn(block, pairs);
        }
        block.clear();
        pairs.clear();
    }

    private void learn(List<Passage> from, List<Pair> pairs) {
        pairs.forEach(pair -> meanings.putIfAbsent(key(pair.shortForm()), pair.meaning()));
        lines.addAll(from);
    }

    /** A single letter is written as it is explained; of longer ones the case does not count. */
    private static String key(String shortForm) {
        return shortForm.length() == 1 ? shortForm : Passage.fold(shortForm);
    }

    /** True for a line that explains short forms and says nothing of a circuit. */
    boolean explains(Passage line) {
        return lines.contains(line);
    }

    private static List<Pair> pairs(Passage line) {
        List<Pair> pairs = new ArrayList<>();
        Matcher matcher = PAIR.matcher(line.text());
        while (matcher.find()) {
            Matcher end = END.matcher(line.text()).region(matcher.end(), line.length());
            Passage meaning = line.slice(matcher.end(), end.find() ? end.start() : line.length());
            meaning(matcher.group(1), meaning).ifPresent(m -> pairs.add(new Pair(matcher.group(1), m)));
        }
        return pairs.isEmpty() ? bare(line) : pairs;
    }

    /** Short forms and colours by turns and nothing else. */
    private static List<Pair> bare(Passage line) {
        List<Pair> pairs = new ArrayList<>();
        String text = line.text().strip();
        Matcher pair = BARE_PAIR.matcher(BRACKETS_AROUND.matcher(text).replaceAll("") + " ");
        while (pair.lookingAt()) {
            Optional<Meaning> meaning = meaning(pair.group(1), Passage.line(pair.group(2), 1, 1));
            if (meaning.filter(Meaning::isColour).isEmpty()) {
                return List.of();
            }
            pairs.add(new Pair(pair.group(1), meaning.get()));
            pair.region(pair.end(), pair.regionEnd());
        }
        return pair.regionStart() == pair.regionEnd() && pairs.size() >= LEAST_BARE ? pairs : List.of();
    }

    /** What a short form stands for: a colour, a pole, a place or a circuit whose letters it is made of. */
    private static Optional<Meaning> meaning(String shortForm, Passage meaning) {
        String bare = Passage.fold(shortForm).replaceAll("[()]", "");
        String folded = meaning.folded().strip();
        if (folded.length() <= bare.length()
                || folded.split("\\s+", -1).length > MOST_WORDS
                || !isMadeOf(bare, folded)
                || (bare.length() > 1 && Roles.names(bare))) {
            return Optional.empty();
        }
        Claims claims = new Claims(meaning);
        boolean colour =
                Colours.inColumn(claims).isPresent() && claims.leftOver().isEmpty();
        if (colour) {
            return Optional.of(new Meaning(meaning.text(), true));
        }
        boolean says = Places.isPlace(folded)
                || Roles.names(folded)
                || Polarity.inColumn(new Claims(meaning)).isPresent();
        boolean isItselfColour =
                Colours.inColumn(new Claims(meaning.standingFor(bare))).isPresent() && bare.length() > 1;
        return says && !isItselfColour && Colours.count(meaning) == 0
                ? Optional.of(new Meaning(meaning.text(), false))
                : Optional.empty();
    }

    /** True when the short form begins as one of the words does and its letters follow in the meaning in order. */
    private static boolean isMadeOf(String shortForm, String meaning) {
        for (String word : meaning.split("[^a-z]+", -1)) {
            int from = meaning.indexOf(word);
            if (!word.isEmpty()
                    && word.charAt(0) == shortForm.charAt(0)
                    && follows(shortForm, meaning.substring(from))) {
                return true;
            }
        }
        return false;
    }

    private static boolean follows(String shortForm, String meaning) {
        int at = 0;
        for (int i = 0; i < shortForm.length(); i++) {
            at = meaning.indexOf(shortForm.charAt(i), at) + 1;
            if (at == 0) {
                return false;
            }
        }
        return true;
    }

    /** Some short forms say of others what they mean: who writes "gn" for green means grey by "gr". */
    private void inferred(List<Passage> lines) {
        Set<String> used = new TreeSet<>();
        for (Passage line : lines) {
            Matcher token = GREY_OR_GREEN.matcher(line.folded());
            while (token.find()) {
                if (isColourPlace(line.text(), token.start(), token.end())) {
                    used.add(token.group());
                }
            }
        }
        if (used.size() == 2) {
            meanings.putIfAbsent("gr", new Meaning("grey", true));
        }
    }

    /** The line with its short forms in full. */
    Passage applied(Passage line) {
        if (meanings.isEmpty() || explains(line)) {
            return line;
        }
        List<Passage> parts = new ArrayList<>();
        Matcher token = TOKEN.matcher(line.text());
        int from = 0;
        while (token.find()) {
            @Nullable Meaning meaning = meanings.get(key(token.group()));
            boolean anywhere = token.end() - token.start() > 1;
            if (meaning == null
                    || (meaning.isColour() && !anywhere && !isColourPlace(line.text(), token.start(), token.end()))) {
                continue;
            }
            parts.add(line.part(from, token.start()));
            String text = token.group().startsWith("(") ? "(" + meaning.text() + ")" : meaning.text();
            parts.add(line.part(token.start(), token.end()).standingFor(text));
            from = token.end();
        }
        parts.add(line.part(from, line.length()));
        return from == 0 ? line : Passage.append(parts);
    }

    /** A short colour of several letters is one anywhere; any other only alone in its cell or joined to another by a stroke. */
    private static boolean isColourPlace(String text, int from, int to) {
        return isJoined(text, from - 1, -1)
                || isJoined(text, to, 1)
                || (isEdge(text, from - 1, -1, "|,;:=(") && isEdge(text, to, 1, "|,;)("))
                || (isEdge(text, from - 1, -1, ":=")
                        && LED_ON.matcher(text).region(to, text.length()).lookingAt());
    }

    /** True when a stroke and then a letter stand there. */
    private static boolean isJoined(String text, int at, int step) {
        int next = at + step;
        return isWithin(text, at)
                && isWithin(text, next)
                && "/-".indexOf(text.charAt(at)) >= 0
                && Character.isLetter(text.charAt(next));
    }

    /** True when a cell may end there: the line does, or a gap, a tab or a mark stands there. */
    private static boolean isEdge(String text, int at, int step, String marks) {
        int blanks = 0;
        int next = at;
        while (isWithin(text, next) && Character.isWhitespace(text.charAt(next))) {
            blanks += text.charAt(next) == '\t' ? 2 : 1;
            next += step;
        }
        return blanks > 1 || !isWithin(text, next) || marks.indexOf(text.charAt(next)) >= 0;
    }

    private static boolean isWithin(String text, int at) {
        return at >= 0 && at < text.length();
    }
}
