package org.loomproof.pages.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.book.card.Card;

/**
 * The steps of a job in the order of the work. What was entered tells how far it has come; those without an entry of their own are
 * done when somebody says so.
 */
public enum JobStep {
    CHECK_IN("checked-in"),
    ORDER("order"),
    SHEET("sheet"),
    KIT("kit"),
    PLAN("verdict"),
    BENCH("bench-done"),
    BAY("bay-done"),
    TEST("test-done"),
    HAND_OVER("handed-over");

    /** The entry that a job has while nobody knows why it came back, and its stage then. */
    public static final String COME_BACK = "come-back";

    /** The entry that a job has while it waits for parts, with the day since when, and its stage then. */
    public static final String PARTS = "waits-for-parts";

    private final String entry;

    JobStep(String entry) {
        this.entry = entry;
    }

    /** The entry that a job has once the step is done. */
    public String entry() {
        return entry;
    }

    /** As it stands in addresses and message files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * True when a job has done it. A plan that is not proven is a step not done, and so is one from which somebody deviated in the
     * car, until sheet or order say so.
     */
    public boolean isDone(Card job) {
        String value = job.get(entry);
        return this == PLAN ? value.equals("proven") && job.get("deviated").isBlank() : !value.isBlank();
    }

    /** True when it is done by saying so: the papers of the plan lead through it. */
    public boolean isSaid() {
        return this == BENCH || this == BAY;
    }

    /** The first step that is not done; nothing when all are. */
    public static Optional<JobStep> next(Card job) {
        return List.of(values()).stream().filter(step -> !step.isDone(job)).findFirst();
    }

    /** The stage that lists show: that it came back, or waits for parts, else the step that is next. */
    public static String stage(Card job) {
        return Stream.of(COME_BACK, PARTS)
                .filter(entry -> !job.get(entry).isEmpty())
                .findFirst()
                .orElseGet(() -> next(job).map(JobStep::word).orElse("done"));
    }

    /** These changes of a job, and the stage that comes of them. */
    public static Map<String, String> withStage(Card job, Map<String, String> changes) {
        Card after = new Card(
                job.id(),
                job.kind(),
                job.customer(),
                job.version(),
                job.entries().with(changes));
        Map<String, String> all = new HashMap<>(changes);
        all.put("stage", stage(after));
        return all;
    }

    /** The step a word from outside names. */
    public static Optional<JobStep> in(String word) {
        return List.of(values()).stream()
                .filter(step -> step.word().equals(word))
                .findFirst();
    }
}
