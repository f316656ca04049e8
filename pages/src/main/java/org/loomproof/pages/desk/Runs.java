package org.loomproof.pages.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.loomproof.book.card.Card;

/**
 * The runs of planning and proving that a job names, each with papers of its own: the latest, the one before its texts were changed,
 * and the one that the work was done by. Papers of any other run are nobody's.
 */
public final class Runs {

    /** The entry with the run that the job's verdicts and papers are of. */
    public static final String LATEST = "run";

    private static final String BEFORE = "run-before";
    private static final String BUILT = "built-run";

    /** A task's own name, and what was added to it once every fault was tried. */
    private static final Pattern LABEL = Pattern.compile("([a-z2-7]{26}(\\.tried)?)/.+");

    private Runs() {}

    /** What is written on a job whose texts were changed: its verdicts stand no more, and their run is the one before. */
    public static Map<String, String> overtaken(Card job) {
        Map<String, String> changes = new HashMap<>(
                Map.of(LATEST, "", "verdict", "", "holds", "", "broken", "", "open", "", "parts", "", "needs", ""));
        job.entries().find(LATEST).ifPresent(run -> changes.put(BEFORE, run));
        return changes;
    }

    /** What is written on a job when a step of the work was done: by the plan of the latest run. */
    public static Map<String, String> built(Card job) {
        return job.entries().find(LATEST).map(run -> Map.of(BUILT, run)).orElse(Map.of());
    }

    /** With which run the latest is compared: what was carried out, or else what stood before. */
    public static Optional<String> comparedWith(Card job) {
        return job.entries()
                .find(BUILT)
                .or(() -> job.entries().find(BEFORE))
                .filter(run -> !base(run).equals(base(job.get(LATEST))));
    }

    /** The run that the job's plan is of, whether or not its verdict still stands. */
    public static Optional<String> lastPlanned(Card job) {
        return job.entries().find(LATEST).or(() -> job.entries().find(BEFORE));
    }

    /** Which labels are those of papers of a run that the job does not name. */
    public static Predicate<String> nobodys(Card job) {
        List<String> named = Stream.of(LATEST, BEFORE, BUILT).map(job::get).toList();
        return label -> {
            var paper = LABEL.matcher(label);
            return paper.matches() && !named.contains(paper.group(1));
        };
    }

    /** The same plan, whether or not every fault was tried by now. */
    private static String base(String run) {
        return run.replaceFirst("\\..*", "");
    }
}
