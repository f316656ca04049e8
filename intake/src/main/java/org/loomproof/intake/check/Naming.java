package org.loomproof.intake.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.field.Word;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.intake.role.Roles;

/**
 * What a cell that may hold anything calls its circuit, and what that is for.
 *
 * @param name in the writer's words; as it was where the cell gives none
 * @param role empty where no stretch names one
 */
record Naming(String name, Optional<Found<RoleReading>> role) {

    private static final Pattern LABEL = Pattern.compile("^([^:=,;(]{2,40}?)\\s*(?::(?=\\s)|=+>?|[-=]>|\u2192|>)");

    /** By the first stretch that names a role in full; else by the first that names one at all. */
    static Naming of(Claims claims, String before) {
        String open = claims.open();
        List<int[]> segments = Segments.of(open);
        Matcher label = LABEL.matcher(open);
        if (label.find()) {
            // What stands in front of a colon or an arrow names the circuit, if it names any.
            Optional<Found<RoleReading>> named = Roles.among(claims, 0, label.end(1));
            if (named.isPresent()) {
                return new Naming(written(claims, 0, label.end(1)), named);
            }
            if (isUnknown(claims, label.end(1), label.end())) {
                return new Naming(written(claims, 0, label.end(1)), behindUnknown(claims, label.end(1)));
            }
        }
        Optional<int[]> full = segments.stream()
                .filter(s -> Roles.names(open.substring(s[0], s[1])))
                .findFirst();
        Optional<int[]> any = full.or(() -> segments.stream()
                .filter(s ->
                        Roles.among(new Claims(claims.passage()), s[0], s[1]).isPresent())
                .findFirst());
        if (any.isPresent()) {
            int[] segment = any.get();
            return new Naming(written(claims, segment[0], segment[1]), Roles.among(claims, segment[0], segment[1]));
        }
        boolean isNew = before.isEmpty() && !segments.isEmpty();
        return new Naming(
                isNew ? written(claims, segments.getFirst()[0], segments.getFirst()[1]) : before, Optional.empty());
    }

    private static String written(Claims claims, int from, int to) {
        return claims.passage().text().substring(from, to).strip();
    }

    /** Behind a name nobody knows, what the circuit is for may be said beside its colour; further behind it may as well be where it is. */
    private static Optional<Found<RoleReading>> behindUnknown(Claims claims, int end) {
        String open = claims.open();
        for (int[] segment : Segments.of(claims.passage().folded())) {
            if (segment[0] >= end && Roles.names(open.substring(segment[0], segment[1]))) {
                boolean besideColour = open.substring(segment[0], segment[1]).indexOf(Claims.CLAIMED) >= 0;
                Optional<Found<RoleReading>> role = Roles.among(claims, segment[0], segment[1])
                        .map(f -> besideColour ? f : f.on(Evidence.BESIDE_UNKNOWN));
                if (role.isPresent()) {
                    return role;
                }
            }
        }
        return Optional.empty();
    }

    /** True for a label that is a name nobody knows, with a colour right behind it. */
    private static boolean isUnknown(Claims claims, int end, int behind) {
        Passage label = claims.passage().slice(0, end);
        Claims rest = new Claims(claims.passage().part(behind, claims.passage().length()));
        return Word.of(label.folded()).stream().anyMatch(word -> word.text().length() > 2)
                && !Roles.isNoise(label.folded())
                && !Places.isPlace(label.folded())
                && !Places.plug(new Claims(label)).isSaid()
                && Colours.among(new Claims(label)).isEmpty()
                && Colours.among(rest).isPresent()
                && rest.open().strip().indexOf(Claims.CLAIMED) == 0;
    }

    private static final Set<String> BESIDE = Lexicon.listPhrases(Naming.class, "names.words", "beside");

    /** Names of more words than this are sentences. */
    private static final int LONGEST_NAME = 4;

    /** Marks around a name that are none of it: bullets, arrows, leaders. */
    private static final Pattern EDGES = Pattern.compile("^[\\s>*•=:.→-]+(?=\\p{L}|\\d)|[\\s>*=:…-]+$|\\.{2,}$");

    /** A name as it can be read: of a sentence the words that say what the circuit is for, with those beside them that tell it from others. */
    static String readable(String name, @Nullable Found<RoleReading> role) {
        String bare = EDGES.matcher(name).replaceAll("").strip();
        List<Word> words = Word.of(Passage.fold(bare));
        if (words.size() <= LONGEST_NAME || role == null) {
            return bare;
        }
        int at = bare.indexOf(role.written());
        if (at < 0) {
            return bare;
        }
        int first = -1;
        int last = -1;
        for (int i = 0; i < words.size(); i++) {
            boolean carries = words.get(i).from() < at + role.written().length()
                    && words.get(i).to() > at;
            first = carries && first < 0 ? i : first;
            last = carries ? i : last;
        }
        while (first > 0 && tellsApart(words.get(first - 1))) {
            first--;
        }
        while (last >= 0 && last + 1 < words.size() && tellsApart(words.get(last + 1))) {
            last++;
        }
        return first < 0
                ? bare
                : bare.substring(words.get(first).from(), words.get(last).to());
    }

    private static boolean tellsApart(Word word) {
        return BESIDE.contains(word.text()) || (Roles.isKnown(word.text()) && !Roles.isNoise(word.text()));
    }

    /** True when what is left of a cell names a circuit in full. */
    static boolean isIn(Claims claims) {
        String open = claims.open();
        return Segments.of(open).stream().anyMatch(s -> Roles.names(open.substring(s[0], s[1])));
    }
}
