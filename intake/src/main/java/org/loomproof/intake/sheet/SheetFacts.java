package org.loomproof.intake.sheet;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.text.Words;

/** Facts of the vehicle that every sheet must state and that wiring notes hardly ever hold: asked for, never assumed. */
public final class SheetFacts {

    /** The keys that a sheet's {@code vehicle} must have, each with what may stand there. */
    private static final Map<String, String> NEEDED = needed();

    private static final Set<String> MAY_STAND = mayStand();

    private SheetFacts() {}

    /** Those that are needed, and those that notes may tell beside them. */
    private static Set<String> mayStand() {
        Set<String> keys = new HashSet<>(NEEDED.keySet());
        keys.add("gearbox");
        keys.add("factory-alarm");
        return Set.copyOf(keys);
    }

    /** The needed facts that are not among the given ones, each with what may stand there. */
    public static Map<String, String> listMissing(Map<String, String> given) {
        Map<String, String> missing = new LinkedHashMap<>(NEEDED);
        missing.keySet().removeAll(given.keySet());
        return missing;
    }

    /** {@code LHD}, {@code RHD}, or empty when it is not among the facts. */
    public static String steering(Map<String, String> given) {
        return switch (given.getOrDefault("steering", "")) {
            case "left" -> "LHD";
            case "right" -> "RHD";
            default -> "";
        };
    }

    /** What a sheet says of its vehicle that lines of notes may be bound to, by its keys. */
    public static Map<String, String> of(VehicleFacts vehicle) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("drive", Words.of(vehicle.drive()));
        facts.put("start", Words.of(vehicle.start()));
        facts.put("key", Words.of(vehicle.key()));
        facts.put("steering", Words.of(vehicle.steering()));
        facts.put("ground", Words.of(vehicle.groundPolarity()));
        if (vehicle.gearbox() != VehicleFacts.Gearbox.NOT_SAID) {
            facts.put("gearbox", Words.of(vehicle.gearbox()));
        }
        return facts;
    }

    /** True for what only notes ask of a vehicle; a sheet has no key for it, and none for what is merely told to be otherwise. */
    public static boolean isOfNotesOnly(String key, String value) {
        return value.equals(HoldsFor.SOMETHING_ELSE) || HoldsFor.isOfNotesOnly(key, MAY_STAND);
    }

    /** The keys that are needed, in the order in which a sheet has them. */
    public static List<String> listKeys() {
        return List.copyOf(NEEDED.keySet());
    }

    private static Map<String, String> needed() {
        Map<String, String> needed = new LinkedHashMap<>();
        needed.put("name", "…");
        needed.put("system-voltage", "12 V");
        needed.put("ground", "negative, positive");
        needed.put("drive", "combustion, hybrid, electric");
        needed.put("start", "key, button, data-only");
        needed.put("key", "plain, transponder, proximity");
        needed.put("steering", "left, right");
        return needed;
    }
}
