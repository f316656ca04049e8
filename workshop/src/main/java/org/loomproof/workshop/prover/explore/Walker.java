package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Settings;

/** Settings of a space's combinations one after another; each costs only the operables that have moved. */
public final class Walker {

    private final Space space;
    private final Settings settings;
    /** The setting with the first k axes moved, at place k. */
    private final List<Setting> partly = new ArrayList<>();
    /** The positions that {@link #partly} was made with. */
    private final List<String> moved = new ArrayList<>();

    /** Settings of a space under one condition at one supply point. */
    public Walker(Space space, Settings settings, SupplyPoint supply, Condition.Doing doing) {
        this.space = space;
        this.settings = settings;
        partly.add(settings.atRest(supply, doing.state(), doing.feed(), doing.moment(), doing.still()));
    }

    /** The setting of a combination, by its place in the space. */
    public Setting at(int combination) {
        for (int k = 0; k < space.axes().size(); k++) {
            OperableId operable = space.axes().get(k).operable();
            String position = space.position(combination, operable);
            if (k >= moved.size() || !moved.get(k).equals(position)) {
                moved.subList(Math.min(k, moved.size()), moved.size()).clear();
                partly.subList(k + 1, partly.size()).clear();
                moved.add(position);
                partly.add(settings.moved(partly.get(k), operable, position));
            }
        }
        return partly.getLast();
    }
}
