package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CoilSource;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.words.Phrase;

/**
 * Locks worked by actuators out of the kit's box: where the car has none of its own, or one in the driver's door that moves the
 * factory switch where nothing may be joined to the factory wires, or some that follow the motors of other doors.
 */
final class LockActuators {

    private static final Wish WISH = Wish.LOCKS;

    private LockActuators() {}

    /** What to do with both leads; none when the box holds no actuator. */
    static List<Option> options(Job job, Lead lock, Lead unlock, Phrase because) {
        List<Extra> actuators = job.listExtras(Extra.Kind.ACTUATOR);
        return actuators.isEmpty() ? List.of() : options(job, List.of(lock, unlock), actuators, because);
    }

    private static List<Option> options(Job job, List<Lead> pair, List<Extra> actuators, Phrase because) {
        Optional<Extra> unstated =
                actuators.stream().filter(e -> e.draws().isEmpty()).findFirst();
        if (unstated.isPresent()) {
            String name = unstated.get().name();
            Measurement until = new Measurement("current-of " + name, Phrase.of("measure.extra-current", name));
            return List.of(Option.of(
                    Aside.allHeld(pair, WISH, new Found.Waiting(until, Phrase.of("hold.extra-current", name)))));
        }
        if (pair.stream().anyMatch(lead -> Side.of(lead.port()).isEmpty())) {
            return List.of(
                    Option.of(pair.stream().map(l -> Aside.misfit(l, WISH)).toList()));
        }
        return switch (job.constant()) {
            case Found.Waiting waiting -> List.of(Option.of(Aside.allHeld(pair, WISH, waiting)));
            case Found.Forbidden(var reason, var possibleIf) ->
                List.of(Option.refused(new Refusal(WISH, reason, possibleIf), Aside.allRefused(pair, WISH)));
            case Found.Usable usable -> fed(job, pair, actuators, usable.first(), because);
        };
    }

    private static List<Option> fed(Job job, List<Lead> pair, List<Extra> actuators, Circuit constant, Phrase because) {
        List<CoilSource> sources = pair.stream().map(CoilSource::of).toList();
        ActuatorWords words = new ActuatorWords(job, sources, actuators, constant, new AddedPartId("lock-fuse"));
        ActuatorWords.Ways ways = words.ways();
        if (ways.list().isEmpty()) {
            return List.of(Option.refused(
                            new Refusal(
                                    WISH,
                                    Phrase.of("refuse.actuators.no-relay", words.together()),
                                    Phrase.of("possible.actuators.no-relay")),
                            Aside.allRefused(pair, WISH))
                    .searched(ways.searched()));
        }
        List<Option> options = ways.list().stream()
                .map(way -> bewared(Option.of(IntStream.range(0, pair.size())
                                .mapToObj(i -> join(words, way, i, pair.get(i), because))
                                .toList()))
                        .searched(ways.searched()))
                .toList();
        return new Release(job).weighed(options);
    }

    private static Decision join(ActuatorWords words, ActuatorWords.Way way, int source, Lead lead, Phrase because) {
        Phrase reason = Phrase.of(
                way.key("rule.added-actuators"),
                words.actuators().size(),
                words.together(),
                way.relay().name(),
                because);
        return new Decision.Join(
                lead,
                WISH,
                List.of(),
                words.draft(way, source, way.key("coupling.added-actuators")),
                words.because(way, source, reason),
                List.of());
    }

    /**
     * A way to drive the legs of the car's own motors, and the box's actuators at doors without a motor that follow those legs: the
     * coils of further relays hang on the driven legs, so that these actuators follow whatever works the motors, and the car's switch
     * carries coils more and no motor. The way alone where no actuator is in the box, what one draws is not said, or no relay bears them.
     *
     * @param legs a decision for each lead, locking first
     * @param driven what each of them drives
     */
    static List<Option> following(Job job, Option legs, List<CoilSource> driven, Circuit constant) {
        List<Extra> actuators = job.listExtras(Extra.Kind.ACTUATOR);
        if (actuators.isEmpty() || actuators.stream().anyMatch(e -> e.draws().isEmpty())) {
            return List.of(legs);
        }
        ActuatorWords words = new ActuatorWords(job, driven, actuators, constant, new AddedPartId("actuator-fuse"));
        ActuatorWords.Ways ways = words.ways();
        return ways.list().isEmpty()
                ? List.of(legs.searched(ways.searched()))
                : ways.list().stream()
                        .map(way -> followed(legs, words, way).searched(ways.searched()))
                        .toList();
    }

    private static Option followed(Option legs, ActuatorWords words, ActuatorWords.Way way) {
        List<Decision> decisions = new ArrayList<>();
        for (int i = 0; i < legs.decisions().size(); i++) {
            Decision.Join join = (Decision.Join) legs.decisions().get(i);
            String key = way.key("coupling.legs-and-followers");
            decisions.add(new Decision.Join(
                    join.of(),
                    join.serves(),
                    join.circuits(),
                    join.draft().and(words.draft(way, i, key), key),
                    Phrase.of(way.key("rule.legs-and-followers"), join.circuits(), join.because()),
                    join.insteadOf()));
        }
        return bewared(new Option(decisions, legs.refusals(), legs.cautions(), legs.searches()));
    }

    private static Option bewared(Option option) {
        return option.beware(List.of(Phrase.of("caution.actuators-free"), Phrase.of("caution.actuators-way-out")));
    }
}
