package org.loomproof.workshop.planner.survey;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.relay.ContactDuty;

/** What a contact in a circuit's wire has to switch: the hardest of the loads on the paths that hold the wire. */
public final class Duties {

    private static final Comparator<ContactDuty> BY_RATING =
            Comparator.comparingDouble(duty -> duty.rating(new Amps(1)).value());

    private Duties() {}

    /** The hardest duty. */
    public static ContactDuty of(Circuit circuit) {
        return circuit.paths().stream()
                .filter(path -> path.contains(new PathStep.Here()))
                .flatMap(List::stream)
                .map(Duties::of)
                .flatMap(Optional::stream)
                .max(BY_RATING)
                .orElse(ContactDuty.RESISTIVE);
    }

    private static Optional<ContactDuty> of(PathStep step) {
        return switch (step) {
            case PathStep.Lamp lamp -> Optional.of(ContactDuty.LAMP);
            case PathStep.Coil coil -> Optional.of(ContactDuty.SOLENOID);
            case PathStep.Load load ->
                Optional.of(
                        switch (load.kind()) {
                            case MOTOR -> ContactDuty.MOTOR;
                            case SOLENOID -> ContactDuty.SOLENOID;
                            case HEATER, ELECTRONIC -> ContactDuty.RESISTIVE;
                        });
            case PathStep.Supply supply -> Optional.empty();
            case PathStep.Ground ground -> Optional.empty();
            case PathStep.Point point -> Optional.empty();
            case PathStep.Here here -> Optional.empty();
            case PathStep.Fuse fuse -> Optional.empty();
            case PathStep.Wire wire -> Optional.empty();
            case PathStep.Switch contact -> Optional.empty();
            case PathStep.Contact contact -> Optional.empty();
            case PathStep.Resistor resistor -> Optional.empty();
            case PathStep.Diode diode -> Optional.empty();
            case PathStep.Input input -> Optional.empty();
        };
    }
}
