package org.loomproof.workshop.planner.rule;

import java.util.Optional;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.Sense.Held;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.CoilCurrent;

/**
 * Something that an input reads.
 *
 * @param source where it is
 * @param rest what holds it while nothing is to be read
 * @param active what holds it when something is
 * @param bearsCoil whether its switch may carry a relay's coil as well
 * @param logic the volts at which electronics hold it, where they do
 */
record Read(Source source, Held rest, Held active, boolean bearsCoil, Optional<Volts> logic) {

    /** A pin that the work adds. */
    static Read pin(Source.Pin pin) {
        return new Read(pin, Held.OPEN, Held.LOW, true, Optional.empty());
    }

    /** A contact out of the box; it is made for an input and works no coil. */
    static Read stage(Source.Stage stage, Port.Active pole) {
        Held active = pole == Port.Active.LOW ? Held.LOW : Held.HIGH;
        return new Read(stage, Held.OPEN, active, false, Optional.empty());
    }

    /** A factory wire; empty where its states are no two levels that can be told apart by poles. */
    static Optional<Read> of(Job job, Circuit circuit) {
        return of(
                job,
                circuit,
                Finder.isFedByMany(circuit)
                        ? new Source.Fused(
                                Feed.from(circuit, Draft.local(circuit.id(), "sense fuse"), job.run(circuit)))
                        : new Source.Wire(circuit, job.run(circuit)));
    }

    /** A factory wire that is joined as the source says. */
    static Optional<Read> of(Job job, Circuit circuit, Source source) {
        Level rest = circuit.switching().rest();
        Level active = circuit.switching().active();
        boolean carries = carriesCoil(job, circuit);
        return switch (Family.of(circuit.switching())) {
            case NEGATIVE -> Optional.of(new Read(source, beside(rest), Held.LOW, carries, Optional.empty()));
            case POSITIVE -> Optional.of(new Read(source, beside(rest), Held.HIGH, carries, Optional.empty()));
            case OPENS_WHEN_ACTIVE ->
                firm(rest).map(held -> new Read(source, held, Held.OPEN, false, Optional.empty()));
            case LOGIC ->
                rest instanceof Level.Voltage(var volts) && active instanceof Level.Ground
                        ? Optional.of(new Read(source, Held.PULLED_HIGH, Held.LOW, false, Optional.of(volts)))
                        : active instanceof Level.Voltage(var volts) && rest instanceof Level.Ground
                                ? Optional.of(new Read(source, Held.LOW, Held.PULLED_HIGH, false, Optional.of(volts)))
                                : Optional.empty();
            case STEPPED, REVERSING, DATA, CONTRADICTORY -> Optional.empty();
        };
    }

    /** What a wire is at beside the switch that works it: held through its load. */
    private static Held beside(Level rest) {
        return switch (rest) {
            case Level.Ground g -> Held.PULLED_LOW;
            case Level.Supply s -> Held.PULLED_HIGH;
            case Level.Open o -> Held.OPEN;
            case Level.Resistance r -> Held.OPEN;
            case Level.Voltage v -> Held.OPEN;
            case Level.Reversing r -> Held.OPEN;
            case Level.Data d -> Held.OPEN;
        };
    }

    private static Optional<Held> firm(Level rest) {
        return switch (rest) {
            case Level.Ground g -> Optional.of(Held.LOW);
            case Level.Supply s -> Optional.of(Held.HIGH);
            case Level.Open o -> Optional.empty();
            case Level.Resistance r -> Optional.empty();
            case Level.Voltage v -> Optional.empty();
            case Level.Reversing r -> Optional.empty();
            case Level.Data d -> Optional.empty();
        };
    }

    /** A wire whose switch already carries more than a coil, such as a lamp's, bears the coil as well. */
    private static boolean carriesCoil(Job job, Circuit circuit) {
        double stock = switch (Family.of(circuit.switching())) {
            case NEGATIVE -> job.draw().intoBody(circuit).value();
            case POSITIVE -> job.draw().fromSupply(circuit).value();
            case OPENS_WHEN_ACTIVE, LOGIC, STEPPED, REVERSING, DATA, CONTRADICTORY -> 0;
        };
        return stock >= CoilCurrent.most(job.listRelays().getFirst().coil()).value();
    }

    /** The pole that means something, for an input that needs nothing between. */
    Port.Active pole() {
        return active == Held.LOW || rest == Held.HIGH ? Port.Active.LOW : Port.Active.HIGH;
    }

    /** True for a wire that a switch works and no electronics hold. */
    boolean isPlain() {
        return logic.isEmpty() && active != Held.OPEN;
    }
}
