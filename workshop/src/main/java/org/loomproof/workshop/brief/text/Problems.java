package org.loomproof.workshop.brief.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** The problems of one file, gathered while it is read. */
public final class Problems {

    /** More than this many are counted, not listed: nobody reads on, and a hostile file must not fill the memory. */
    static final int MOST_LISTED = 500;

    private static final int MOST_SHOWN = 48;
    private static final Phrase NO_HINT = Phrase.of("problem.hint.none");

    private final String file;
    private final List<Problem> listed = new ArrayList<>();
    private int unlisted;

    public Problems(String file) {
        this.file = file;
    }

    /** The name of the file that is read. */
    public String file() {
        return file;
    }

    /** Notes a problem; {@code found} is shortened to what fits a line. */
    public void add(Place at, ProblemKind kind, String found, Phrase wanted, Phrase hint) {
        if (listed.size() < MOST_LISTED) {
            listed.add(new Problem(at, kind, shortened(found), wanted, hint));
        } else {
            unlisted++;
        }
    }

    /** Notes a problem that has no hint beyond what is wanted. */
    public void add(Place at, ProblemKind kind, String found, Phrase wanted) {
        add(at, kind, found, wanted, NO_HINT);
    }

    /** True while nothing is wrong. */
    public boolean isEmpty() {
        return listed.isEmpty();
    }

    /** All of them in the order of the text; the last one counts those not listed. */
    public List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(listed);
        sorted.sort(Comparator.comparingInt((Problem p) -> p.at().line()).thenComparingInt(p -> p.at().column()));
        if (unlisted > 0) {
            sorted.add(new Problem(
                    Place.file(file),
                    ProblemKind.MORE_PROBLEMS,
                    Integer.toString(unlisted),
                    Phrase.of("problem.wanted.fewer-problems", Integer.toString(MOST_LISTED)),
                    NO_HINT));
        }
        return List.copyOf(sorted);
    }

    /** The value when nothing is wrong, otherwise the problems. */
    public <T> Checked<T> orElse(T value) {
        return isEmpty() ? new Checked.Good<>(value) : new Checked.Bad<>(inOrder());
    }

    private static String shortened(String found) {
        StringBuilder out = new StringBuilder();
        found.strip().codePoints().limit(MOST_SHOWN + 1L).forEach(c -> out.appendCodePoint(isShown(c) ? c : ' '));
        if (out.codePointCount(0, out.length()) <= MOST_SHOWN) {
            return out.toString();
        }
        return out.substring(0, out.offsetByCodePoints(0, MOST_SHOWN - 1)) + "…";
    }

    private static boolean isShown(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR -> false;
            default -> true;
        };
    }
}
