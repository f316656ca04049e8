package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.field.Word;
import org.loomproof.intake.role.Roles;

/** Where a wire is, said in words that no list knows: taken for a place by where they stand. */
final class PlaceInOwnWords {

    private static final int MOST_WORDS_OF_A_SHORT_LINE = 9;
    private static final int MOST_WORDS_OF_A_PLACE = 5;

    private static final Pattern CLAIMED = Pattern.compile("[\\s,;:()/-]*" + Claims.CLAIMED + "+[\\s,;:()/-]*");
    private static final Pattern EMPTY_BRACKETS = Pattern.compile("\\(\\s*\\)");
    private static final Pattern MARKS_AROUND = Pattern.compile("^[,;:/-]+\\s*|\\s*[,;:/(*\u2020\u2021-]+$");

    private PlaceInOwnWords() {}

    /** All of a cell that is no connector or cavity, without the signs that stood between them. */
    static String ofCell(String written, Claims claims) {
        StringBuilder kept = new StringBuilder();
        for (int i = 0; i < written.length(); i++) {
            kept.append(claims.open().charAt(i) == Claims.CLAIMED ? Claims.CLAIMED : written.charAt(i));
        }
        String parted = CLAIMED.matcher(kept).replaceAll(" ");
        String bare = EMPTY_BRACKETS.matcher(parted).replaceAll("").strip();
        return MARKS_AROUND.matcher(bare).replaceAll("");
    }

    /**
     * A stretch of a few words behind the colour that nothing else explains: one that fills all between two marks, or in a short line
     * all that follows the colour.
     *
     * @param inColumn whether the text is that of a column of colours, where nothing can follow but what is about the wire
     * @param named whether what the wire is for has a column of its own
     */
    static Optional<Found<String>> behindColour(Claims claims, boolean inColumn, boolean named) {
        Claims whole = new Claims(claims.passage());
        Colours.among(whole);
        int behind = whole.open().lastIndexOf(Claims.CLAIMED);
        List<int[]> segments = Segments.of(claims.passage().folded());
        int least = named ? 1 : 2;
        boolean isShort = !inColumn && Word.of(claims.passage().folded()).size() <= MOST_WORDS_OF_A_SHORT_LINE;
        List<int[]> stretches = new ArrayList<>();
        for (int[] segment : segments) {
            boolean holdsColour = segment[0] <= behind && behind < segment[1];
            if (segment[1] > behind && behind >= 0 && (holdsColour ? isShort : segments.size() > least)) {
                open(holdsColour ? behind + 1 : segment[0], segment[1], claims).ifPresent(stretches::add);
            }
        }
        if (stretches.size() != 1) {
            return Optional.empty();
        }
        int from = Places.behindLead(claims, stretches.getFirst()[0], stretches.getFirst()[1]);
        Passage place = claims.passage().slice(from, stretches.getFirst()[1]);
        if (Word.of(place.folded()).size() > MOST_WORDS_OF_A_PLACE || place.isBlank() || Roles.names(place.folded())) {
            return Optional.empty();
        }
        claims.claim(stretches.getFirst()[0], stretches.getFirst()[1]);
        return Optional.of(new Found<>(place.text(), Evidence.BESIDE_UNKNOWN, place.origin(), place.text()));
    }

    /** The stretch between two offsets when nothing of it is claimed but what stands at its beginning, and it holds more than little words. */
    private static Optional<int[]> open(int from, int to, Claims claims) {
        int start = from;
        while (start < to && !Character.isLetterOrDigit(claims.open().charAt(start))) {
            start++;
        }
        String open = claims.open().substring(start, to);
        boolean isName = open.codePoints().anyMatch(Character::isLetter)
                && !Roles.isNoise(open)
                && open.indexOf(Claims.CLAIMED) < 0;
        return isName ? Optional.of(new int[] {start, to}) : Optional.empty();
    }
}
