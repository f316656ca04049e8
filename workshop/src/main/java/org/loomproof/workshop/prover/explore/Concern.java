package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;

/** Which cases are to be asked where, worked out once for a space. */
public final class Concern {

    private final List<List<Optional<Condition.Doing>>> doings = new ArrayList<>();
    private final List<BitSet> positions = new ArrayList<>();
    /** More steps than anybody takes. */
    static final int SUPPOSED = 1000;

    private final StepsTo stepsTo;
    private final int[] supplySteps;
    private final int[] positionSteps;
    private final int[][] conditionSteps;
    private final List<Case> cases;

    /** Works out where each case is asked. */
    public Concern(Space space, StepsTo stepsTo, List<Case> cases) {
        this.cases = cases;
        this.stepsTo = stepsTo;
        this.supplySteps = space.supplies().stream().mapToInt(StepsTo::count).toArray();
        this.positionSteps = space.positions().stream().mapToInt(stepsTo::count).toArray();
        for (Case each : cases) {
            doings.add(space.conditions().stream().map(c -> doing(each, c)).toList());
            BitSet at = new BitSet();
            for (int p = 0; p < space.positions().size(); p++) {
                at.set(p, each.concerns(space.positions().get(p)));
            }
            positions.add(at);
        }
        this.conditionSteps = doings.stream()
                .map(each -> each.stream()
                        .mapToInt(doing -> doing.map(this::steps).orElse(0))
                        .toArray())
                .toArray(int[][]::new);
    }

    private int steps(Condition.Doing doing) {
        return (stepsTo.isSupposed(doing) ? SUPPOSED : 0) + stepsTo.count(doing);
    }

    /** Of the doings that the case concerns the one with the fewest steps. */
    private Optional<Condition.Doing> doing(Case each, Condition condition) {
        return condition.members().stream()
                .filter(member -> each.concerns(member))
                .min(Comparator.comparingInt(this::steps));
    }

    /** The places of the cases to be asked under a condition, whatever the positions. */
    public int[] under(int condition) {
        return IntStream.range(0, cases.size())
                .filter(c -> doings.get(c).get(condition).isPresent())
                .toArray();
    }

    /** Those of them to be asked at a combination of positions. */
    public int[] at(int[] under, int combination) {
        return Arrays.stream(under)
                .filter(c -> positions.get(c).get(combination))
                .toArray();
    }

    /** How many steps lead a person to where the case is asked; what is only supposed comes after all that is sure. */
    public int steps(int caseIndex, Key key) {
        return conditionSteps[caseIndex][key.condition()] + supplySteps[key.supply()] + positionSteps[key.positions()];
    }

    /** The doing of the controller that stands for a condition in the words of a case. */
    public Condition.Doing doing(int caseIndex, int condition) {
        return doings.get(caseIndex)
                .get(condition)
                .orElseThrow(() ->
                        new IllegalArgumentException(cases.get(caseIndex).id() + " says nothing of " + condition));
    }
}
