package org.loomproof.workshop.planner.rule;

import java.util.List;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.planner.coupling.AddedLoad;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/**
 * An indicator that is a bare light-emitting diode: the smallest preferred resistor with which it carries no more than it may at
 * the highest supply, at its fewest volts and with the resistor at its least, R · (1 − t) ≥ (U − Uf) / I.
 */
final class BareLight {

    private BareLight() {}

    static List<Option> options(Job job, Lead lead, Wish wish, Side side, Extra light) {
        Amps most = light.draws().orElseThrow().low();
        Volts forward = light.forward().orElseThrow().low();
        double least = (SupplyPoint.HIGH.volts().value() - forward.value()) / most.value();
        double printed = least / (1 - PreferredValues.E96.tolerance());
        Ohms resistance = PreferredValues.E96.list().stream()
                .filter(ohms -> ohms.value() >= printed)
                .findFirst()
                .orElseThrow();
        if (!(job.constant() instanceof Found.Usable constant)) {
            return List.of(AddedLoads.without(lead, wish, job.constant()));
        }
        AddedLoad.Item item = new AddedLoad.Item(light.name(), most, job.usualRun());
        Draft draft = AddedLoad.lit(lead, side, item, forward, resistance, job.loadFeed(constant.first(), lead));
        Phrase because = Phrase.of("rule.added-light", light.name(), forward, most, resistance);
        return List.of(Option.of(List.of(new Decision.Join(lead, wish, List.of(), draft, because, List.of())))
                .beware(List.of(Phrase.of("caution.indicator-place"))));
    }
}
