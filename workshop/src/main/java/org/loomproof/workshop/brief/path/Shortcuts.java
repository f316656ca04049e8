package org.loomproof.workshop.brief.path;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** What a path joins without anything in between that limits current or could ever be open. */
public final class Shortcuts {

    private Shortcuts() {}

    /** Notes a problem where supply and ground meet with no load between them. */
    static void check(List<Cursor> items, List<PathStep> path) {
        Optional<PathStep> before = Optional.empty();
        for (int i = 0; i < path.size(); i++) {
            PathStep step = path.get(i);
            boolean isPole = step instanceof PathStep.Supply || step instanceof PathStep.Ground;
            if (isPole && before.isPresent() && !before.get().equals(step)) {
                items.get(i)
                        .problem(
                                ProblemKind.CONTRADICTION,
                                Phrase.of("problem.wanted.load-between"),
                                Phrase.of("problem.hint.short"));
            }
            before = isPole ? Optional.of(step) : before.filter(pole -> passes(step, true));
        }
    }

    /** The pole that {@code here} is joined to by wires and fuses alone, at all times. */
    public static Optional<PathStep> poleHeldFast(List<PathStep> path) {
        int here = path.indexOf(new PathStep.Here());
        if (here < 0) {
            return Optional.empty();
        }
        return pole(path.subList(0, here).reversed()).or(() -> pole(path.subList(here + 1, path.size())));
    }

    private static Optional<PathStep> pole(List<PathStep> outwards) {
        for (PathStep step : outwards) {
            if (step instanceof PathStep.Supply || step instanceof PathStep.Ground) {
                return Optional.of(step);
            }
            if (!passes(step, false)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** True when current gets past the step unhindered, at all times or, with switches closed, at some time. */
    private static boolean passes(PathStep step, boolean switchesClosed) {
        return switch (step) {
            case PathStep.Fuse fuse -> true;
            case PathStep.Wire wire -> true;
            case PathStep.Point point -> true;
            case PathStep.Here here -> true;
            case PathStep.Switch contact -> switchesClosed;
            case PathStep.Contact contact -> switchesClosed;
            case PathStep.Supply supply -> true;
            case PathStep.Ground ground -> true;
            case PathStep.Coil coil -> false;
            case PathStep.Lamp lamp -> false;
            case PathStep.Load load -> false;
            case PathStep.Resistor resistor -> false;
            case PathStep.Diode diode -> false;
            case PathStep.Input input -> false;
        };
    }
}
