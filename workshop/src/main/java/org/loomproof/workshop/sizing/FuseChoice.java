package org.loomproof.workshop.sizing;

import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.fuse.BladeFuse;
import org.loomproof.workshop.trade.fuse.Fuses;

/**
 * Which fuse goes into a feed: at least 1.25 times the continuous current and at most the ceiling of every wire behind it.
 *
 * <p>1.25 times stands for a fuse loaded to at most 75 to 80 % of its rating: a fuse maker's guide asks for 75 %, the trade
 * reckons with 1.25 (80 %); the stricter of the two, {@link Fuses#continuousShare()}, is used.
 */
public final class FuseChoice {

    /** Smaller blades open from vibration and inrush. Common practice, no published source. */
    private static final double LEAST_AMPS = 2;

    /**
     * A cold filament draws many times its current for some tens of milliseconds; a fuse rated for 1.9 times the steady
     * current of lamps does not tire. Common practice, no published source.
     */
    private static final double LAMP_INRUSH = 1.9;

    private FuseChoice() {}

    /** What a fuse is asked to carry when its load is lamps: their steady current, raised for the cold filament. */
    public static Amps forLamps(Amps steady) {
        return new Amps(steady.value() * LAMP_INRUSH);
    }

    /** The smallest fuse that carries the current for long and still protects a wire of that ceiling, if there is one. */
    public static Optional<Amps> rating(Amps continuous, Amps ceiling) {
        return Fuses.listBlades().stream()
                .map(BladeFuse::rating)
                .filter(r -> r.value() >= LEAST_AMPS)
                .filter(r -> continuous.value() <= Fuses.continuousShare() * r.value())
                .filter(r -> r.value() <= ceiling.value())
                .findFirst();
    }

    /** The largest fuse that still protects a wire of that ceiling: what is left when the load asks for more. */
    public static Amps largestUnder(Amps ceiling) {
        return Fuses.listBlades().stream()
                .map(BladeFuse::rating)
                .filter(r -> r.value() <= ceiling.value())
                .reduce((smaller, larger) -> larger)
                .orElse(new Amps(LEAST_AMPS));
    }
}
