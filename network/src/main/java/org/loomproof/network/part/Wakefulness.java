package org.loomproof.network.part;

/**
 * The supply at which a controller's outputs work at all. Below it they are off, whatever is asked of them.
 *
 * @param wakesAtVolts supply against own ground at which a sleeping controller wakes
 * @param sleepsAtVolts supply at which a waking one falls asleep, below {@code wakesAtVolts}
 */
public record Wakefulness(double wakesAtVolts, double sleepsAtVolts) {
    /** A 12 V controller that rides through cranking; common practice, no published source. */
    public static final Wakefulness USUAL = new Wakefulness(6.5, 5.0);

    public Wakefulness {
        if (!(sleepsAtVolts > 0) || !(wakesAtVolts > sleepsAtVolts) || Double.isInfinite(wakesAtVolts)) {
            throw new IllegalArgumentException("waking (%s V) must exceed falling asleep (%s V), both above zero"
                    .formatted(wakesAtVolts, sleepsAtVolts));
        }
    }
}
