package org.loomproof.workshop.meter.comeback;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/**
 * Everything that may be measured at a finished car with a meter on volts: each place of the plan in each situation of the usual
 * tests, and with the controller unplugged. What is over in a second takes a meter that keeps the most and the least, and the
 * remote again and again. Nothing of it sends current anywhere.
 */
final class Looks {

    /** To read the meter and write it down, and for each step of the way. Common practice, no published source. */
    private static final int SECONDS_TO_READ = 10;

    private static final int SECONDS_A_STEP = 8;

    /** To catch a pulse, on top. */
    private static final int SECONDS_FOR_A_PULSE = 15;

    /** The key, once the controller is unplugged. */
    private static final List<String> UNPLUGGED = List.of("off", "on");

    private final StepsTo steps;
    private final double armingSeconds;
    private final List<Look> all = new ArrayList<>();

    Looks(Brief brief, Plan plan) {
        this.steps = new StepsTo(brief.sheet(), brief.kit());
        this.armingSeconds = brief.kit().behaviour().armingDelay().high().value();
        Set<Situation> met = new LinkedHashSet<>();
        HandTests.list(brief, plan, false).forEach(test -> met.addAll(test.situations()));
        UNPLUGGED.forEach(position -> met.add(new Situation(
                new TreeMap<>(Map.of(Operable.KEY, position)),
                SupplyPoint.REST,
                ControllerState.DISARMED,
                ControllerFeed.SUPPLY_LOST,
                Moment.SETTLED)));
        for (Probe probe : Probe.list(brief, plan)) {
            met.forEach(situation -> all.add(new Look(probe, situation)));
        }
    }

    List<Look> list() {
        return List.copyOf(all);
    }

    /** How long a look takes when the meter has been at these places before. */
    double seconds(Look look, Set<Probe> reached) {
        int count = steps.list(look.when()).size();
        boolean armed = switch (look.when().controller()) {
            case ARMED, WARNING, SOUNDING -> true;
            case WITHOUT_SUPPLY, DISARMED, ARMING, OVERRIDE -> false;
        };
        return SECONDS_TO_READ
                + SECONDS_A_STEP * count
                + (armed ? armingSeconds : 0)
                + (isShort(look.when()) ? SECONDS_FOR_A_PULSE : 0)
                + (isReached(look.at(), reached) ? 0 : look.at().seconds());
    }

    /** Over in a second: it takes a meter that keeps the most and the least. */
    static boolean isShort(Situation when) {
        return when.moment() != Moment.SETTLED && when.controller() != ControllerState.SOUNDING;
    }

    /** The leads of the controller are reached together. */
    private static boolean isReached(Probe probe, Set<Probe> reached) {
        return reached.contains(probe)
                || (probe instanceof Probe.AtPlug && reached.stream().anyMatch(Probe.AtPlug.class::isInstance));
    }

    static Set<Probe> reached(List<Taken> taken) {
        Set<Probe> reached = new HashSet<>();
        taken.forEach(each -> reached.add(each.look().at()));
        return reached;
    }
}
