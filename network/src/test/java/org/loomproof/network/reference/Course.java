package org.loomproof.network.reference;

import java.util.List;
import java.util.Map;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.PartId;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Waveform;

/**
 * All that goes on in a network over a time, told twice: to our solver as a timeline, and as what the reference must be told.
 *
 * @param thrown every throw of a switch or an output, each of which turns it over
 */
public record Course(Timeline timeline, List<Thrown> thrown, Map<PartId, Waveform> supplies, double seconds) {
    /** Something thrown at a time. */
    public record Thrown(double seconds, PartId part) {}

    public Network network() {
        return timeline.network();
    }

    /** Whether a switch is closed or an output asked for. */
    public boolean isOn(PartId part, double at) {
        return thrown.stream()
                                .filter(each -> each.part().equals(part) && each.seconds() <= at)
                                .count()
                        % 2
                == 1;
    }
}
