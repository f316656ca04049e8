package org.loomproof.pages.finished;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.desk.KeptFaults.Wrong;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * The faults and slips of a plan to be read, the worst first; those that come to the same and are noticed alike are told together.
 *
 * @param groups one for each severity that there is
 * @param about every name that a fault or slip is about
 */
public record FaultList(List<Group> groups, SortedSet<String> about) {

    /**
     * Of one severity.
     *
     * @param all how many faults and slips
     * @param noticed how many of those a test notices
     */
    public record Group(Severity severity, int all, int noticed, List<Entry> entries) {}

    /**
     * What comes to the same.
     *
     * @param wrongs any of these
     * @param notices the places of the tests that notice each of them; none when it has to be looked for
     */
    public record Entry(List<Wrong> wrongs, List<Integer> notices) {

        /** One of them: what comes of it is the same for all. */
        public Wrong first() {
            return wrongs.getFirst();
        }
    }

    /** What has to be the same for two to be told together. */
    private record Alike(
            List<String> effects,
            List<String> opens,
            List<String> undecided,
            List<Integer> noticedBy,
            String inspection) {

        static Alike of(Wrong wrong) {
            boolean looked = wrong.noticedBy().isEmpty();
            return new Alike(
                    wrong.effects(),
                    wrong.opens(),
                    wrong.undecided(),
                    wrong.noticedBy(),
                    looked ? wrong.inspection() : "");
        }
    }

    /** Those of a plan, or of one of its parts, wires, leads and circuits only. */
    public static FaultList of(KeptFaults faults, String part) {
        Map<Severity, List<Wrong>> bySeverity = new EnumMap<>(Severity.class);
        SortedSet<String> about = new TreeSet<>(Names.NATURAL);
        for (Wrong wrong : faults.wrongs()) {
            about.addAll(wrong.about());
            if (part.isEmpty() || wrong.about().contains(part)) {
                bySeverity
                        .computeIfAbsent(wrong.severity(), severity -> new ArrayList<>())
                        .add(wrong);
            }
        }
        List<Group> groups = new ArrayList<>();
        bySeverity.forEach((severity, wrongs) -> groups.add(group(severity, wrongs)));
        return new FaultList(groups, about);
    }

    private static Group group(Severity severity, List<Wrong> wrongs) {
        Map<Alike, List<Wrong>> alike = new LinkedHashMap<>();
        wrongs.forEach(wrong ->
                alike.computeIfAbsent(Alike.of(wrong), key -> new ArrayList<>()).add(wrong));
        List<Entry> entries = new ArrayList<>();
        alike.forEach((key, members) -> entries.add(new Entry(members, key.noticedBy())));
        int noticed = (int)
                wrongs.stream().filter(wrong -> !wrong.noticedBy().isEmpty()).count();
        return new Group(severity, wrongs.size(), noticed, entries);
    }
}
