package org.loomproof.workshop.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** What a situation sets on a network: supply, contacts, what the outputs are asked for, and the controller's feed. */
public final class Settings {

    private final Wired wired;
    private final Sheet sheet;
    private final Behaviour behaviour;
    private final UnaryOperator<Setting> atLast;
    private final Map<OperableId, List<WorkedSwitch>> switches = new HashMap<>();

    /** Settings of a network, which may be a restricted one: what it lacks is left alone. */
    public Settings(Wired wired, Sheet sheet, Behaviour behaviour) {
        this(wired, sheet, behaviour, setting -> setting);
    }

    /**
     * Settings of a network of which something is not as it should be.
     *
     * @param atLast what is wrong, laid over every setting; it must leave alone what a person operates
     */
    public Settings(Wired wired, Sheet sheet, Behaviour behaviour, UnaryOperator<Setting> atLast) {
        this.wired = wired;
        this.sheet = sheet;
        this.behaviour = behaviour;
        this.atLast = atLast;
        for (WorkedSwitch each : wired.switches()) {
            if (has(each.part())) {
                switches.computeIfAbsent(each.operatedBy(), id -> new ArrayList<>())
                        .add(each);
            }
        }
    }

    /** The same settings of another network of the same vehicle. */
    public Settings of(Wired other) {
        return new Settings(other, sheet, behaviour, atLast);
    }

    /** The setting of a whole situation. */
    public Setting of(Situation situation) {
        Setting setting = atRest(
                situation.supply(), situation.controller(), situation.feed(), situation.moment(), situation.still());
        for (Map.Entry<OperableId, String> each : situation.positions().entrySet()) {
            setting = moved(setting, each.getKey(), each.getValue());
        }
        return setting;
    }

    /** The setting with everything a person operates at rest. */
    public Setting atRest(SupplyPoint supply, ControllerState state, ControllerFeed feed, Moment moment) {
        return atRest(supply, state, feed, moment, Set.of());
    }

    /**
     * The setting with everything a person operates at rest.
     *
     * @param still outputs that are on besides what the state switches on
     */
    public Setting atRest(
            SupplyPoint supply, ControllerState state, ControllerFeed feed, Moment moment, Set<LeadId> still) {
        Setting setting =
                wired.network().atRest().emf(wired.battery(), supply.volts().value());
        for (PartId fuse : wired.added().switches()) {
            setting = has(fuse) ? setting.closed(fuse) : setting;
        }
        Set<LeadId> on = new LinkedHashSet<>(behaviour.listOn(state, moment));
        on.addAll(still);
        setting = controller(setting, on, feed);
        for (Operable operable : sheet.operables()) {
            setting = moved(setting, operable.id(), operable.rest());
        }
        return atLast.apply(setting);
    }

    private Setting controller(Setting base, Set<LeadId> on, ControllerFeed feed) {
        Setting setting = base;
        if (wired.controller().isEmpty()) {
            return setting;
        }
        ControllerParts controller = wired.controller().get();
        Set<PartId> open = new TreeSet<>(opened(controller, feed));
        List<PartId> feeds = new ArrayList<>(controller.supplySwitches());
        feeds.addAll(controller.groundSwitches());
        for (PartId each : feeds) {
            setting = has(each) ? setting.closed(each) : setting;
        }
        for (PartId each : open) {
            setting = has(each) ? setting.open(each) : setting;
        }
        for (Map.Entry<LeadId, Reach> output : controller.outputs().entrySet()) {
            PartId part = output.getValue().part();
            if (has(part) && on.contains(output.getKey())) {
                setting = setting.on(part);
            }
        }
        return setting;
    }

    /** The contacts that a loss of feed opens. */
    private static List<PartId> opened(ControllerParts controller, ControllerFeed feed) {
        return switch (feed) {
            case WHOLE -> List.of();
            case SUPPLY_LOST -> controller.supplySwitches();
            case GROUND_LOST -> controller.groundSwitches();
            case FUSE_OUT -> controller.feedFuses();
        };
    }

    /** The setting with one operable moved. */
    public Setting moved(Setting base, OperableId operable, String position) {
        Setting setting = base;
        for (WorkedSwitch each : switches.getOrDefault(operable, List.of())) {
            setting = each.closedAt().contains(position) ? setting.closed(each.part()) : setting.open(each.part());
        }
        return setting;
    }

    private boolean has(PartId part) {
        return wired.network().findPart(part).isPresent();
    }
}
