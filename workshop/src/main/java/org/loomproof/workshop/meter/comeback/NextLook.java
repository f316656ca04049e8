package org.loomproof.workshop.meter.comeback;

import java.util.List;

/**
 * The measurement that tells most for its time.
 *
 * @param look where and when
 * @param seconds how long it takes
 * @param bits by how much it is expected to lessen what is not known
 * @param answers what may be found, the likeliest first
 */
public record NextLook(Look look, double seconds, double bits, List<Answer> answers) {

    public NextLook {
        answers = List.copyOf(answers);
    }

    /**
     * One thing that may be found.
     *
     * @param low volts, with a battery of 12.6 V
     * @param high volts
     * @param probability 0 to 1
     * @param likeliest what is then the likeliest
     */
    public record Answer(double low, double high, double probability, Suspect likeliest) {}
}
