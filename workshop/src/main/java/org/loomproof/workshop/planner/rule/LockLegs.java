package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;

/**
 * Which of two motor legs leaves its rest for locking: the one whose own switch is let go at rest and closes at the position
 * that the sheet itself calls {@code lock}. Legs that float both leave their rest each time, so of them nothing is said.
 */
final class LockLegs {

    private static final String LOCK = "lock";
    private static final String UNLOCK = "unlock";

    /** The two legs, told apart. */
    record Pair(Circuit locking, Circuit unlocking) {}

    private LockLegs() {}

    static Optional<Pair> of(Job job) {
        List<Circuit> legs = job.finder().list(CircuitRole.LOCK_MOTOR_LEG);
        if (legs.size() != 2) {
            return Optional.empty();
        }
        Circuit one = legs.getFirst();
        Circuit other = legs.getLast();
        if (leavesRest(job, one, LOCK, UNLOCK) && leavesRest(job, other, UNLOCK, LOCK)) {
            return Optional.of(new Pair(one, other));
        }
        if (leavesRest(job, other, LOCK, UNLOCK) && leavesRest(job, one, UNLOCK, LOCK)) {
            return Optional.of(new Pair(other, one));
        }
        return Optional.empty();
    }

    private static boolean leavesRest(Job job, Circuit leg, String at, String notAt) {
        List<Set<String>> madeBy = leg.paths().stream()
                .flatMap(List::stream)
                .filter(PathStep.Switch.class::isInstance)
                .map(PathStep.Switch.class::cast)
                .filter(s -> !s.closedAt().contains(rest(job, s.operatedBy())))
                .map(PathStep.Switch::closedAt)
                .toList();
        return !madeBy.isEmpty() && madeBy.stream().allMatch(closed -> closed.contains(at) && !closed.contains(notAt));
    }

    private static String rest(Job job, OperableId operable) {
        return job.brief().sheet().operable(operable).rest();
    }
}
