package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.wiring.Corner;

/** Puts cases whose worst corners do not contradict each other together, so that one sweep serves them all. */
final class CornerGroups {

    private record Group(Corner corner, List<Integer> cases) {}

    private CornerGroups() {}

    /**
     * The corners to sweep, each with the cases it is worst for.
     *
     * @param evenUnharmed whether cases that no figure harms are to be swept as well; else they are in no group
     */
    static Map<Corner, List<Integer>> of(
            Map<Integer, Sensitivity> sensitivities, List<Integer> cases, boolean evenUnharmed) {
        List<Group> groups = new ArrayList<>();
        for (int each : cases) {
            Sensitivity sensitivity = sensitivities.get(each);
            if (sensitivity != null && (evenUnharmed || !sensitivity.harmful().isEmpty())) {
                place(each, sensitivities, groups);
            }
        }
        Map<Corner, List<Integer>> byCorner = new LinkedHashMap<>();
        groups.forEach(group -> byCorner.put(group.corner(), group.cases()));
        return byCorner;
    }

    private static void place(int each, Map<Integer, Sensitivity> sensitivities, List<Group> groups) {
        Corner own = sensitivity(each, sensitivities).worstCorner();
        for (int g = 0; g < groups.size(); g++) {
            Group group = groups.get(g);
            Corner together = group.corner().and(own);
            boolean allBear = sensitivity(each, sensitivities).bears(together)
                    && group.cases().stream()
                            .allMatch(c -> sensitivity(c, sensitivities).bears(together));
            if (allBear) {
                List<Integer> more = new ArrayList<>(group.cases());
                more.add(each);
                groups.set(g, new Group(together, more));
                return;
            }
        }
        groups.add(new Group(own, List.of(each)));
    }

    private static Sensitivity sensitivity(int each, Map<Integer, Sensitivity> sensitivities) {
        Sensitivity sensitivity = sensitivities.get(each);
        if (sensitivity == null) {
            throw new IllegalArgumentException("no sensitivity of case " + each);
        }
        return sensitivity;
    }
}
