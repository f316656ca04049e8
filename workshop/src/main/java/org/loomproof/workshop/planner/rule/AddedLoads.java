package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/** Loads out of the kit's box on one output: what must be known first, the ways of the grammar, and the batteries to charge beside. */
final class AddedLoads {

    private AddedLoads() {}

    static List<Option> options(Job job, Lead lead, Wish wish, List<Extra> extras) {
        Optional<Extra> unstated =
                extras.stream().filter(e -> e.draws().isEmpty()).findFirst();
        if (unstated.isPresent()) {
            return unstated(lead, wish, unstated.get());
        }
        return Driving.Side.of(lead.port())
                .map(side -> extras.getFirst().forward().isPresent()
                        ? lit(job, lead, wish, extras.getFirst(), side)
                        : options(job, lead, wish, extras, side))
                .orElseGet(() -> List.of(Option.of(List.of(Aside.misfit(lead, wish)))));
    }

    /** Nobody says what it draws. */
    static List<Option> unstated(Lead lead, Wish wish, Extra extra) {
        String name = extra.name();
        Measurement until = new Measurement("current-of " + name, Phrase.of("measure.extra-current", name));
        return List.of(Option.of(List.of(Aside.hold(lead, wish, until, Phrase.of("hold.extra-current", name)))));
    }

    private static List<Option> lit(Job job, Lead lead, Wish wish, Extra light, Driving.Side side) {
        Amps most = light.draws().orElseThrow().low();
        Target.Loads loads = new Target.Loads(
                List.of(new AddedLoad.Item(light.name(), most, light.forward().map(Figure::low), job.usualRun())),
                most);
        return new LoadWords(job, lead, wish, side, loads, Optional.of(BareLight.resistance(light)))
                .list().stream()
                        .map(option -> option.beware(List.of(Phrase.of("caution.indicator-place"))))
                        .toList();
    }

    private static List<Option> options(Job job, Lead lead, Wish wish, List<Extra> extras, Driving.Side side) {
        Found constant = job.constant();
        boolean charges = extras.stream().anyMatch(e -> e.battery().isPresent());
        if (charges && !(constant instanceof Found.Usable)) {
            return List.of(without(lead, wish, constant));
        }
        List<AddedLoad.Item> items = extras.stream()
                .map(e -> new AddedLoad.Item(
                        e.name(), e.draws().orElseThrow().typical(), Optional.empty(), job.usualRun()))
                .toList();
        Target.Loads loads = new Target.Loads(items, atHighSupply(extras));
        return new LoadWords(job, lead, wish, side, loads, Optional.empty())
                .list().stream()
                        .map(option -> bewared(option, wish))
                        .map(option -> constant instanceof Found.Usable usable
                                ? withBatteries(option, extras, job.loadFeed(usable.first(), lead))
                                : option)
                        .toList();
    }

    private static Option bewared(Option option, Wish wish) {
        return (wish == Wish.SIREN || wish == Wish.SECOND_SOUNDER)
                        && option.decisions().stream().anyMatch(Decision.Join.class::isInstance)
                ? option.beware(List.of(Phrase.of("caution.sounder-ears"), Phrase.of("caution.sounder-mouth-down")))
                : option;
    }

    /** Sounders that feed themselves charge their batteries from the constant supply, beside what the output does. */
    private static Option withBatteries(Option option, List<Extra> extras, Feed feed) {
        Option with = option;
        for (Extra extra : extras) {
            if (extra.battery().isPresent()) {
                with = charging(with, extra.name(), extra.battery().get(), feed);
            }
        }
        return with;
    }

    private static Option charging(Option option, String name, Extra.Battery battery, Feed feed) {
        Amps charging = battery.charging().high();
        Amps charged = battery.charged().map(Figure::high).orElse(charging);
        Draft draft = AddedLoad.charged(name, charging, charged, feed);
        List<Decision> decisions = option.decisions().stream()
                .map(decision -> decision instanceof Decision.Join join
                        ? new Decision.Join(
                                join.of(),
                                join.serves(),
                                join.circuits(),
                                join.draft().and(draft, draft.key()),
                                Phrase.of("rule.charged-sounder", name, charging, join.because()),
                                join.insteadOf())
                        : decision)
                .toList();
        return new Option(decisions, option.refusals(), option.cautions(), option.searches())
                .beware(List.of(Phrase.of("caution.sounder-battery", name)));
    }

    static Option tooWeak(Job job, Lead lead, Wish wish) {
        return Option.refused(
                new Refusal(
                        wish,
                        Phrase.of("refuse.output-too-weak", lead.id(), Job.ratingOf(lead.port())),
                        Phrase.of("possible.output-too-weak")),
                List.of(Aside.refused(lead, wish)));
    }

    /** What becomes of the lead when its circuit is not there to be joined. */
    static Option without(Lead lead, Wish wish, Found found) {
        return switch (found) {
            case Found.Waiting waiting -> Option.of(List.of(Aside.hold(lead, wish, waiting)));
            case Found.Forbidden(var because, var possibleIf) ->
                Option.refused(new Refusal(wish, because, possibleIf), List.of(Aside.refused(lead, wish)));
            case Found.Usable usable -> throw new IllegalStateException(lead + " has " + usable.circuits());
        };
    }

    /** What they draw is stated at a charged battery's voltage; at the highest supply it is more in proportion. */
    private static Amps atHighSupply(List<Extra> extras) {
        double atRest = extras.stream()
                .mapToDouble(e -> e.draws().orElseThrow().high().value())
                .sum();
        return new Amps(atRest
                * SupplyPoint.HIGH.volts().value()
                / SupplyPoint.REST.volts().value());
    }
}
