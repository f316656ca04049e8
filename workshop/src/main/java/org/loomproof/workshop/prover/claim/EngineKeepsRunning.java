package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * What the key alone keeps at work goes on, whatever the controller does and whatever becomes of its feed: ignition, fuel and
 * engine control are among it, whatever they are called.
 */
final class EngineKeepsRunning implements Claim {

    private static final String ON = Operable.KEY_POSITIONS.get(2);

    /** The share of its volts at which a load still does its work; common practice, no published source. */
    private static final double LEAST_PERCENT = 85;

    @Override
    public String name() {
        return "engine-keeps-running";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Set<ElementId> keyOn = working(fitting, ON);
        keyOn.removeAll(working(fitting, Operable.KEY_POSITIONS.getFirst()));
        List<Claimed> all = new ArrayList<>();
        keyOn.forEach(load -> all.add(new Claimed.ToShow(new RunningCase(name(), load, fitting))));
        return all;
    }

    /** The loads of the stock vehicle that work while everything but the key is at rest. */
    private static Set<ElementId> working(Fitting fitting, String key) {
        Situation situation = ByFigures.withKey(key, SupplyPoint.REST);
        Set<ElementId> working = new LinkedHashSet<>();
        new Workbench()
                .settled(fitting.stock().wired(), fitting.stock().settings().of(situation))
                .ifPresent(point -> {
                    Reading reading = new Reading(fitting.stock(), point);
                    for (Map.Entry<ElementId, Reach> load :
                            fitting.stock().wired().factory().loads().entrySet()) {
                        double least =
                                LEAST_PERCENT / 100 * SupplyPoint.REST.volts().value();
                        if (Math.abs(reading.volts(load.getValue())) > least) {
                            working.add(load.getKey());
                        }
                    }
                });
        return working;
    }

    private static final class RunningCase extends LoadCase {

        RunningCase(String claim, ElementId load, Fitting fitting) {
            super(claim, load, fitting);
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return true;
        }

        @Override
        public boolean concerns(Map<OperableId, String> positions) {
            return ON.equals(positions.get(Operable.KEY));
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        @Override
        public Optional<Margin> marginWhereUntouched() {
            return Optional.of(
                    new Margin(100 - LEAST_PERCENT, "%", Phrase.of("margin.untouched"), Phrase.of("margin.as-before")));
        }

        private double percent(Pair pair) {
            return 100 * volts(pair.fitted()) / volts(pair.stock());
        }

        @Override
        public double slack(Pair pair) {
            return worksInStock(pair) ? percent(pair) - LEAST_PERCENT : Double.NaN;
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(
                    slack(pair),
                    "%",
                    Phrase.of("margin.gets-share", Shown.volts(volts(pair.fitted())), Figures.plain(percent(pair))),
                    Phrase.of(
                            "margin.at-least-percent", Figures.plain(LEAST_PERCENT), Shown.volts(volts(pair.stock()))));
        }

        @Override
        public Severity severity(Pair pair) {
            return Severity.FIRE_OR_LOSS_OF_CONTROL;
        }
    }
}
