package org.loomproof.intake.field;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;

/** Reads where a wire is found: connector and cavity by how they are written, panels by the words they are named with. */
public final class Places {

    private static final Lexicon WORDS = Lexicon.read(Places.class, "place.words");
    private static final String PLUG =
            "(?:connectors?|conn?|plug|stecker|steckverbinder|conector|ficha|connecteur|fiche|prise)";
    private static final Pattern CAVITY = Pattern.compile(
            "\\b(?:pin|cavity|cav|terminal|term|position|pos|way|borne|borna|patilla|pata|kammer|kontakt|pol|voie|via|broche)"
                    + "\\.?\\s*(?:no\\.?|nr\\.?|num\\.?|#|:)?\\s*([a-z]?\\d{1,3}[a-z]?)\\b(?!\\s*[-]?\\s*(?:pin|way|v\\b|volt))");
    private static final Pattern PLUG_BY_NAME = Pattern.compile(
            "\\b" + PLUG + "\\b\\.?\\s*(?:no\\.?|nr\\.?|#|:)?\\s*([a-z]{0,3}\\d{1,4}[a-z]?|[a-z])\\b(?!\\s*-?\\s*pin)");
    private static final Pattern PLUG_HEADING = Pattern.compile(
            "\\s*" + PLUG
                    + "\\.?\\s*(?:no\\.?|nr\\.?|#|:)?\\s*[a-z]{0,3}\\d{0,4}[a-z]?\\s*(?:[(,-]?\\s*\\d{1,3}\\s?-?\\s?(?:pin|way|pol|polig|vias|voies|terminal|cavity)s?\\s*\\)?)?\\s*:?\\s*");
    private static final Pattern PLUG_BY_SIZE = Pattern.compile(
            "(?:\\b[a-z]{3,10}\\s+)?\\b\\d{1,3}\\s?-?\\s?(?:pin|way|pol|polig|poliger|poligen|poliges|vias|voies|terminal|cavity)\\s+(?:[a-z]{3,10}\\s+)?"
                    + PLUG + "\\b");
    private static final String WAYS = "\\d{1,3}\\s?-?\\s?(?:p|pins?|ways?|pol|polig|vias|voies)";
    private static final Pattern PLUG_BY_LOOK = Pattern.compile("\\b([a-z]{3,8})\\s+(?:" + WAYS + "(?:\\s+" + PLUG
            + ")?|" + PLUG + ")\\b|\\b" + WAYS + "\\s+([a-z]{3,8})\\b");
    private static final Pattern PLUG_CODE = Pattern.compile("\\b[cxjt]\\d{1,4}[a-z]?\\b");
    private static final Pattern ARTICLES =
            Pattern.compile("the|der|die|das|dem|den|des|el|la|los|las|le|les|l|du|de|a|of|im|am|your|my|its");
    private static final Pattern LEAD = Pattern.compile(ARTICLES.pattern()
            + "|at|in|on|to|into|from|an|am|im|in|auf|zum|zur|vom|en|al|au|aux|dans|sur|vers|y|and|und|et");
    private static final Pattern SIGNS_BETWEEN = Pattern.compile("[\\s.'/" + Claims.CLAIMED + "-]*");

    private static final Pattern BLANK_OR_DASH = Pattern.compile("[\\s-]*");
    private static final Pattern NEXT_WORD = Pattern.compile(" [a-z]{3,}");
    private static final Pattern LITTLE_WORDS = Pattern.compile("[\\s'a-z]*");
    private static final Pattern POSITION = Pattern.compile(
            "behind|under|below|above|beside|next to|near|hinter|unter|neben|detras|bajo|debajo|junto|sous|derriere|pres");

    private Places() {}

    /** Connector and cavity, wherever they stand. */
    public static Spot plug(Claims claims) {
        String cavity = numbered(claims, CAVITY).map(m -> written(claims, m, 1)).orElse("");
        String connector = numbered(claims, PLUG_BY_SIZE)
                .map(m -> written(claims, m, 0))
                .or(() -> claims.claim(PLUG_BY_NAME).map(m -> written(claims, m, 1)))
                .or(() -> numbered(claims, PLUG_CODE).map(m -> written(claims, m, 0)))
                .orElse("");
        return new Spot("", connector, cavity);
    }

