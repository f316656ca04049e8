package org.loomproof.workshop.trade.fuse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.connector.ContactPlace;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The blade fuses that are bought, smallest first, and what one of any rating resists. */
public final class Fuses {
    private static final Table BLADE = Table.read(Fuses.class, "blade.csv");
    private static final Table RULES = Table.read(Fuses.class, "rules.csv");
    private static final List<Known> KNOWN = known();
    private static final List<BladeFuse> BOUGHT = bought();

    private Fuses() {}

    /** All ratings that are bought, smallest first. */
    public static List<BladeFuse> listBlades() {
        return BOUGHT;
    }

    /** The smallest fuse that may carry the current for long: current at most 75 % of its rating. */
    public static Optional<BladeFuse> findFor(Amps continuous) {
        return BOUGHT.stream()
                .filter(fuse ->
                        continuous.value() <= continuousShare() * fuse.rating().value())
                .findFirst();
    }

    /**
     * What a blade fuse of that rating resists when cold: the kept figure, or one on a straight line between (or beyond)
     * its neighbours in logarithms of rating and resistance.
     */
    public static Ohms coldResistance(Amps rating) {
        int right = 1;
        while (right < KNOWN.size() - 1 && KNOWN.get(right).rating() < rating.value()) {
            right++;
        }
        Known from = KNOWN.get(right - 1);
        Known to = KNOWN.get(right);
        if (rating.value() == to.rating()) {
            return new Ohms(to.ohms());
        }
        double slope = Math.log(to.ohms() / from.ohms()) / Math.log(to.rating() / from.rating());
        return new Ohms(from.ohms() * Math.pow(rating.value() / from.rating(), slope));
    }

    /**
     * Where the resistance of a fuse in its holder lies when only its rating is known, or a range of it: the least of the
     * largest rating to the most of the smallest. Makers' spread common practice, no published source.
     */
    public static Range<Ohms> inHolder(Range<Amps> rating) {
        double low = rule("cold-spread-low") * coldResistance(rating.high()).value();
        double high = rule("cold-spread-high") * coldResistance(rating.low()).value();
        return new Range<>(
                new Ohms(low + ContactPlace.FUSE_HOLDER.low().value()),
                new Ohms(coldResistance(rating.typical()).value()
                        + ContactPlace.FUSE_HOLDER.typical().value()),
                new Ohms(high + ContactPlace.FUSE_HOLDER.high().value()));
    }

    /** The share of its rating that a fuse may carry for long. */
    public static double continuousShare() {
        return rule("continuous-share");
    }

    /** The multiple of its rating that a pulse no longer than {@link #pulseLength()} may reach. */
    public static double pulseShare() {
        return rule("pulse-share");
    }

    /** The longest pulse that {@link #pulseShare()} holds for. */
    public static Seconds pulseLength() {
        return new Seconds(rule("pulse-length"));
    }

    /** The most wire there may be between where a feed is taken and its fuse. */
    public static Metres takeOffLength() {
        return new Metres(rule("take-off-length"));
    }

    /** The ratio of ratings at which two fuses in series are told apart at the least. */
    public static double selectiveRatio() {
        return rule("selective-ratio");
    }

    private static double rule(String name) {
        return RULES.findRow("rule", name)
                .orElseThrow(() -> new IllegalStateException("rules.csv has no " + name))
                .number("value");
    }

    /** A fuse whose cold resistance is kept. */
    private record Known(double rating, double ohms) {}

    private static List<Known> known() {
        List<Known> known = new ArrayList<>();
        for (Row row : BLADE.listRows()) {
            row.findNumber("cold_mohm")
                    .ifPresent(milliohms -> known.add(new Known(row.number("rating_a"), milliohms / 1000)));
        }
        return List.copyOf(known);
    }

    private static List<BladeFuse> bought() {
        List<BladeFuse> fuses = new ArrayList<>();
        for (Row row : BLADE.listRows()) {
            Amps rating = new Amps(row.number("rating_a"));
            fuses.add(new BladeFuse(rating, coldResistance(rating), row.text("body")));
        }
        return List.copyOf(fuses);
    }
}
