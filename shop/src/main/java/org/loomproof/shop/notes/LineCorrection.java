package org.loomproof.shop.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.correct.Correction;
import org.loomproof.intake.correct.ReviewLine;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * A field of the entry in a line put right by hand, as written: {@code 6:role=horn}, or {@code 6:41:role=horn} where the line holds several
 * entries and the one meant begins at column 41.
 *
 * @param written as given
 */
public record LineCorrection(String written) {

    private static final Pattern FORM = Pattern.compile("(\\d{1,6}):(?:(\\d{1,6}):)?([a-z]+)=(.+)");

    /** The entry that is meant, by its place among the lines, and what it becomes; or a problem of its own. */
    Optional<Made> in(List<ReviewLine> review, Problems problems) {
        Matcher form = FORM.matcher(written);
        Optional<Field> field = form.matches()
                ? Optional.ofNullable(Words.all(Field.class).get(form.group(3).toLowerCase(Locale.ROOT)))
                : Optional.empty();
        if (field.isEmpty()) {
            return problem(problems, Place.file(problems.file()), ProblemKind.WRONG_SHAPE, "problem.wanted.correction");
        }
        int line = Integer.parseInt(form.group(1));
        List<Integer> meant = meant(review, line, form.group(2));
        Place place = new Place(problems.file(), line, 1, "");
        if (meant.size() != 1) {
            return problem(
                    problems,
                    place,
                    ProblemKind.WRONG_SHAPE,
                    meant.isEmpty() ? "problem.wanted.line-of-a-circuit" : "problem.wanted.column-of-a-circuit");
        }
        Entry entry = review.get(meant.getFirst()).entry();
        Correction correction = Correction.of(entry, field.get(), form.group(4));
        Optional<Entry> right = correction.applied(entry);
        return right.isEmpty()
                ? problem(problems, place, ProblemKind.WRONG_SHAPE, meaning(field.get()))
                : Optional.of(new Made(meant.getFirst(), right.get(), correction));
    }

    private static String meaning(Field field) {
        return switch (field) {
            case ROLE -> "problem.wanted.role-meant";
            case COLOUR -> "problem.wanted.colour-meant";
            case SIZE -> "problem.wanted.size-meant";
            case POLARITY -> "problem.wanted.polarity-meant";
            case PLACE -> "problem.wanted.place-meant";
        };
    }

    /**
     * A correction that was made.
     *
     * @param at the entry's place among the lines
     * @param entry put right
     */
    record Made(int at, Entry entry, Correction correction) {}

    private static List<Integer> meant(List<ReviewLine> review, int line, String column) {
        List<Integer> meant = new ArrayList<>();
        for (int i = 0; i < review.size(); i++) {
            var origin = review.get(i).entry().origin();
            boolean holds = origin.line() <= line && line <= origin.lastLine();
            if (holds && (column == null || Integer.parseInt(column) == origin.column())) {
                meant.add(i);
            }
        }
        return meant;
    }

    private Optional<Made> problem(Problems problems, Place place, ProblemKind kind, String wanted) {
        problems.add(place, kind, written, Phrase.of(wanted));
        return Optional.empty();
    }
}
