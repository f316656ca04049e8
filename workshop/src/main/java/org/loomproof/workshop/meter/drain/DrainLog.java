package org.loomproof.workshop.meter.drain;

import java.util.List;

/**
 * What a file of readings says of a drain.
 *
 * @param samples the battery's current, by time
 * @param branches those of the file, then the plan's own fuses that are not in it
 */
public record DrainLog(List<Sample> samples, List<Branch> branches) {

    public DrainLog {
        samples = List.copyOf(samples);
        branches = List.copyOf(branches);
    }
}
