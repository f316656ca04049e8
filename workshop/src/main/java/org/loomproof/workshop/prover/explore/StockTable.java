package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The stock vehicle solved at every supply point and combination of positions: it has no controller to ask about. */
final class StockTable {

    private final List<List<Answers>> answers = new ArrayList<>();
    private final Working working = new Working();
    private final long solves;

    private StockTable(long solves) {
        this.solves = solves;
    }

    static StockTable of(Space space, Vehicle stock) {
        Workbench bench = new Workbench();
        List<List<Answers>> answers = new ArrayList<>();
        for (SupplyPoint supply : space.supplies()) {
            Walker settings = new Walker(space, stock.settings(), supply, Condition.IDLE);
            List<Answers> row = new ArrayList<>();
            for (int p = 0; p < space.positions().size(); p++) {
                row.add(bench.answers(stock, settings.at(p)));
            }
            answers.add(row);
        }
        StockTable table = new StockTable(bench.solves());
        table.answers.addAll(answers);
        for (int s = 0; s < answers.size(); s++) {
            SupplyPoint supply = space.supplies().get(s);
            for (Answers each : answers.get(s)) {
                if (each instanceof Answers.AtRest atRest) {
                    atRest.points().forEach(point -> table.working.add(supply, new Reading(stock, point)));
                }
            }
        }
        return table;
    }

    Answers at(int supply, int positions) {
        return answers.get(supply).get(positions);
    }

    Working working() {
        return working;
    }

    long solves() {
        return solves;
    }
}