    /**
     * A plug by what it looks like, once the wire's own colour is known: {@code gry 20p}, {@code white 20 pin}, {@code blk plug}.
     * Its hue must be a colour.
     */
    public static Optional<String> plugByLook(Claims claims) {
        Matcher look = PLUG_BY_LOOK.matcher(claims.open());
        while (look.find()) {
            int hue = look.start(1) < 0 ? 2 : 1;
            Passage word = claims.passage().part(look.start(hue), look.end(hue));
            if (Colours.inColumn(new Claims(word)).isPresent()) {
                String written = written(claims, look, 0);
                claims.claim(look.start(), look.end());
                return Optional.of(written);
            }
        }
        return Optional.empty();
    }

    /** The first match of a pattern that holds a number. */
    private static Optional<Matcher> numbered(Claims claims, Pattern pattern) {
        return claims.hasNumber() ? claims.claim(pattern) : Optional.empty();
    }

    /** True when the text names a plug and nothing else, how many ways it has aside: {@code Plug A (6 way)}. */
    public static boolean isPlug(String folded) {
        return PLUG_HEADING.matcher(folded).matches();
    }

    private static String written(Claims claims, Matcher matcher, int group) {
        return claims.written(matcher.start(group), matcher.end(group));
    }

    /** A place behind a word that leads to it: {@code at the ignition switch}. */
    public static Optional<Found<String>> afterPreposition(Claims claims) {
        List<Hit> hits = claims.hits(WORDS);
        for (int i = 0; i < hits.size(); i++) {
            if (!hits.get(i).means("toward") || hits.get(i).isOff()) {
                continue;
            }
            Optional<int[]> run = run(hits, i + 1, claims);
            if (run.isPresent() && isNear(hits.get(i).to(), run.get()[0], claims)) {
                int from = run.get()[0];
                int to = run.get()[1];
                // "behind the radio" is a place, "in the radio" is the radio.
                int led = between(hits.get(i).to(), from, claims);
                int start = isPosition(hits.get(i), claims) ? hits.get(i).from() : led;
                boolean alone = led == from && !goesOn(to, claims);
                return Optional.of(claimed(
                        claims,
                        hits.get(i).from(),
                        start,
                        to,
                        alone ? Evidence.AMONG_OTHERS : Evidence.BESIDE_UNKNOWN));
            }
        }
        return Optional.empty();
    }

    /** A place that fills all between two marks of punctuation. */
    public static Optional<Found<String>> wholeSegment(Claims claims) {
        String open = claims.open();
        for (int[] segment : Segments.of(open)) {
            List<Word> words = Word.of(open.substring(segment[0], segment[1])).stream()
                    .map(w -> new Word(w.text(), w.from() + segment[0], w.to() + segment[0]))
                    .toList();
            if (words.isEmpty()) {
                continue;
            }
            List<Hit> hits = WORDS.find(words);
            boolean filled = !hits.isEmpty()
                    && hits.getFirst().from() == words.getFirst().from()
                    && coversAll(hits, words)
                    && hits.stream().anyMatch(h -> h.means("head"));
            if (filled) {
                boolean misspelt = hits.stream().anyMatch(h -> h.match() == Hit.Match.MISSPELT);
                int from = words.getFirst().from();
                int to = words.getLast().to();
                return Optional.of(
                        claimed(claims, from, from, to, misspelt ? Evidence.MISSPELT : Evidence.AMONG_OTHERS));
            }
        }
        return Optional.empty();
    }

    /** What a line says of where wires are, when it says nothing else: a place, a plug, or a plug and where it is. */
    public static Optional<Spot> whole(Passage line) {
        if (isPlace(line.folded())) {
            return Optional.of(new Spot(line.text(), "", ""));
        }
        Claims claims = new Claims(line);
        Spot plug = plug(claims);
        List<Passage> left = claims.leftOver();
        boolean beside = left.size() == 1 && isPlace(left.getFirst().folded());
        return !plug.connector().isEmpty() && beside
                ? Optional.of(new Spot(left.getFirst().text().strip(), plug.connector(), plug.cavity()))
                : Optional.empty();
    }

