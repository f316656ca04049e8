package org.loomproof.workshop.plan.file;

import java.util.List;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Phrase;

/** Where a plan written by hand begins: nothing is decided, and nothing is forgotten. */
public final class BlankPlan {

    private BlankPlan() {}

    /** A plan in which every lead of the kit is on hold until somebody decides. */
    public static Plan of(Kit kit) {
        List<Hookup> hookups = kit.leads().stream().map(BlankPlan::undecided).toList();
        return new Plan(hookups, List.of(), List.of(), List.of(), List.of());
    }

    private static Hookup undecided(Lead lead) {
        Measurement until = new Measurement("to-be-decided", Phrase.of("plan.file.to-be-decided"));
        Phrase because = Phrase.of("plan.file.undecided", lead.role().word());
        return new Hookup.Hold(lead.id(), serves(lead.role()), until, because, List.of());
    }

    /** The wish a lead of that role would serve. */
    private static Wish serves(LeadRole role) {
        return switch (role) {
            case SUPPLY, GROUND, IGNITION_SENSE, BRAKE_INPUT, OTHER -> Wish.BASICS;
            case DOOR_INPUT, HOOD_INPUT, TRUNK_INPUT -> Wish.WATCH_OPENINGS;
            case SENSOR_INPUT -> Wish.FURTHER_SENSORS;
            case STARTER_INTERRUPT -> Wish.STARTER_INTERRUPT;
            case SIREN -> Wish.SIREN;
            case HORN -> Wish.HORN;
            case LAMPS -> Wish.LAMPS;
            case INTERIOR_LIGHT -> Wish.INTERIOR_LIGHT;
            case LOCK, UNLOCK, DRIVER_UNLOCK -> Wish.LOCKS;
            case TRUNK_RELEASE -> Wish.TRUNK_RELEASE;
            case WINDOW -> Wish.WINDOWS;
            case INDICATOR -> Wish.INDICATOR;
            case OVERRIDE_BUTTON -> Wish.OVERRIDE_BUTTON;
            case REMOTE_START -> Wish.REMOTE_START;
            case TRACKER -> Wish.TRACKER;
        };
    }
}
