package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.workshop.trade.colour.ColourReader;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * Finds insulation colours in a text. Words of other languages are put into English first; what they mean is then for the
 * workshop's own {@link ColourReader} to say, so that there is one reader of colours.
 */
public final class Colours {

    private static final Lexicon FOREIGN = Lexicon.read(Colours.class, "colours.words");

    /** Short forms that are also common words: colours only beside another colour or in a column of colours. */
    private static final Set<String> ALSO_WORDS = words("also-word");

    private static final Set<String> SHADES = words("shade");
    private static final Set<String> BETWEEN = words("between");

    /** Words that lead on to another colour: with them none ends. */
    private static final Set<String> LEADING_ON = words("leads-on");

    /** What a second colour may be laid on as. */
    private static final Set<String> STRIPES = words("stripe");

    private static final int SHORTEST_MISSPELT = 4;
    private static final Memo<Boolean> ENGLISH =
            new Memo<>(word -> ColourReader.read(word).isPresent());

    private static final Memo<Optional<WireColour>> COLOURS = new Memo<>(ColourReader::read);

    private static final Pattern JOINED = Pattern.compile("\\s*[-/.+&|\\\\_:]?\\s*|\\s*w/\\s*|\\.\\s?[-/]\\s?");
    private static final Pattern PARTED = Pattern.compile("\\s+-\\s+|.*:\\s+");

    private Colours() {}

    private static Set<String> words(String idea) {
        return Lexicon.listPhrases(Colours.class, "colour-marks.words", idea);
    }

    private record Piece(String english, int from, int to, Kind kind, Hit.Match match) {}

    private enum Kind {
        HUE,
        SHADE,
        BETWEEN,
        OTHER
    }

    /** The colour in a cell of a column of colours: all of its open text must be one, but for words about the wire. */
    public static Optional<Found<WireColour>> inColumn(Claims claims) {
        return find(claims, true);
    }

    /** The first colour among other words. */
    public static Optional<Found<WireColour>> among(Claims claims) {
        return find(claims, false);
    }

    /** How many colours a text names among other words. */
    public static int count(Passage text) {
        Claims claims = new Claims(text);
        int count = 0;
        while (among(claims).isPresent()) {
            count++;
        }
        return count;
    }

