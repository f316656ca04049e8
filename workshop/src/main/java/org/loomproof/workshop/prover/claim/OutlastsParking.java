package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.trade.battery.StandbyDrain;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * After the longest time that the order lets the car stand, the battery still cranks the engine: by what the sheet says that
 * the car draws asleep, and by what the fitted network draws more than the stock one with the key out and everything closed, in
 * whichever state it draws most. Whoever leaves by which way, current that the plan adds is counted.
 */
final class OutlastsParking implements Claim {

    /** The states in which a car is left standing. */
    private static final List<ControllerState> STANDING =
            List.of(ControllerState.ARMED, ControllerState.DISARMED, ControllerState.OVERRIDE);

    @Override
    public String name() {
        return "outlasts-parking";
    }

    /** What the plan adds to what the car draws in one state. */
    private record Added(ControllerState state, double amps) {}

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        String id = name() + " battery";
        int wanted = fitting.brief().order().longestUnusedDays();
        Phrase statement = Phrase.of("claim.outlasts-parking", wanted);
        Added most = new Added(ControllerState.ARMED, 0);
        for (ControllerState state : STANDING) {
            Optional<Double> amps = added(fitting, state);
            if (amps.isEmpty()) {
                return List.of(Fitting.open(id, statement, Phrase.of("outcome.lost")));
            }
            most = amps.get() > most.amps() ? new Added(state, amps.get()) : most;
        }
        return List.of(decided(fitting, id, statement, most));
    }

    private static Claimed decided(Fitting fitting, String id, Phrase statement, Added most) {
        VehicleFacts vehicle = fitting.brief().sheet().vehicle();
        Figure<Amps> standby = fitting.brief().kit().standby();
        double more = standby.high().value() - standby.typical().value();
        Amps typical = new Amps(most.amps() + vehicle.sleepCurrent().typical().value());
        Amps worst = new Amps(most.amps() + more + vehicle.sleepCurrent().high().value());
        Situation at = ByFigures.atRest(most.state(), Moment.SETTLED);
        return new ByFigures(
                        id,
                        statement,
                        List.of(
                                used(vehicle.sleepCurrent(), "sleep-current"),
                                used(vehicle.batteryCapacity(), "battery-capacity"),
                                used(standby, "kit-standby")),
                        false)
                .decide(
                        margin(fitting, vehicle.batteryCapacity().typical(), typical),
                        margin(fitting, vehicle.batteryCapacity().low(), worst),
                        at,
                        ByFigures.steps(
                                fitting,
                                at,
                                Phrase.of("step.leave", fitting.brief().order().longestUnusedDays())),
                        new Observation(Phrase.of("meter.sleeping-amps"), typical.toString()));
    }

    private static ByFigures.Used used(Figure<?> figure, String name) {
        return new ByFigures.Used(figure, new Measurement("reading-of " + name, Phrase.of("measure." + name)));
    }

    private static Margin margin(Fitting fitting, AmpHours capacity, Amps drawn) {
        Celsius coldest = fitting.brief().order().shop().coldest();
        boolean cold = coldest.value() <= StandbyDrain.COLD.value();
        double age = fitting.brief().sheet().vehicle().batteryAgeYears().orElse(0.0);
        double days = Stream.of(StandbyDrain.MILD, StandbyDrain.COLD)
                .limit(cold ? 2 : 1)
                .mapToDouble(at -> StandbyDrain.days(capacity, StandbyDrain.usableShare(age, at), drawn))
                .min()
                .orElseThrow();
        int wanted = fitting.brief().order().longestUnusedDays();
        return new Margin(
                days - wanted,
                "d",
                Phrase.of("margin.lasts-days", Figures.plain(days), drawn, capacity),
                Phrase.of("margin.at-least-days", wanted));
    }

    /** Amps that the plan adds in the state; empty where a network does not come to rest. */
    private static Optional<Double> added(Fitting fitting, ControllerState state) {
        Optional<Double> before = amps(fitting.stock(), state, Moment.SETTLED);
        Optional<Double> settled = amps(fitting.fitted(), state, Moment.SETTLED);
        Optional<Double> acting = flashes(fitting.brief().kit().behaviour(), state)
                ? amps(fitting.fitted(), state, Moment.ACTING)
                : settled;
        return before.flatMap(b ->
                settled.flatMap(s -> acting.map(a -> (s + a) / 2 - b + pluggedIn(fitting, state) - onceFull(fitting))));
    }

    private static boolean flashes(Behaviour behaviour, ControllerState state) {
        return behaviour.outputs().stream()
                .anyMatch(o -> o.timing() == OutputTiming.FLASHING && o.onIn().contains(state));
    }

    private static Optional<Double> amps(Vehicle vehicle, ControllerState state, Moment moment) {
        return new Workbench()
                .settled(vehicle.wired(), vehicle.settings().of(ByFigures.atRest(state, moment)))
                .map(point -> drawn(vehicle, point));
    }

    private static double drawn(Vehicle vehicle, OperatingPoint point) {
        return Math.abs(point.amps(vehicle.wired().battery()));
    }

    /** What the batteries of sounders no longer draw once they are full: the network has them under charge. */
    private static double onceFull(Fitting fitting) {
        return fitting.plan().parts().stream()
                .mapToDouble(part -> part instanceof AddedPart.StandbyBattery battery
                        ? battery.charging().value() - battery.charged().value()
                        : 0)
                .sum();
    }

    /** What hangs on a plug of its own never meets the network. */
    private static double pluggedIn(Fitting fitting, ControllerState state) {
        return fitting.connected().stream()
                .filter(connect -> fitting.brief().kit().lead(connect.lead()).port() instanceof Port.ToExtra)
                .mapToDouble(connect -> fitting.brief().kit().behaviour().shareOn(connect.lead(), state)
                        * draws(fitting, (Port.ToExtra)
                                fitting.brief().kit().lead(connect.lead()).port()))
                .sum();
    }

    private static double draws(Fitting fitting, Port.ToExtra plug) {
        return Objects.requireNonNull(fitting.brief()
                .kit()
                .findExtra(plug.extra())
                .flatMap(Extra::draws)
                .map(draws -> draws.high().value())
                .orElse(0.0));
    }
}
