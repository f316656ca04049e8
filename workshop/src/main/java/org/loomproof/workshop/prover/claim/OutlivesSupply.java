package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Trace;
import org.loomproof.network.time.Waveform;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.supply.SupplyProfile;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * The controller keeps its state while the engine is cranked, and outlives a load dump and a battery connected the wrong way
 * round. Cranking and dump are run in time on the fitted network, as published; what the controller bears its maker must say,
 * and until he does, it is open.
 */
final class OutlivesSupply implements Claim {

    @Override
    public String name() {
        return "outlives-supply";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Kit kit = fitting.brief().kit();
        List<Claimed> all = new ArrayList<>();
        all.add(cranking(fitting, kit.survives().cranking().or(() -> Optional.of(kit.leastSupply()))));
        all.add(loadDump(fitting, kit.survives().loadDump().or(() -> Optional.of(kit.mostSupply()))));
        all.add(reversed(fitting));
        return all;
    }

    private record Event(String name, Situation at, boolean isSaid) {

        String id() {
            return "outlives-supply " + name;
        }

        Phrase statement() {
            return Phrase.of("claim.outlives-" + name);
        }

        Measurement ask() {
            return ByFigures.askFor(id(), Phrase.of("measure.survives-" + name));
        }
    }

    private static Claimed cranking(Fitting fitting, Optional<Figure<Volts>> bears) {
        Event event = new Event(
                "cranking",
                ByFigures.withKey(Operable.KEY_POSITIONS.getLast(), SupplyPoint.CRANKING),
                fitting.brief().kit().survives().cranking().isPresent());
        Optional<Trace> trace = trace(fitting.fitted(), event.at(), SupplyProfile.STARTING);
        return decided(
                fitting,
                event,
                bears,
                trace.map(run -> new Volts(run.voltsExtremes(controller(fitting).supply())
                                .least()
                        - run.voltsExtremes(controller(fitting).ground()).greatest())),
                false);
    }

    private static Claimed loadDump(Fitting fitting, Optional<Figure<Volts>> bears) {
        Event event = new Event(
                "load-dump",
                ByFigures.withKey(Operable.KEY_POSITIONS.get(2), SupplyPoint.CHARGING),
                fitting.brief().kit().survives().loadDump().isPresent());
        Optional<Trace> trace = trace(fitting.fitted(), event.at(), SupplyProfile.LOAD_DUMP);
        return decided(
                fitting,
                event,
                bears,
                trace.map(run -> new Volts(run.voltsExtremes(controller(fitting).supply())
                                .greatest()
                        - run.voltsExtremes(controller(fitting).ground()).least())),
                true);
    }

    /** No run is needed: what the posts give reaches the controller through wire and fuse alone. */
    private static Claimed reversed(Fitting fitting) {
        Optional<Figure<Volts>> said = fitting.brief().kit().survives().reversed();
        Event event = new Event(
                "reversed", ByFigures.withKey(Operable.KEY_POSITIONS.getFirst(), SupplyPoint.REST), said.isPresent());
        return decided(fitting, event, said, Optional.of(SupplyProfile.reversed()), true);
    }

    private static ControllerParts controller(Fitting fitting) {
        return fitting.fitted().wired().controller().orElseThrow();
    }

    /** A run of the fitted vehicle while its battery follows the profile; empty when it does not reach its end. */
    private static Optional<Trace> trace(Vehicle fitted, Situation at, SupplyProfile profile) {
        Waveform volts = new Waveform(profile.corners().stream()
                .map(corner ->
                        new Waveform.Corner(corner.at().value(), corner.volts().value()))
                .toList());
        Timeline timeline = Timeline.settled(fitted.settings()
                        .of(at)
                        .emf(
                                fitted.wired().battery(),
                                profile.corners().getFirst().volts().value()))
                .supply(fitted.wired().battery(), volts);
        return TimeSolver.of(fitted.wired().network())
                                .run(timeline, profile.length().value())
                        instanceof TimeOutcome.Finished(Trace trace)
                ? Optional.of(trace)
                : Optional.empty();
    }

    /**
     * By what the controller sees and what it bears. Nobody's word on it leaves it open, unless it stays within the range in
     * which the controller works anyhow.
     */
    private static Claimed decided(
            Fitting fitting, Event event, Optional<Figure<Volts>> bears, Optional<Volts> sees, boolean mostIsAsked) {
        if (sees.isEmpty()) {
            return Fitting.open(event.id(), event.statement(), Phrase.of("outcome.lost"));
        }
        if (bears.isEmpty()) {
            return ByFigures.missing(event.id(), event.statement(), event.ask());
        }
        Figure<Volts> figure = bears.get();
        Margin typical = margin(sees.get(), figure.typical(), mostIsAsked);
        Margin worst = margin(sees.get(), mostIsAsked ? figure.low() : figure.high(), mostIsAsked);
        if (!event.isSaid() && !worst.isKept()) {
            return ByFigures.missing(event.id(), event.statement(), event.ask());
        }
        return new ByFigures(event.id(), event.statement(), List.of(new ByFigures.Used(figure, event.ask())), false)
                .decide(
                        typical,
                        worst,
                        event.at(),
                        ByFigures.steps(fitting, event.at(), Phrase.of("step.outlives-" + event.name())),
                        new Observation(
                                Phrase.of("meter.controller-supply"), sees.get().toString()));
    }

    private static Margin margin(Volts sees, Volts bears, boolean mostIsAsked) {
        double slack = mostIsAsked ? bears.value() - sees.value() : sees.value() - bears.value();
        return new Margin(
                slack,
                "V",
                Phrase.of("margin.controller-sees", sees),
                Phrase.of(mostIsAsked ? "margin.at-most-volts" : "margin.not-under-volts", bears));
    }
}
