package org.loomproof.workshop.prover.explore;

import java.util.function.UnaryOperator;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;

/**
 * A vehicle as a network, with what sets it.
 *
 * @param wired the network
 * @param settings how a situation sets it
 */
public record Vehicle(Wired wired, Settings settings) {

    /** The vehicle as it came. */
    public static Vehicle stock(Brief brief, Corner corner) {
        return of(VehicleWiring.stock(brief, corner), brief);
    }

    /** The vehicle with the plan carried out. */
    public static Vehicle fitted(Brief brief, Plan plan, Corner corner) {
        return of(VehicleWiring.fitted(brief, plan, corner), brief);
    }

    /** A vehicle of that network. */
    public static Vehicle of(Wired wired, Brief brief) {
        return new Vehicle(wired, new Settings(wired, brief.sheet(), brief.kit().behaviour()));
    }

    /** A vehicle of which something is not as it should be, laid over every setting. */
    public static Vehicle of(Wired wired, Brief brief, UnaryOperator<Setting> wrong) {
        return new Vehicle(wired, new Settings(wired, brief.sheet(), brief.kit().behaviour(), wrong));
    }

    /** The same vehicle with another network, set as before. */
    public Vehicle with(Wired other) {
        return new Vehicle(other, settings.of(other));
    }

    /** What of it lies in the area. */
    public Vehicle restrictedTo(Area area) {
        return with(wired.restrictedTo(area.parts()::contains));
    }
}
