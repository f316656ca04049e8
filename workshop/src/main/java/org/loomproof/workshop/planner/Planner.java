package org.loomproof.workshop.planner;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.rule.Job;
import org.loomproof.workshop.planner.rule.Rules;
import org.loomproof.workshop.planner.rule.VehicleRule;
import org.loomproof.workshop.planner.search.CandidateSearch;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.planner.search.KitSettings;
import org.loomproof.workshop.words.Phrase;

/**
 * From a brief to ordered candidate plans. In each, every lead of the kit is decided exactly once with a reason, and every
 * wish that must not or cannot be granted is turned down with what would make it possible.
 */
public final class Planner {

    private Planner() {}

    /** The candidates, best guess first. The same brief gives the same candidates, in whatever order its sheet lists circuits. */
    public static Candidates plan(Brief brief) {
        List<Refusal> all = VehicleRule.refuseAll(brief);
        if (!all.isEmpty()) {
            return new Candidates(List.of(nothing(brief, all)), 1, List.of(), List.of());
        }
        return KitSettings.overAll(brief.kit(), settings -> {
            Job job = Job.of(brief.set(settings));
            return CandidateSearch.of(job, Rules.questions(job), cautions(brief));
        });
    }

    /** Nothing may be fitted: every lead stays as it came. */
    private static Plan nothing(Brief brief, List<Refusal> refusals) {
        List<Hookup> hookups = brief.kit().leads().stream()
                .map(lead -> (Hookup) new Hookup.CapAndKeep(lead.id(), Phrase.of("cap.vehicle"), List.of()))
                .toList();
        return new Plan(hookups, List.of(), List.of(), refusals, List.of());
    }

    private static List<Phrase> cautions(Brief brief) {
        List<Phrase> cautions = new ArrayList<>();
        cautions.add(Phrase.of("caution.maker-law-licence"));
        String restraints = brief.sheet().vehicle().restraints();
        if (!restraints.isBlank()) {
            cautions.add(Phrase.of("caution.restraints-near", restraints));
        } else {
            cautions.add(Phrase.of("caution.restraints"));
        }
        if (!brief.sheet().listCircuits(CircuitRole.HIGH_VOLTAGE).isEmpty()
                || brief.sheet().vehicle().drive() != VehicleFacts.Drive.COMBUSTION) {
            cautions.add(Phrase.of("caution.high-voltage"));
        }
        if (!brief.sheet().listCircuits(CircuitRole.DATA).isEmpty()
                || !brief.sheet().vehicle().dataBus().isBlank()) {
            cautions.add(Phrase.of("caution.data-wires"));
        }
        String alarm = brief.sheet().vehicle().factoryAlarm();
        if (!alarm.isBlank()) {
            cautions.add(Phrase.of("caution.factory-alarm", alarm));
        }
        return cautions;
    }
}
