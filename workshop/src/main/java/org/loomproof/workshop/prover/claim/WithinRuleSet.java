package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.alarm.AlarmLimits;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * One alarm sounds, and flashes, as long as the chosen rule set allows, and each sounder is as loud as it allows. Limits are
 * those of UN R116; that a plan keeps them is no type approval.
 */
final class WithinRuleSet implements Claim {

    private static final Set<Wish> SOUNDING = Set.of(Wish.SIREN, Wish.SECOND_SOUNDER, Wish.HORN);

    /** What a rule set allows of a quantity. */
    private record Limits(double least, double most, String unit, Phrase words) {

        Margin margin(double value, Quantity shown) {
            return new Margin(Math.min(value - least, most - value), unit, Phrase.of("margin.is", shown), words);
        }

        <Q extends Quantity> Margin typical(Figure<Q> figure) {
            return margin(figure.typical().value(), figure.typical());
        }

        /** At the end that is nearer to a limit, or beyond it. */
        <Q extends Quantity> Margin worst(Figure<Q> figure) {
            Margin low = margin(figure.low().value(), figure.low());
            Margin high = margin(figure.high().value(), figure.high());
            return low.slack() <= high.slack() ? low : high;
        }
    }

    private static Limits limits(Quantity least, Quantity most) {
        return new Limits(least.value(), most.value(), least.symbol(), Phrase.of("margin.from-to", least, most));
    }

    @Override
    public String name() {
        return "within-rule-set";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        return switch (fitting.brief().order().ruleSet()) {
            case UN_R116 -> inR116(fitting);
            case NONE -> List.of();
        };
    }

    private List<Claimed> inR116(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        boolean sounds = fitting.connected().stream().anyMatch(connect -> SOUNDING.contains(connect.serves()));
        Optional<Figure<Seconds>> lasts = fitting.brief().kit().behaviour().soundingTime();
        if (sounds) {
            all.add(decided(
                    fitting,
                    "sounding-time",
                    Phrase.of("claim.within-rule-set.sound"),
                    lasts,
                    limits(AlarmLimits.shortest(), AlarmLimits.longest()),
                    "how-long"));
        }
        if (flashes(fitting)) {
            all.add(decided(
                    fitting,
                    "flashing-time",
                    Phrase.of("claim.within-rule-set.light"),
                    lasts,
                    limits(AlarmLimits.shortestLight(), AlarmLimits.longestLight()),
                    "how-long-light"));
        }
        sounders(fitting)
                .forEach((called, sounder) -> all.add(decided(
                        fitting,
                        called,
                        Phrase.of("claim.within-rule-set.loud", sounder.name()),
                        sounder.sound(),
                        limits(AlarmLimits.quietest(), AlarmLimits.loudest()),
                        "how-loud")));
        return all;
    }

    private <Q extends Quantity> Claimed decided(
            Fitting fitting, String what, Phrase statement, Optional<Figure<Q>> figure, Limits limits, String reading) {
        String id = name() + " " + what;
        Measurement settledBy = ByFigures.askFor(what, Phrase.of("measure." + reading));
        if (figure.isEmpty()) {
            return ByFigures.missing(id, statement, settledBy);
        }
        Figure<Q> known = figure.get();
        Situation at = ByFigures.atRest(ControllerState.SOUNDING, Moment.ACTING);
        return new ByFigures(id, statement, List.of(new ByFigures.Used(known, settledBy)), false)
                .decide(
                        limits.typical(known),
                        limits.worst(known),
                        at,
                        ByFigures.steps(fitting, at, Phrase.of("step." + reading)),
                        new Observation(
                                Phrase.of("meter." + reading), known.typical().toString()));
    }

    /** Whether lamps are worked while the alarm sounds. */
    private static boolean flashes(Fitting fitting) {
        return fitting.connected(Wish.LAMPS).stream()
                .anyMatch(connect -> fitting.brief().kit().behaviour().isOn(connect.lead(), ControllerState.SOUNDING));
    }

    /** The sounders out of the box that the plan uses, by their names. */
    private static Map<String, Extra> sounders(Fitting fitting) {
        Map<String, Extra> sounders = new LinkedHashMap<>();
        for (Hookup.Connect connect : fitting.connected()) {
            if (SOUNDING.contains(connect.serves())) {
                connect.parts()
                        .forEach(id -> fitting.plan()
                                .findPart(id)
                                .filter(AddedPart.Load.class::isInstance)
                                .map(part -> ((AddedPart.Load) part).extra())
                                .flatMap(fitting.brief().kit()::findExtra)
                                .filter(extra -> extra.kind() == Extra.Kind.SOUNDER)
                                .ifPresent(extra -> sounders.put(extra.name().replace(' ', '-'), extra)));
            }
        }
        return sounders;
    }
}
