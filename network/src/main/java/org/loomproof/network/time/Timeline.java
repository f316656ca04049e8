package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.PartId;

/**
 * What happens to one network from outside, and when: settings, supplies, logic that works its outputs. Times are seconds
 * from the start of the run. Immutable; each method returns another timeline.
 */
public final class Timeline {
    /** A setting that holds from a time on. */
    record Moment(double seconds, Setting setting) {}

    private final boolean settledBefore;
    private final List<Moment> moments;
    private final Map<PartId, Waveform> supplies;
    private final List<Logic> logic;

    private Timeline(boolean settledBefore, List<Moment> moments, Map<PartId, Waveform> supplies, List<Logic> logic) {
        this.settledBefore = settledBefore;
        this.moments = List.copyOf(moments);
        this.supplies = new LinkedHashMap<>(supplies);
        this.logic = List.copyOf(logic);
    }

    /** The network has long rested at this setting when the run begins: its operating point after power-up. */
    public static Timeline settled(Setting setting) {
        return new Timeline(true, List.of(new Moment(0, setting)), Map.of(), List.of());
    }

    /** Power appears as the run begins: no current, no charge, cold lamps, released relays, sleeping controllers. */
    public static Timeline fromNothing(Setting setting) {
        return new Timeline(false, List.of(new Moment(0, setting)), Map.of(), List.of());
    }

    /**
     * Changes the setting at a time.
     *
     * @param seconds not before the last change
     * @param change what becomes of the setting that held before
     */
    public Timeline then(double seconds, UnaryOperator<Setting> change) {
        Moment last = moments.getLast();
        if (!(seconds >= last.seconds()) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException(
                    "a change at " + seconds + " s must not come before the last one at " + last.seconds() + " s");
        }
        List<Moment> more = new ArrayList<>(moments);
        more.add(new Moment(seconds, change.apply(last.setting())));
        return new Timeline(settledBefore, more, supplies, logic);
    }

    /** Lets a battery's open-circuit voltage follow a waveform, whatever the settings say. */
    public Timeline supply(PartId battery, Waveform volts) {
        if (!(network().part(battery) instanceof Battery)) {
            throw new IllegalArgumentException(
                    battery + " is no battery: " + network().part(battery));
        }
        Map<PartId, Waveform> more = new LinkedHashMap<>(supplies);
        more.put(battery, volts);
        return new Timeline(settledBefore, moments, more, logic);
    }

    /** Lets logic read the network and work outputs. What it works is no longer ruled by the settings. */
    public Timeline logic(Logic piece) {
        List<String> mistakes = new ArrayList<>(piece.mistakesIn(network()));
        for (PartId output : piece.outputs()) {
            if (!(network().part(output) instanceof LowSideOutput
                    || network().part(output) instanceof HighSideOutput)) {
                mistakes.add(output + " is no output: " + network().part(output));
            }
        }
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", mistakes));
        }
        List<Logic> more = new ArrayList<>(this.logic);
        more.add(piece);
        return new Timeline(settledBefore, moments, supplies, more);
    }

    /** The network whose settings it tells. */
    public Network network() {
        return moments.getFirst().setting().network();
    }

    boolean settledBefore() {
        return settledBefore;
    }

    List<Moment> moments() {
        return moments;
    }

    Map<PartId, Waveform> supplies() {
        return supplies;
    }

    List<Logic> logic() {
        return logic;
    }
}
