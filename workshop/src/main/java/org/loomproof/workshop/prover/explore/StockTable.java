package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The stock vehicle solved at every supply point and combination of positions: it has no controller to ask about. */
public final class StockTable {

    private final List<List<Answers>> answers = new ArrayList<>();
    private final Working working;
    private final long solves;

    private StockTable(long solves, Sheet sheet) {
        this.working = new Working(sheet);
        this.solves = solves;
    }

    /** The table of a space. */
    public static StockTable of(Space space, Vehicle stock, Sheet sheet) {
        Workbench bench = new Workbench();
        List<List<Answers>> answers = space.supplies().stream()
                .map(supply -> row(space, stock, supply, supply.volts().value(), bench))
                .toList();
        StockTable table = new StockTable(bench.solves(), sheet);
        table.answers.addAll(answers);
        for (int s = 0; s < answers.size(); s++) {
            read(space, stock, space.supplies().get(s), answers.get(s), table.working);
        }
        return table;
    }

    /** What works in the stock vehicle at one supply point. */
    static Working at(Space space, Vehicle stock, Sheet sheet, SupplyPoint supply) {
        return read(space, stock, supply, supply.volts().value(), new Working(sheet));
    }

    /** What works in the stock vehicle at those volts, told as that of a supply point close by. */
    Working at(Space space, Vehicle stock, Sheet sheet, SupplyPoint near, double volts) {
        return read(space, stock, near, volts, working.elsewhere(sheet));
    }

    private static Working read(Space space, Vehicle stock, SupplyPoint near, double volts, Working working) {
        read(space, stock, near, row(space, stock, near, volts, new Workbench()), working);
        return working;
    }

    private static List<Answers> row(Space space, Vehicle stock, SupplyPoint supply, double volts, Workbench bench) {
        Walker settings = new Walker(space, stock.settings(), supply, Condition.IDLE);
        List<Answers> row = new ArrayList<>();
        for (int p = 0; p < space.positions().size(); p++) {
            row.add(bench.answers(stock, settings.at(p).emf(stock.wired().battery(), volts)));
        }
        return row;
    }

    private static void read(Space space, Vehicle stock, SupplyPoint supply, List<Answers> row, Working working) {
        for (int p = 0; p < row.size(); p++) {
            if (row.get(p) instanceof Answers.AtRest atRest) {
                SortedMap<OperableId, String> positions = space.positions().get(p);
                atRest.points().forEach(point -> working.add(supply, positions, new Reading(stock, point)));
            }
        }
    }

    /** What came of one supply point and combination of positions. */
    public Answers at(int supply, int positions) {
        return answers.get(supply).get(positions);
    }

    /** What the stock loads get when they work. */
    public Working working() {
        return working;
    }

    /** Operating points asked for. */
    public long solves() {
        return solves;
    }
}
