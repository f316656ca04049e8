package org.loomproof.workshop.prover.explore;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/** One thing to be shown in every situation it concerns: that a quantity stays within what is allowed. */
public interface Case {

    /** Stable, made of the claim's name and of ids. */
    String id();

    /** What is claimed, in words. */
    Phrase statement();

    /** A part of the network that it is about; what is not joined to that cannot matter. */
    PartId about();

    /** Whether it concerns this doing of the controller under this feed. */
    boolean concerns(ControllerState state, ControllerFeed feed);

    /** Whether it concerns that moment too; a case that does not care looks at both. */
    default boolean concerns(Condition.Doing doing) {
        return concerns(doing.state(), doing.feed());
    }

    /** Whether it concerns these positions; an operable that is not named is at rest. */
    default boolean concerns(Map<OperableId, String> positions) {
        return true;
    }

    /** The operables whose positions it asks about beyond what is joined to its part. */
    default List<OperableId> asksAbout() {
        return List.of();
    }

    /** How far the quantity is inside what is allowed, negative outside; NaN where it says nothing. */
    double slack(Pair pair);

    /** The same in words. */
    Margin margin(Pair pair);

    /** The volts and amps that show it. */
    List<Observation> observations(Pair pair);

    /** Leads on hold that may yet make it true: while there are any, it is open where it would be broken. */
    default List<Hookup.Hold> mayBeSettledBy() {
        return List.of();
    }

    /** What is found without solving where nothing added is joined to its part; empty when it must be solved all the same. */
    default Optional<Margin> marginWhereUntouched() {
        return Optional.empty();
    }

    /** Whether it looks beyond the point of rest, so that a part that carries nothing there may matter to it. */
    default boolean looksBeyondRest() {
        return false;
    }

    /** What it comes to where it is broken as it is there. */
    default Severity severity(Pair pair) {
        return Severity.NUISANCE;
    }

    /** Whether it falls away when no situation gives it anything to say. */
    default boolean fallsAwayUnasked() {
        return false;
    }
}
