package org.loomproof.workshop.meter.evidence;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.part.Meter;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.Shows;
import org.loomproof.workshop.meter.role.WireModel;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * What is believed of a wire before anything is read on it. Without a sheet, how usual each role is. With a sheet, as much as
 * its entry is sure: the entry is an observation of its own, and one row in ten of a paper is wrong (common practice, no published source).
 */
public final class Priors {

    private static final double REFERENCE_VOLTS = 12.6;

    /** A sheet that names a role makes it likelier for its unnamed wires too. Common practice, no published source. */
    private static final double ON_SHEET = 2;

    /** A wire that rests otherwise than its entry says is built otherwise, or the entry is wrong about that alone. */
    private static final double RESTS_OTHERWISE = 0.15;

    private static final Set<CircuitRole> ANY = Collections.unmodifiableSet(EnumSet.allOf(CircuitRole.class));

    /** What is found side by side, or looked for in the same way, and taken for each other. Common practice, no published source. */
    private static final List<Set<CircuitRole>> ALIKE = List.of(
            Collections.unmodifiableSet(EnumSet.range(CircuitRole.CONSTANT_SUPPLY, CircuitRole.SECOND_STARTER)),
            Collections.unmodifiableSet(EnumSet.range(CircuitRole.DOOR_TRIGGER, CircuitRole.INTERIOR_LIGHT)),
            Collections.unmodifiableSet(EnumSet.range(CircuitRole.LOCK, CircuitRole.TRUNK_RELEASE)));

    /** The share of wrong rows that name something alike. Common practice, no published source. */
    private static final double SLIPS_TO_ALIKE = 0.5;

    private Priors() {}

    /** The share of entries of that certainty that are right. */
    public static double trust(Certainty certainty) {
        return switch (certainty) {
            case VERIFIED -> 0.98;
            case STATED -> 0.9;
            case GUESSED -> 0.55;
            case ASSUMED -> 0.3;
        };
    }

    /** Without a sheet. */
    public static Belief withoutSheet(Fleet fleet) {
        return of(fleet, usualness(Optional.empty()), Optional.empty());
    }

    /** For a wire that the sheet does not name. */
    public static Belief unnamed(Fleet fleet, Sheet sheet) {
        return of(fleet, usualness(Optional.of(sheet)), Optional.empty());
    }

    /** For the wire of a circuit of the sheet, as far as the entry may be trusted. */
    public static Belief named(Fleet fleet, Sheet sheet, Circuit circuit, double trust) {
        Map<WireRole, Double> prior = usualness(Optional.empty());
        prior.replaceAll((role, usual) -> usual * written(circuit.role(), role, trust));
        return of(fleet, prior, Optional.of(circuit.switching().rest()));
    }

    /**
     * How likely that is what a paper writes of a wire of a role: one of the role's own circuits as far as it may be trusted. A wrong
     * row is taken half for one of something alike, half for one of any circuit. So an entry that names a seldom wire is more often a wrong
     * one than an entry that names a common wire, and two ignitions are taken for each other more often than for a horn.
     */
    private static double written(CircuitRole said, WireRole role, double trust) {
        double wrong = 1 - trust;
        Set<CircuitRole> alike = ALIKE.stream()
                .filter(some -> role.circuits().stream().anyMatch(some::contains))
                .findFirst()
                .orElse(ANY);
        double slip = (1 - SLIPS_TO_ALIKE) * wrong / ANY.size()
                + (alike.contains(said) ? SLIPS_TO_ALIKE * wrong / alike.size() : 0);
        return role.circuits().contains(said) ? trust / role.circuits().size() + slip : slip;
    }

    private static Map<WireRole, Double> usualness(Optional<Sheet> sheet) {
        Map<WireRole, Double> prior = new EnumMap<>(WireRole.class);
        for (WireRole role : WireRole.values()) {
            boolean onSheet = sheet.isPresent()
                    && sheet.get().circuits().stream()
                            .anyMatch(c -> role.circuits().contains(c.role()));
            prior.put(role, role.usualness() * (onSheet ? ON_SHEET : 1));
        }
        return prior;
    }

    private static Belief of(Fleet fleet, Map<WireRole, Double> prior, Optional<Level> rest) {
        double[] weights = new double[fleet.size()];
        int at = 0;
        for (WireModel model : fleet.models()) {
            double each = prior.getOrDefault(model.role(), 0.0) * model.share() / model.cars();
            List<Shows> shows = rest.isPresent() ? model.shows(Step.REST, Meter.USUAL_OHMS) : List.of();
            for (int car = 0; car < model.cars(); car++) {
                boolean otherwise = rest.isPresent() && !rests(shows.get(car), rest.get());
                weights[at++] = each * (otherwise ? RESTS_OTHERWISE : 1);
            }
        }
        weights[at] = prior.getOrDefault(WireRole.NONE_OF_THESE, 0.0);
        return Belief.of(fleet, weights);
    }

    private static boolean rests(Shows shows, Level level) {
        double volts = shows.volts(REFERENCE_VOLTS);
        return switch (level) {
            case Level.Ground g -> volts < 0.5 && !shows.floats();
            case Level.Supply s -> volts > REFERENCE_VOLTS - 1.5 && !shows.floats();
            case Level.Open o -> shows.floats() || volts < 0.5;
            case Level.Resistance r -> !shows.floats();
            case Level.Voltage v -> Math.abs(volts - v.volts().value()) < 1;
            case Level.Reversing r -> true;
            case Level.Data d -> true;
        };
    }
}
