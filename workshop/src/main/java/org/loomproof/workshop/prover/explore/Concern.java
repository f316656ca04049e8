package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;

/** Which cases are to be asked where, worked out once for a space. */
final class Concern {

    private final List<List<Optional<Condition.Doing>>> doings = new ArrayList<>();
    private final List<BitSet> positions = new ArrayList<>();
    private final List<Case> cases;

    Concern(Space space, List<Case> cases) {
        this.cases = cases;
        for (Case each : cases) {
            doings.add(space.conditions().stream().map(c -> doing(each, c)).toList());
            BitSet at = new BitSet();
            for (int p = 0; p < space.positions().size(); p++) {
                at.set(p, each.concerns(space.positions().get(p)));
            }
            positions.add(at);
        }
    }

    private static Optional<Condition.Doing> doing(Case each, Condition condition) {
        return condition.members().stream()
                .filter(member -> each.concerns(member))
                .findFirst();
    }

    boolean anyAt(int condition) {
        return doings.stream().anyMatch(d -> d.get(condition).isPresent());
    }

    /** The cases to be asked there, by their places. */
    List<Integer> at(int condition, int combination) {
        List<Integer> asked = new ArrayList<>();
        for (int c = 0; c < cases.size(); c++) {
            if (doings.get(c).get(condition).isPresent() && positions.get(c).get(combination)) {
                asked.add(c);
            }
        }
        return asked;
    }

    Condition.Doing doing(int caseIndex, int condition) {
        return doings.get(caseIndex)
                .get(condition)
                .orElseThrow(() ->
                        new IllegalArgumentException(cases.get(caseIndex).id() + " says nothing of " + condition));
    }
}
