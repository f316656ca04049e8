package org.loomproof.workshop.quantity;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/**
 * A unit as people write it: its spellings and how large a value may sensibly be.
 *
 * <p>The limits catch slips of the pen (a resistance below a microhm, a kilometre of wire in a car), not bad design.
 * Common practice, no published source.
 */
public final class Unit<Q extends Quantity> {

    public static final Unit<Volts> VOLTS = new Unit<>(
            Volts.class,
            Volts::new,
            "V",
            0,
            1000,
            spelled(1, "V", "volt", "volts").and(1e-3, "mV"));
    public static final Unit<Amps> AMPS = amps(1e-6);
    /** What may be nothing at all, such as the draw of a car without electronics that is asleep. */
    public static final Unit<Amps> AMPS_OR_NONE = amps(0);
    /** The letter for ohm exists twice: Greek capital omega and the ohm sign. */
    public static final Unit<Ohms> OHMS = new Unit<>(
            Ohms.class,
            Ohms::new,
            "ohm",
            1e-6,
            1e9,
            spelled(1, "ohm", "ohms", "Ohm", "\u03a9", "\u2126")
                    .and(1e-3, "mohm", "mOhm", "m\u03a9", "m\u2126")
                    .and(1e3, "kohm", "kOhm", "k\u03a9", "k\u2126")
                    .and(1e6, "Mohm", "MOhm", "M\u03a9", "M\u2126"));

    public static final Unit<Watts> WATTS = new Unit<>(
            Watts.class,
            Watts::new,
            "W",
            1e-3,
            100_000,
            spelled(1, "W", "watt", "watts").and(1e-3, "mW").and(1e3, "kW"));
    public static final Unit<Metres> METRES = new Unit<>(
            Metres.class,
            Metres::new,
            "m",
            1e-3,
            1000,
            spelled(1, "m", "metre", "metres").and(1e-2, "cm").and(1e-3, "mm"));
    public static final Unit<SquareMillimetres> SQUARE_MILLIMETRES = new Unit<>(
            SquareMillimetres.class, SquareMillimetres::new, "mm2", 0.01, 500, spelled(1, "mm2", "mm²", "mm^2"));
    public static final Unit<Seconds> SECONDS = new Unit<>(
            Seconds.class,
            Seconds::new,
            "s",
            0,
            1e7,
            spelled(1, "s", "sec").and(1e-3, "ms").and(60, "min").and(3600, "h"));
    public static final Unit<AmpHours> AMP_HOURS = new Unit<>(
            AmpHours.class, AmpHours::new, "Ah", 0.01, 10_000, spelled(1, "Ah").and(1e-3, "mAh"));
    public static final Unit<Celsius> CELSIUS =
            new Unit<>(Celsius.class, Celsius::new, "C", -100, 300, spelled(1, "C", "°C", "degC"));

    public static final Unit<Decibels> DECIBELS =
            new Unit<>(Decibels.class, Decibels::new, "dB", 0, 200, spelled(1, "dB", "dBA", "dB(A)"));

    /** The unit a quantity is written in. */
    static Unit<?> of(Quantity quantity) {
        return switch (quantity) {
            case Volts volts -> VOLTS;
            case Amps amps -> AMPS;
            case Ohms ohms -> OHMS;
            case Watts watts -> WATTS;
            case Metres metres -> METRES;
            case SquareMillimetres area -> SQUARE_MILLIMETRES;
            case Seconds seconds -> SECONDS;
            case AmpHours hours -> AMP_HOURS;
            case Celsius celsius -> CELSIUS;
            case Decibels decibels -> DECIBELS;
        };
    }

    private final Class<Q> type;
    private final DoubleFunction<Q> maker;
    private final String written;
    private final double least;
    private final double most;
    private final Map<String, Double> scales;

    private Unit(Class<Q> type, DoubleFunction<Q> maker, String written, double least, double most, Spellings known) {
        this.type = type;
        this.maker = maker;
        this.written = written;
        this.least = least;
        this.most = most;
        this.scales = Map.copyOf(known.scales);
    }

    /** The quantity it measures. */
    public Class<Q> type() {
        return type;
    }

    /** The plainest spelling, fit for any keyboard: {@code ohm}, {@code mm2}. */
    public String written() {
        return written;
    }

    /** The least sensible value. */
    public Q least() {
        return maker.apply(least);
    }

    /** The greatest sensible value. */
    public Q most() {
        return maker.apply(most);
    }

    Q of(double value) {
        return maker.apply(value);
    }

    boolean admits(double value) {
        return least <= value && value <= most;
    }

    /** How much of the plain unit one of the spelled unit is; empty for an unknown spelling. */
    OptionalDouble scale(String spelling) {
        Optional<Double> known = Optional.ofNullable(scales.get(spelling));
        return known.isPresent() ? OptionalDouble.of(known.get()) : OptionalDouble.empty();
    }

    private static Unit<Amps> amps(double least) {
        return new Unit<>(
                Amps.class,
                Amps::new,
                "A",
                least,
                10_000,
                spelled(1, "A", "amp", "amps").and(1e-3, "mA").and(1e-6, "uA", "\u00b5A", "\u03bcA"));
    }

    private static Spellings spelled(double scale, String... spellings) {
        return new Spellings().and(scale, spellings);
    }

    /** Spellings with what each is worth, gathered while a unit is made. */
    private static final class Spellings {
        private final Map<String, Double> scales = new TreeMap<>();

        Spellings and(double scale, String... spellings) {
            for (String spelling : spellings) {
                scales.put(spelling, scale);
            }
            return this;
        }
    }
}
