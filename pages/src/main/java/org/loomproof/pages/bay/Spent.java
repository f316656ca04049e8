package org.loomproof.pages.bay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;

/**
 * What was used at a job besides what the plan takes, and how long it took.
 *
 * @param minutes the entries with times, as they were noted
 * @param parts the entries with parts, as they were noted
 */
public record Spent(List<Noted> minutes, List<Noted> parts) {

    public Spent {
        minutes = List.copyOf(minutes);
        parts = List.copyOf(parts);
    }

    /** What stands in a work log. */
    public static Spent of(List<Noted> standing) {
        return new Spent(
                standing.stream()
                        .filter(one -> one.work() instanceof Work.MinutesSpent)
                        .toList(),
                standing.stream()
                        .filter(one -> one.work() instanceof Work.PartUsed)
                        .toList());
    }

    /** All minutes together. */
    public double sum() {
        return byStep().values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** The minutes of each step, however often somebody was at it. */
    public Map<String, Double> byStep() {
        Map<String, Double> sums = new LinkedHashMap<>();
        for (Noted one : minutes) {
            if (one.work() instanceof Work.MinutesSpent(String step, double took)) {
                sums.merge(step, took, Double::sum);
            }
        }
        return sums;
    }

    /** For the shop's own minutes, a line {@code work,minutes} for each step that quotes count: the mean where it is done several times. */
    public Stream<String> timings(List<TimedStep> steps) {
        Map<String, Double> took = byStep();
        return steps.stream()
                .filter(step -> step.kind().isPresent() && took.getOrDefault(step.id(), 0.0) > 0)
                .map(step -> String.format(
                        Locale.ROOT,
                        "%s,%.2f",
                        step.kind().orElseThrow().word(),
                        took.getOrDefault(step.id(), 0.0) / step.times()));
    }
}
