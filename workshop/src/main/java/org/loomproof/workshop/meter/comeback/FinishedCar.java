package org.loomproof.workshop.meter.comeback;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Wired;

/** A finished car, sound or not, in which a meter is read. Keeps what was solved. Not for sharing between threads. */
final class FinishedCar {

    /** What tolerances hide. */
    private static final double ALIKE_VOLTS = 0.3;

    private final Vehicle vehicle;
    private final Workbench bench = new Workbench();
    private final Map<Moment, Optional<OperatingPoint>> solved = new HashMap<>();

    private record Moment(Situation when, double batteryVolts) {}

    FinishedCar(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    /** What a meter shows. */
    Shows shows(Look look, double batteryVolts) {
        Optional<OperatingPoint> point = point(look.when(), batteryVolts);
        Optional<Node> node = look.at().node(vehicle.wired());
        if (point.isEmpty() || node.isEmpty()) {
            return new Shows.Anything();
        }
        return point.get().isFloating(node.get())
                ? new Shows.Floating()
                : new Shows.At(point.get().volts(node.get()));
    }

    /** What a meter shows at each. */
    List<Shows> shows(List<Taken> taken) {
        return taken.stream()
                .map(each -> shows(each.look(), each.batteryVolts()))
                .toList();
    }

    /** Whether no look tells the two cars apart. */
    static boolean showAlike(FinishedCar one, FinishedCar other, List<Look> looks) {
        double battery = SupplyPoint.REST.volts().value();
        return looks.stream().allMatch(look -> switch (one.shows(look, battery)) {
            case Shows.At(double volts) ->
                other.shows(look, battery) instanceof Shows.At(double there) && Math.abs(volts - there) < ALIKE_VOLTS;
            case Shows.Floating floating -> other.shows(look, battery) instanceof Shows.Floating;
            case Shows.Anything anything -> other.shows(look, battery) instanceof Shows.Anything;
        });
    }

    /** What the battery gives, in amps; nothing where the car does not come to rest. */
    Optional<Double> batteryAmps(Situation when) {
        return point(when).map(point -> Math.abs(point.amps(vehicle.wired().battery())));
    }

    /** Volts between the controller's own supply and ground. */
    Optional<Double> controllerVolts(Situation when) {
        ControllerParts controller = vehicle.wired().controller().orElseThrow();
        return point(when).map(point -> point.volts(controller.supply(), controller.ground()));
    }

    /** The volts under which the controller is without supply. */
    double leastSupplyVolts() {
        return vehicle.wired().controller().orElseThrow().leastSupplyVolts();
    }

    private Optional<OperatingPoint> point(Situation when) {
        return point(when, when.supply().volts().value());
    }

    private Optional<OperatingPoint> point(Situation when, double batteryVolts) {
        return solved.computeIfAbsent(new Moment(when, batteryVolts), this::solve);
    }

    private Optional<OperatingPoint> solve(Moment moment) {
        Wired wired = vehicle.wired();
        Setting setting = vehicle.settings().of(moment.when()).emf(wired.battery(), moment.batteryVolts());
        return bench.settled(wired, setting);
    }
}
