package org.loomproof.network.time;

import java.util.List;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.SolveOutcome;

/** What came of a run in time. */
public sealed interface TimeOutcome {
    /** It reached its end. */
    record Finished(Trace trace) implements TimeOutcome {}

    /**
     * It stopped early.
     *
     * @param trace what was found until then
     * @param atSeconds when it stopped
     */
    record GaveUp(Trace trace, double atSeconds, Reason reason) implements TimeOutcome {}

    /**
     * The setting to begin from has no operating point.
     *
     * @param start what the search for one came to
     */
    record NotStarted(SolveOutcome start) implements TimeOutcome {}

    /** Why a run stopped early. */
    sealed interface Reason {}

    /** No voltages were found, however short the step. */
    record NoVoltages() implements Reason {}

    /** The bounded number of steps was used up. */
    record TooManySteps(int steps) implements Reason {}

    /** Contacts called each other to and fro within one instant. */
    record Chattering(List<PartId> moving) implements Reason {
        public Chattering {
            moving = List.copyOf(moving);
        }
    }

    /**
     * A coil's current was cut off with nowhere to go on: in a real circuit it arcs. Give the coil a clamp, a resistor, or the
     * capacitance of its winding.
     */
    record NoWayForCurrent(PartId coil) implements Reason {}

    /**
     * The trace, for a caller who knows that the run finishes.
     *
     * @throws IllegalStateException if it does not
     */
    default Trace finishedTrace() {
        return switch (this) {
            case Finished(Trace trace) -> trace;
            case GaveUp(Trace trace, double atSeconds, Reason reason) ->
                throw new IllegalStateException("gave up at " + atSeconds + " s: " + reason);
            case NotStarted(SolveOutcome start) -> throw new IllegalStateException("not started: " + start);
        };
    }
}
