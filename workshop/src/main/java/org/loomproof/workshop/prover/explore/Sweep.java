package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.explore.Finding.Found;
import org.loomproof.workshop.prover.explore.Finding.Unsettled;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;

/**
 * One walk through a space: both vehicles solved in every situation that some case concerns, each case asked there.
 *
 * <p>The work is split into a fixed number of strips, each with solvers of its own and each walked in order, so that the same
 * bits come out whether one thread walks them all or several share them.
 */
final class Sweep {

    private static final int STRIPS = 4;

    private final Space space;
    private final Vehicle stock;
    private final Vehicle fitted;
    private final List<Case> cases;
    private final StockTable stockTable;
    private final Concern concern;
    private final Sheet sheet;
    private final Between.Stands stands;
    private final List<Finding> findings = new ArrayList<>();
    private final Workbench bench = new Workbench();
    private final Map<Key, List<List<Pair>>> solvedAgain = new HashMap<>();
    private long solves;
    private long situations;

    Sweep(Sheet sheet, Space space, StepsTo stepsTo, Vehicle stock, Vehicle fitted, List<Case> cases) {
        this.space = space;
        this.stock = stock;
        this.fitted = fitted;
        this.cases = List.copyOf(cases);
        this.concern = new Concern(space, stepsTo, this.cases);
        this.sheet = sheet;
        this.stockTable = StockTable.of(space, stock, sheet);
        this.stands = new Between.Stands(space, stock, stockTable, bench);
        this.solves = stockTable.solves();
    }

    /** What can matter to cases in an area, and under which conditions of the controller. */
    static Space space(Brief brief, Vehicle stock, Vehicle fitted, Area area, List<Case> cases) {
        Set<OperableId> askedAbout = new LinkedHashSet<>();
        cases.forEach(each -> askedAbout.addAll(each.asksAbout()));
        ControllerParts controller = fitted.wired().controller().orElseThrow();
        return Space.of(
                brief.sheet(),
                Condition.list(brief.kit(), !controller.feedFuses().isEmpty(), controller.fuseOutIsUnplugged()),
                area.parts(),
                Stream.concat(stock.wired().switches().stream(), fitted.wired().switches().stream())
                        .toList(),
                askedAbout);
    }

    /** The place in the words of a case. */
    Situation situation(int caseIndex, Key key) {
        return doing(caseIndex, key)
                .with(space.positions().get(key.positions()), space.supplies().get(key.supply()));
    }

    /** Walks the whole space. */
    Sweep walk(Onlooker.Watch watch) {
        return walk(watch, () -> false);
    }

    /** Walks the space until somebody has enough; what was found until then is found, and the rest is not looked at. */
    Sweep walk(Onlooker.Watch watch, BooleanSupplier isEnough) {
        List<Strip> strips = IntStream.range(0, STRIPS)
                .parallel()
                .mapToObj(k -> new Strip(watch, this.bench.beside()).walk(k, isEnough))
                .toList();
        cases.forEach(each -> findings.add(new Finding()));
        for (Strip strip : strips) {
            for (int c = 0; c < cases.size(); c++) {
                findings.get(c).merge(strip.found.get(c));
            }
            solves += strip.bench.solves();
            situations += strip.situations;
        }
        return this;
    }

    /** Looks between the supply points as well, where contacts move there. */
    Sweep between(BooleanSupplier isEnough) {
        solves += new Between(
                        space,
                        sheet,
                        stock,
                        fitted,
                        cases,
                        concern,
                        stockTable,
                        stands,
                        (by, setting) -> by.answers(fitted, setting))
                .look(findings, bench, isEnough);
        return this;
    }

    /** What was found, case by case. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    long solves() {
        return solves;
    }

    /** Situations in which some case was asked. */
    long situations() {
        return situations;
    }

    private final class Strip {

        private final Workbench bench;
        private final List<Finding> found =
                cases.stream().map(c -> new Finding()).toList();
        private final Onlooker.Watch watch;
        private long situations;

        Strip(Onlooker.Watch watch, Workbench bench) {
            this.watch = watch;
            this.bench = bench;
        }

        Strip walk(int strip, BooleanSupplier isEnough) {
            int chunk = 0;
            for (int c = 0; c < space.conditions().size(); c++) {
                for (int s = 0; s < space.supplies().size(); s++) {
                    if (concern.under(c).length > 0 && chunk++ % STRIPS == strip && !isEnough.getAsBoolean()) {
                        walk(c, s);
                    }
                }
            }
            return this;
        }

        private void walk(int condition, int supply) {
            Condition.Doing doing = space.conditions().get(condition).representative();
            Walker settings =
                    new Walker(space, fitted.settings(), space.supplies().get(supply), doing);
            int[] under = concern.under(condition);
            for (int p = 0; p < space.positions().size(); p++) {
                Setting setting = settings.at(p);
                int[] asked = concern.at(under, p);
                if (asked.length > 0) {
                    situations++;
                    ask(asked, new Key(condition, supply, p), setting);
                }
            }
        }

        private void unsettled(int[] asked, Key key, Answers trouble, boolean inStock) {
            for (int c : asked) {
                found.get(c).add(new Unsettled(key, concern.steps(c, key), trouble, inStock));
            }
        }

        private void ask(int[] asked, Key key, Setting setting) {
            Answers stockAnswers = stockTable.at(key.supply(), key.positions());
            if (!(stockAnswers instanceof Answers.AtRest stockAtRest)) {
                unsettled(asked, key, stockAnswers, true);
                return;
            }
            Answers fittedAnswers = bench.answers(fitted, setting);
            watch.saw(key, fittedAnswers);
            stands.put(key, bench.stand(fitted, fittedAnswers));
            if (!(fittedAnswers instanceof Answers.AtRest fittedAtRest)) {
                unsettled(asked, key, fittedAnswers, false);
                return;
            }
            Beside beside = new Beside(space, key, stock, fitted, stockTable.working(), bench);
            List<List<Pair>> pairs = beside.pairs(stockAtRest, fittedAtRest);
            for (int c : asked) {
                double slack = Beside.slack(cases.get(c), pairs);
                if (!Double.isNaN(slack)) {
                    found.get(c).add(new Found(key, slack, concern.steps(c, key)));
                }
            }
        }
    }

    /** The doing of the controller that stands for the condition in the words of a case. */
    Condition.Doing doing(int caseIndex, Key key) {
        return concern.doing(caseIndex, key.condition());
    }

    /** The pair that decides a case at a place. */
    Pair deciding(Case each, Key key) {
        return Beside.deciding(each, pairs(key));
    }

    /** How to see a case broken that is so at that place, which is that situation in the words of the case. */
    Witness witness(Case each, Key key, Situation situation, StepsTo stepsTo) {
        return new Witnesses(stepsTo, bench).of(each, pairs(key), situation, fitted.settings()::of);
    }

    /** What is found at a place, which is solved once more, once for all cases. */
    private List<List<Pair>> pairs(Key key) {
        return solvedAgain.computeIfAbsent(
                key,
                k -> new Beside(space, k, stock, fitted, stockTable.working(), bench)
                        .solve()
                        .orElseThrow(() -> new IllegalStateException("settled once, not settled again: " + k)));
    }

    /** What the stock loads get when they work. */
    Working working() {
        return stockTable.working();
    }
}
