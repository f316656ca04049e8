package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.quantity.Decibels;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.alarm.AlarmLimits;
import org.loomproof.workshop.words.Phrase;

/**
 * The rule set that the order names: no sounder louder than it allows, no alarm that sounds longer, and a hood that is watched.
 * That UN R116 asks for the hood is from memory. What the kit does not say is a caution: nobody knows whether it fits.
 */
public final class RuleSetRule implements Rule {

    private static final Set<Wish> SOUNDING = Set.of(Wish.SIREN, Wish.SECOND_SOUNDER, Wish.HORN);

    @Override
    public Set<LeadRole> roles() {
        return Set.of();
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of();
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        return applies(job)
                ? List.of(Question.settled("rule-set", new Option(List.of(), hood(job), cautions(job))))
                : List.of();
    }

    private static boolean applies(Job job) {
        return switch (job.brief().order().ruleSet()) {
            case UN_R116 -> true;
            case NONE -> false;
        };
    }

    private static List<Refusal> hood(Job job) {
        Order order = job.brief().order();
        boolean watched = job.brief().sheet().operables().stream()
                .anyMatch(o -> o.kind() == Operable.Kind.HOOD && order.watched().contains(o.id()));
        return job.wants(Wish.WATCH_OPENINGS) && !watched
                ? List.of(new Refusal(
                        Wish.WATCH_OPENINGS, Phrase.of("refuse.rule-set.hood"), Phrase.of("possible.rule-set.hood")))
                : List.of();
    }

    /** Why a sounder must not be used: louder than allowed, or sounding longer. */
    static Optional<Refusal> forbids(Job job, Wish wish, Extra sounder) {
        return Stream.of(tooLoud(job, wish, sounder), tooLong(job, wish))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Refusal> tooLoud(Job job, Wish wish, Extra sounder) {
        Decibels most = AlarmLimits.loudest();
        return sounder.sound()
                .map(Figure::high)
                .filter(loud -> applies(job) && loud.value() > most.value())
                .map(loud -> new Refusal(
                        wish,
                        Phrase.of("refuse.rule-set.loud", sounder.name(), loud, most),
                        Phrase.of("possible.rule-set.loud", AlarmLimits.quietest(), most)));
    }

    /** Why nothing of this kit must sound: it would go on for longer than allowed. */
    static Optional<Refusal> tooLong(Job job, Wish wish) {
        Seconds most = AlarmLimits.longest();
        return job.brief()
                .kit()
                .behaviour()
                .soundingTime()
                .map(Figure::high)
                .filter(lasts -> applies(job) && lasts.value() > most.value())
                .map(lasts -> new Refusal(
                        wish,
                        Phrase.of("refuse.rule-set.long", lasts, most),
                        Phrase.of("possible.rule-set.long", AlarmLimits.shortest(), most)));
    }

    private static List<Phrase> cautions(Job job) {
        List<Phrase> cautions = new ArrayList<>();
        if (SOUNDING.stream().noneMatch(job::wants)) {
            return cautions;
        }
        Optional<Figure<Seconds>> lasts = job.brief().kit().behaviour().soundingTime();
        if (lasts.isEmpty()) {
            cautions.add(Phrase.of("caution.rule-set.time-not-said", AlarmLimits.shortest(), AlarmLimits.longest()));
        }
        lasts.filter(time -> time.low().value() < AlarmLimits.shortest().value())
                .ifPresent(
                        time -> cautions.add(Phrase.of("caution.rule-set.short", time.low(), AlarmLimits.shortest())));
        for (Extra sounder : job.listExtras(Extra.Kind.SOUNDER)) {
            if (sounder.sound().isEmpty()) {
                cautions.add(Phrase.of(
                        "caution.rule-set.sound-not-said",
                        sounder.name(),
                        AlarmLimits.quietest(),
                        AlarmLimits.loudest()));
            }
            sounder.sound()
                    .filter(sound ->
                            sound.low().value() < AlarmLimits.quietest().value())
                    .ifPresent(sound -> cautions.add(
                            Phrase.of("caution.rule-set.quiet", sounder.name(), sound.low(), AlarmLimits.quietest())));
        }
        return cautions;
    }
}
