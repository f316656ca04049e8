package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/** The ways to work loads out of the kit's box with one output: straight when its rating allows, otherwise by relay. */
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
                        ? BareLight.options(job, lead, wish, side, extras.getFirst())
                        : options(job, lead, wish, extras, side))
                .orElseGet(() -> List.of(Option.of(List.of(Aside.misfit(lead, wish)))));
    }

    /** Nobody says what it draws. */
    static List<Option> unstated(Lead lead, Wish wish, Extra extra) {
        String name = extra.name();
        Measurement until = new Measurement("current-of " + name, Phrase.of("measure.extra-current", name));
        return List.of(Option.of(List.of(Aside.hold(lead, wish, until, Phrase.of("hold.extra-current", name)))));
    }

    private static List<Option> options(Job job, Lead lead, Wish wish, List<Extra> extras, Driving.Side side) {
        List<AddedLoad.Item> items = extras.stream()
                .map(e -> new AddedLoad.Item(e.name(), e.draws().orElseThrow().typical(), job.usualRun()))
                .toList();
        Amps most = atHighSupply(extras);
        Amps rating = Job.ratingOf(lead.port());
        boolean fits = most.value() <= rating.value();
        Found constant = job.constant();
        List<Phrase> lost = new ArrayList<>();
        List<Option> options = new ArrayList<>();
        if (!fits) {
            lost.add(Phrase.of("lost.over-rating", most, rating));
        } else if (side == Driving.Side.HIGH) {
            Draft draft = AddedLoad.straight(lead, items, most);
            options.add(join(lead, wish, draft, Phrase.of("rule.added-load", most, rating), lost));
        }
        if (!(constant instanceof Found.Usable usable)) {
            boolean fed = extras.stream().noneMatch(e -> e.battery().isPresent());
            return options.isEmpty() || !fed ? List.of(without(lead, wish, constant)) : options;
        }
        Circuit supply = usable.first();
        if (fits && side == Driving.Side.LOW) {
            Draft draft = AddedLoad.straight(lead, items, job.loadFeed(supply, lead));
            Phrase because = Phrase.of("rule.added-load-low-side", most, rating, supply.id());
            options.add(join(lead, wish, draft, because, lost));
        }
        Optional<RelayType> relay = job.relayFor(most, lead.port(), 1);
        relay.ifPresent(r -> options.add(join(
                lead,
                wish,
                AddedLoad.byRelay(lead, side, items, r, job.signalDiode(), job.loadFeed(supply, lead)),
                Phrase.of("rule.added-load-by-relay", most, r.name(), supply.id()),
                lost)));
        return options.isEmpty()
                ? List.of(tooWeak(job, lead, wish))
                : options.stream()
                        .map(option -> withBatteries(option, extras, job.loadFeed(supply, lead)))
                        .toList();
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

    private static Option join(Lead lead, Wish wish, Draft draft, Phrase because, List<Phrase> lost) {
        Option option = Option.of(List.of(new Decision.Join(lead, wish, List.of(), draft, because, lost)));
        return wish == Wish.SIREN || wish == Wish.SECOND_SOUNDER
                ? option.beware(List.of(Phrase.of("caution.sounder-ears"), Phrase.of("caution.sounder-mouth-down")))
                : option;
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