    private static Optional<Found<WireColour>> find(Claims claims, boolean column) {
        List<Piece> pieces = pieces(claims.words(), claims.passage().text(), column);
        for (int at = 0; at < pieces.size(); at++) {
            Kind kind = pieces.get(at).kind();
            if (kind == Kind.HUE || kind == Kind.SHADE) {
                Optional<Found<WireColour>> found = from(at, pieces, claims, column);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** The longest colour that begins at the piece. */
    private static Optional<Found<WireColour>> from(int at, List<Piece> pieces, Claims claims, boolean column) {
        int end = at;
        while (end < pieces.size() && pieces.get(end).kind() != Kind.OTHER && joins(pieces, end, at, claims)) {
            end++;
        }
        for (int to = end; to > at; to--) {
            List<Piece> run = pieces.subList(at, to);
            if (LEADING_ON.contains(run.getLast().english())
                    || (run.getLast().kind() == Kind.SHADE && !isShadeBehind(run, claims))
                    || (!column && !isPlain(run, claims))) {
                continue;
            }
            Optional<WireColour> colour = COLOURS.of(english(run));
            if (colour.isPresent() && isHalf(run, pieces, claims, column)) {
                return Optional.empty();
            }
            if (colour.isPresent()) {
                int first = run.getFirst().from();
                int last = run.getLast().to();
                Found<WireColour> found = new Found<>(
                        colour.get(), evidence(run, column), claims.origin(first, last), claims.written(first, last));
                claims.claim(first, last);
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** True when a word that is no colour we know is joined to the colour: half of a two-coloured wire would be another wire. */
    private static boolean isHalf(List<Piece> run, List<Piece> pieces, Claims claims, boolean column) {
        int first = pieces.indexOf(run.getFirst());
        int last = pieces.indexOf(run.getLast());
        if (isStripedStrangely(pieces, last)) {
            return true;
        }
        if (!column && run.stream().filter(p -> p.kind() == Kind.HUE).count() > 1) {
            // No wire has a third: what stands behind another stroke is something else.
            return false;
        }
        String joints = column ? "-/.+&|\\" : "/";
        return (first > 0
                        && isUnknownBeside(
                                pieces.get(first - 1), pieces.get(first - 1), run.getFirst(), claims, joints))
                || (last + 1 < pieces.size()
                        && isUnknownBeside(pieces.get(last + 1), run.getLast(), pieces.get(last + 1), claims, joints));
    }

    /** True when a stripe follows whose colour nobody knows: "beige with copper dots". */
    private static boolean isStripedStrangely(List<Piece> pieces, int last) {
        int at = last + 1;
        while (at < pieces.size() && LEADING_ON.contains(pieces.get(at).english())) {
            at++;
        }
        return at > last + 1
                && at + 1 < pieces.size()
                && pieces.get(at).kind() == Kind.OTHER
                && STRIPES.contains(pieces.get(at + 1).english());
    }

    private static boolean isUnknownBeside(Piece unknown, Piece left, Piece right, Claims claims, String joints) {
        return unknown.kind() == Kind.OTHER
                && unknown.english().codePoints().allMatch(Character::isLetter)
                && right.from() - left.to() == 1
                && joints.indexOf(claims.open().charAt(left.to())) >= 0;
    }

    /** True when the piece still belongs to the colour that began before it: nothing but a mark of joining stands between. */
    private static boolean joins(List<Piece> pieces, int next, int first, Claims claims) {
        if (next == first) {
            return true;
        }
        String gap = claims.open()
                .substring(pieces.get(next - 1).to(), pieces.get(next).from());
        return gap.equals(" ")
                || (JOINED.matcher(gap).matches() && !PARTED.matcher(gap).matches());
    }

    /** True when nobody takes the pieces for anything else: a word long enough to be a colour, or capitals joined by a stroke. */
    private static boolean isPlain(List<Piece> run, Claims claims) {
        List<Piece> hues = run.stream().filter(p -> p.kind() == Kind.HUE).toList();
        boolean allShort = hues.stream().allMatch(p -> isAlsoWord(p, claims));
        if (!allShort) {
            return hues.size() < 2 || hues.stream().noneMatch(p -> isAlsoWord(p, claims)) || isStroke(run, claims);
        }
        return hues.size() == 2 && isStroke(run, claims);
    }

    private static boolean isStroke(List<Piece> run, Claims claims) {
        for (int i = 1; i < run.size(); i++) {
            String gap = claims.open().substring(run.get(i - 1).to(), run.get(i).from());
            if (gap.contains("/") || gap.equals("-")) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAlsoWord(Piece piece, Claims claims) {
        String written = claims.written(piece.from(), piece.to());
        boolean capitals = written.equals(written.toUpperCase(Locale.ROOT)) && written.length() == 2;
        String folded = written.toLowerCase(Locale.ROOT);
        return ALSO_WORDS.contains(folded) || (folded.length() < 3 && !capitals);
    }

    private static Evidence evidence(List<Piece> run, boolean column) {
        if (run.stream().anyMatch(p -> p.match() == Hit.Match.BY_EAR)) {
            return Evidence.BY_EAR;
        }
        if (run.stream().anyMatch(p -> p.match() == Hit.Match.MISSPELT)) {
            return Evidence.MISSPELT;
        }
        return column ? Evidence.IN_ITS_COLUMN : Evidence.AMONG_OTHERS;
    }

    /** A shade of Spanish or French stands behind its colour. */
    private static boolean isShadeBehind(List<Piece> run, Claims claims) {
        Piece shade = run.getLast();
        return run.size() > 1
                && !SHADES.contains(claims.written(shade.from(), shade.to()).toLowerCase(Locale.ROOT));
    }

    /** The pieces in English, a shade that stands behind its colour put before it. */
    private static String english(List<Piece> run) {
        List<String> words = new ArrayList<>();
        boolean shadesBehind = run.getFirst().kind() == Kind.HUE
                && run.stream().anyMatch(p -> p.kind() == Kind.SHADE)
                && run.stream().filter(p -> p.kind() == Kind.SHADE).allMatch(p -> p.match() == Hit.Match.COMPOUND);
        for (Piece piece : run) {
            if (shadesBehind && piece.kind() == Kind.SHADE) {
                words.add(words.size() - 1, piece.english());
            } else {
                words.add(piece.english());
            }
        }
        return String.join(" ", words);
    }

    private static List<Piece> pieces(List<Word> words, String written, boolean column) {
        List<Piece> pieces = new ArrayList<>();
        for (Word word : words) {
            pieces.add(piece(word, written, column));
        }
        return pieces;
    }

    private static Piece piece(Word word, String written, boolean column) {
        String text = word.text();
        if (SHADES.contains(text)) {
            return new Piece(text, word.from(), word.to(), Kind.SHADE, Hit.Match.EXACT);
        }
        // "w" is "with" before a stroke and a blank, and white anywhere else.
        boolean with = text.equals("w") && written.startsWith("/ ", word.to());
        if (with || (BETWEEN.contains(text) && !text.equals("w"))) {
            return new Piece(with ? "with" : text, word.from(), word.to(), Kind.BETWEEN, Hit.Match.EXACT);
        }
        // "26V black" is a plug of 26 ways, or a voltage, and not violet with black.
        boolean unit = text.length() == 1 && word.from() > 0 && Character.isDigit(written.charAt(word.from() - 1));
        if (!unit && ENGLISH.of(text)) {
            return new Piece(text, word.from(), word.to(), Kind.HUE, Hit.Match.EXACT);
        }
        return foreign(word, column);
    }

    private static Piece foreign(Word word, boolean column) {
        List<Hit> hits = FOREIGN.find(List.of(word));
        if (!hits.isEmpty() && (!hits.getFirst().isOff() || column)) {
            String english = String.join(
                    " ", hits.stream().map(h -> h.ideas().getFirst()).toList());
            Hit.Match match = hits.getFirst().match();
            if (english.equals("light") || english.equals("dark")) {
                // Marked as put together: it may stand behind its colour.
                return new Piece(english, word.from(), word.to(), Kind.SHADE, Hit.Match.COMPOUND);
            }
            boolean between = BETWEEN.contains(english);
            return new Piece(english, word.from(), word.to(), between ? Kind.BETWEEN : Kind.HUE, match);
        }
        if (column && word.text().length() >= SHORTEST_MISSPELT) {
            Optional<String> meant = EnglishColours.meant(word.text());
            if (meant.isPresent()) {
                return new Piece(meant.get(), word.from(), word.to(), Kind.HUE, Hit.Match.MISSPELT);
            }
            Optional<String> heard = EnglishColours.heard(word.text());
            if (heard.isPresent()) {
                return new Piece(heard.get(), word.from(), word.to(), Kind.HUE, Hit.Match.BY_EAR);
            }
        }
        return new Piece(word.text(), word.from(), word.to(), Kind.OTHER, Hit.Match.EXACT);
    }

    /** Misspelt English colour names, read only where a colour is expected. */
    private static final class EnglishColours {
        private static final Misspelling NAMES = new Misspelling(words("often-misspelt"), SHORTEST_MISSPELT);

        private static final ByEar SOUNDS = new ByEar(words("often-misspelt"));

        private static Optional<String> meant(String word) {
            return NAMES.meant(word);
        }

        private static Optional<String> heard(String word) {
            List<String> alike = SOUNDS.listAlike(word);
            return alike.size() == 1 ? Optional.of(alike.getFirst()) : Optional.empty();
        }
    }
}
