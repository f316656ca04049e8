package org.loomproof.workshop.meter.comeback;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.verdict.Severity;

/** What an owner would complain of, by the claims that a mishap breaks. */
final class Symptoms {

    private final Brief brief;
    private final Map<String, CircuitRole> elements = new LinkedHashMap<>();

    Symptoms(Brief brief) {
        this.brief = brief;
        for (Circuit circuit : brief.sheet().circuits()) {
            for (List<PathStep> path : circuit.paths()) {
                for (PathStep step : path) {
                    if (step instanceof PathStep.Part part) {
                        elements.putIfAbsent(part.id().toString(), circuit.role());
                    }
                }
            }
        }
    }

    Set<Symptom> of(MishapResult result) {
        Set<Symptom> shown = EnumSet.noneOf(Symptom.class);
        result.breaks().forEach(each -> of(each).ifPresent(shown::add));
        if (!result.opens().isEmpty()) {
            shown.add(Symptom.FUSE_BLOWS);
        }
        return shown;
    }

    private Optional<Symptom> of(Break broken) {
        String[] words = broken.claim().split(" ", 3);
        return switch (words[0]) {
            case "starts-when-disarmed" -> Optional.of(Symptom.NO_START);
            case "does-not-start-when-armed" -> Optional.of(Symptom.STARTS_ARMED);
            case "engine-keeps-running" -> Optional.of(Symptom.ENGINE_STOPS);
            case "opening-seen" -> Optional.of(Symptom.OPENING_MISSED);
            case "quiet-when-closed" -> Optional.of(Symptom.FALSE_ALARMS);
            case "does-its-work" -> ofLead(words[1]);
            case "stock-as-before" -> ofElement(words[1]);
            case "within-rating" ->
                broken.severity() == Severity.FIRE_OR_LOSS_OF_CONTROL ? Optional.of(Symptom.HOT) : Optional.empty();
            // What shows only when the controller is dead, or wears an output down, nobody complains of.
            default -> Optional.empty();
        };
    }

    private Optional<Symptom> ofLead(String lead) {
        LeadRole role = brief.kit().lead(new LeadId(lead)).role();
        return switch (role) {
            case SIREN, HORN -> Optional.of(Symptom.SIREN_SILENT);
            case LAMPS, INTERIOR_LIGHT -> Optional.of(Symptom.NO_FLASH);
            case LOCK, UNLOCK, DRIVER_UNLOCK -> Optional.of(Symptom.LOCKS_DEAD);
            case SUPPLY,
                    GROUND,
                    IGNITION_SENSE,
                    DOOR_INPUT,
                    HOOD_INPUT,
                    TRUNK_INPUT,
                    SENSOR_INPUT,
                    BRAKE_INPUT,
                    STARTER_INTERRUPT,
                    TRUNK_RELEASE,
                    WINDOW,
                    INDICATOR,
                    OVERRIDE_BUTTON,
                    REMOTE_START,
                    TRACKER,
                    OTHER -> Optional.empty();
        };
    }

    private Optional<Symptom> ofElement(String element) {
        CircuitRole role = elements.getOrDefault(element, CircuitRole.OTHER);
        return Optional.of(
                switch (role) {
                    case STARTER, SECOND_STARTER -> Symptom.NO_START;
                    case LOCK, UNLOCK, LOCK_MOTOR_LEG -> Symptom.LOCKS_CYCLE;
                    case DOOR_TRIGGER, HOOD_TRIGGER, TRUNK_TRIGGER, INTERIOR_LIGHT, PARKING_LAMP -> Symptom.LAMPS_GLOW;
                    case CONSTANT_SUPPLY,
                            IGNITION,
                            SECOND_IGNITION,
                            ACCESSORY,
                            GROUND,
                            HORN,
                            ALARM_ARM,
                            ALARM_DISARM,
                            TRUNK_RELEASE,
                            WINDOW,
                            BRAKE,
                            TACHOMETER,
                            FUEL_PUMP,
                            DATA,
                            RESTRAINT,
                            HIGH_VOLTAGE,
                            OTHER -> Symptom.CAR_PART_DEAD;
                });
    }
}
