package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.lock.PulseTimes;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A pulse that works locks or a latch lasts long enough for what moves to reach its end. Where the car's own switch stays as it
 * is put and works a load itself, that is a pump, and a pump takes longest.
 */
final class PulseLongEnough implements Claim {

    private static final Set<Wish> MOVING = Set.of(Wish.LOCKS, Wish.LOCK_ACTUATORS, Wish.TRUNK_RELEASE);

    @Override
    public String name() {
        return "pulse-long-enough";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            if (MOVING.contains(connect.serves())) {
                pulsed(fitting.brief().kit().behaviour(), connect.lead())
                        .ifPresent(output -> all.add(decided(fitting, connect, output)));
            }
        }
        return all;
    }

    /** What the kit says of a lead that gives a pulse. */
    static Optional<OutputBehaviour> pulsed(Behaviour behaviour, LeadId lead) {
        return behaviour.outputs().stream()
                .filter(o -> o.lead().equals(lead))
                .filter(o -> o.timing() == OutputTiming.PULSE || o.timing() == OutputTiming.SECOND_PULSE)
                .findFirst();
    }

    private Claimed decided(Fitting fitting, Hookup.Connect connect, OutputBehaviour output) {
        String id = name() + " " + connect.lead();
        Seconds least = least(fitting, connect);
        Phrase statement = Phrase.of("claim.pulse-long-enough", connect.lead(), least);
        Measurement settledBy = ByFigures.askFor(id, Phrase.of("measure.pulse", connect.lead()));
        Optional<Figure<Seconds>> pulse =
                fitting.brief().kit().lead(connect.lead()).port().pulse();
        if (pulse.isEmpty()) {
            return ByFigures.missing(id, statement, settledBy);
        }
        Figure<Seconds> lasts = pulse.get();
        ControllerState state = output.onIn().stream().findFirst().orElse(ControllerState.DISARMED);
        Situation at = ByFigures.atRest(state, fitting.brief().kit().behaviour().momentOf(connect.lead()));
        return new ByFigures(id, statement, List.of(new ByFigures.Used(lasts, settledBy)), true)
                .decide(
                        margin(lasts.typical(), least),
                        margin(lasts.low(), least),
                        at,
                        ByFigures.steps(fitting, at, Phrase.of("step.watch-travel", connect.lead())),
                        new Observation(
                                Phrase.of("meter.pulse", connect.lead()),
                                lasts.typical().toString()));
    }

    private static Margin margin(Seconds lasts, Seconds least) {
        return new Margin(
                lasts.value() - least.value(), "s", Phrase.of("margin.is", lasts), Phrase.of("margin.at-least", least));
    }

    private static Seconds least(Fitting fitting, Hookup.Connect connect) {
        if (connect.serves() == Wish.TRUNK_RELEASE) {
            return PulseTimes.latch();
        }
        boolean held = connect.circuits().stream().anyMatch(circuit -> isHeld(fitting, circuit));
        return held ? PulseTimes.held() : PulseTimes.motors();
    }

    /** A circuit whose own switch has two positions and stays where it is put, and works a load itself: no module reads it. */
    private static boolean isHeld(Fitting fitting, CircuitId id) {
        Sheet sheet = fitting.brief().sheet();
        boolean toldByTheSwitch =
                sheet.circuit(id).follows().stream().map(sheet::operable).anyMatch(Operable::staysAsPut);
        return toldByTheSwitch && !fitting.loadsWorkedBy(id).isEmpty();
    }
}
