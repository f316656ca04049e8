package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.words.Phrase;

/** Vehicles on which none of it may be fitted: another system voltage than 12 V, or the battery's plus on the body. */
public final class VehicleRule {

    /** A 12 V system is called that between these; charged it stands near 12.6 V. */
    private static final double LEAST_VOLTS = 10.5;

    private static final double MOST_VOLTS = 15.5;

    private VehicleRule() {}

    /** A refusal for every wish, when the vehicle forbids them all; with none asked for, one for what every wish needs. */
    public static List<Refusal> refuseAll(Brief brief) {
        Optional<String> reason = reason(brief.sheet().vehicle());
        if (reason.isEmpty()) {
            return List.of();
        }
        List<Wish> wishes =
                new ArrayList<>(brief.order().wishes().stream().sorted().toList());
        if (wishes.isEmpty()) {
            wishes.add(Wish.BASICS);
        }
        return wishes.stream()
                .map(wish -> new Refusal(
                        wish,
                        Phrase.of(
                                "refuse.vehicle." + reason.get(),
                                brief.sheet().vehicle().systemVoltage()),
                        Phrase.of("possible.vehicle." + reason.get())))
                .toList();
    }

    private static Optional<String> reason(VehicleFacts vehicle) {
        double volts = vehicle.systemVoltage().value();
        if (volts < LEAST_VOLTS || volts > MOST_VOLTS) {
            return Optional.of("not-12-volts");
        }
        return switch (vehicle.groundPolarity()) {
            case POSITIVE -> Optional.of("positive-ground");
            case NEGATIVE -> Optional.empty();
        };
    }
}