    /** True when the text is made of nothing but words of places, and names one. */
    public static boolean isPlace(String folded) {
        List<Word> words = Word.of(folded);
        List<Hit> hits = WORDS.find(words);
        return !words.isEmpty() && coversAll(hits, words) && hits.stream().anyMatch(h -> h.means("head"));
    }

    /** True for a word of which names of places are made. */
    public static boolean isWord(String folded) {
        return coversAll(WORDS.find(Word.of(folded)), Word.of(folded));
    }

    private static boolean coversAll(List<Hit> hits, List<Word> words) {
        for (Word word : words) {
            if (hits.stream().noneMatch(h -> h.from() <= word.from() && word.to() <= h.to())) {
                return false;
            }
        }
        return true;
    }

    private static Found<String> claimed(Claims claims, int claimFrom, int from, int to, Evidence evidence) {
        Found<String> found =
                new Found<>(claims.written(from, to), evidence, claims.origin(from, to), claims.written(from, to));
        claims.claim(claimFrom, to);
        return found;
    }

    /** From where to where words of a place run on, when a head is among them; leading articles are left off. */
    private static Optional<int[]> run(List<Hit> hits, int first, Claims claims) {
        int from = -1;
        int to = -1;
        boolean head = false;
        for (int i = first; i < hits.size(); i++) {
            Hit hit = hits.get(i);
            boolean near = to < 0
                    || (SIGNS_BETWEEN
                                    .matcher(claims.open().substring(to, hit.from()))
                                    .matches()
                            && !claims.open().substring(to, hit.from()).contains(" - ")
                            && !claims.open().substring(to, hit.from()).contains(". "));
            if (!near || (!hit.means("head") && !hit.means("which") && !hit.means("toward"))) {
                break;
            }
            from = from < 0 && !isArticle(hit, claims) ? hit.from() : from;
            if (hit.means("head")) {
                head = true;
                to = hit.to();
            } else if (from >= 0 && !head) {
                to = hit.to();
            } else if (from >= 0 && isTrailing(to, hit, claims)) {
                to = hit.to();
            }
        }
        return head && from >= 0 ? Optional.of(new int[] {from, to}) : Optional.empty();
    }

    /** "Kick panel driver side" and "fuse box cover" go on behind the head; "kick panel of the" does not. */
    private static boolean isTrailing(int to, Hit hit, Claims claims) {
        String text = claims.open().substring(hit.from(), hit.to());
        return BLANK_OR_DASH.matcher(claims.open().substring(to, hit.from())).matches()
                && !LEAD.matcher(text).matches()
                && !isPosition(hit, claims);
    }

    private static boolean isArticle(Hit hit, Claims claims) {
        String text = claims.open().substring(hit.from(), hit.to());
        return ARTICLES.matcher(text).matches();
    }

    private static boolean isPosition(Hit hit, Claims claims) {
        String text = claims.open().substring(hit.from(), hit.to());
        return POSITION.matcher(text).lookingAt();
    }

    /** Where a place begins: a word that nobody knows, between the word that leads to it and its own, is part of its name. */
    private static int between(int end, int start, Claims claims) {
        return Word.of(claims.open()).stream()
                .filter(w -> w.from() >= end && w.to() <= start)
                .filter(w -> !ARTICLES.matcher(w.text()).matches())
                .mapToInt(Word::from)
                .findFirst()
                .orElse(start);
    }

    /** True when a word follows that may still belong to the place. */
    private static boolean goesOn(int to, Claims claims) {
        return NEXT_WORD
                .matcher(claims.open())
                .region(to, claims.open().length())
                .lookingAt();
    }

    /** Where a stretch begins without the words that lead to it: {@code to the column bracket} without "to the". */
    public static int behindLead(Claims claims, int from, int to) {
        int start = from;
        List<Word> words = Word.of(claims.open()).stream()
                .filter(w -> w.from() >= from && w.to() <= to)
                .toList();
        for (Word word : words) {
            if (!LEAD.matcher(word.text()).matches()) {
                return word.from();
            }
            start = word.to();
        }
        return start;
    }

    private static boolean isNear(int end, int start, Claims claims) {
        String gap = claims.open().substring(end, start);
        return gap.length() <= 12 && LITTLE_WORDS.matcher(gap).matches();
    }
}
