package org.loomproof.workshop.trade.template;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The usual figures of the trade, from {@code part-defaults.csv}. */
public final class TradeDefaults implements PartDefaults {
    private static final TradeDefaults ONLY = new TradeDefaults();
    private final Map<String, Usual> usual = new LinkedHashMap<>();

    /** A range as kept, with the key of the reading that would replace it. */
    private record Usual(Range<?> range, String reading) {}

    private TradeDefaults() {
        for (Row row : Table.read(TradeDefaults.class, "part-defaults.csv").listRows()) {
            usual.put(row.text("key"), new Usual(range(row), row.text("reading")));
        }
    }

    /** The figures of our data file. */
    public static TradeDefaults read() {
        return ONLY;
    }

    @Override
    @SuppressWarnings("unchecked") // the unit of all three values was looked at
    public <Q extends Quantity> Optional<Range<Q>> find(String key, Class<Q> unit) {
        Usual found = usual.get(key);
        if (found == null) {
            return Optional.empty();
        }
        if (!unit.isInstance(found.range().typical())) {
            throw new IllegalStateException(
                    key + " is kept in " + found.range().typical().symbol());
        }
        return Optional.of((Range<Q>) found.range());
    }

    @Override
    public Optional<Range<Ohms>> findFuseResistance(Range<Amps> rating) {
        return Optional.of(Fuses.inHolder(rating));
    }

    /**
     * The reading that would replace a figure, by the key of the figure or by the way to it in a file: the end of a message key,
     * such as {@code ohms-across} for {@code reading.ohms-across}. What sort of load it is makes no difference to the reading.
     */
    public Optional<String> findReading(String key) {
        String[] steps = key.split("\\.", -1);
        String last = steps.length < 2 ? key : steps[steps.length - 2] + "." + steps[steps.length - 1];
        return usual.entrySet().stream()
                .filter(each -> each.getKey().equals(key)
                        || each.getKey().equals(last)
                        || (last.equals("load.resistance") && each.getKey().startsWith("load.")))
                .map(each -> each.getValue().reading())
                .findFirst();
    }

    /** Every figure there is a usual range for, in the order of the file. */
    public Set<String> listKeys() {
        return Collections.unmodifiableSet(usual.keySet());
    }

    private static Range<?> range(Row row) {
        double low = row.number("low");
        double typical = row.number("typical");
        double high = row.number("high");
        return switch (row.text("unit")) {
            case "A" -> new Range<>(new Amps(low), new Amps(typical), new Amps(high));
            case "mA" -> new Range<>(new Amps(low / 1000), new Amps(typical / 1000), new Amps(high / 1000));
            case "V" -> new Range<>(new Volts(low), new Volts(typical), new Volts(high));
            case "ohm" -> new Range<>(new Ohms(low), new Ohms(typical), new Ohms(high));
            case "mohm" -> new Range<>(new Ohms(low / 1000), new Ohms(typical / 1000), new Ohms(high / 1000));
            case "W" -> new Range<>(new Watts(low), new Watts(typical), new Watts(high));
            case "m" -> new Range<>(new Metres(low), new Metres(typical), new Metres(high));
            case "mm2" ->
                new Range<>(new SquareMillimetres(low), new SquareMillimetres(typical), new SquareMillimetres(high));
            case "Ah" -> new Range<>(new AmpHours(low), new AmpHours(typical), new AmpHours(high));
            case "s" -> new Range<>(new Seconds(low), new Seconds(typical), new Seconds(high));
            case "C" -> new Range<>(new Celsius(low), new Celsius(typical), new Celsius(high));
            default -> throw new IllegalStateException(row.where() + ": no unit " + row.text("unit"));
        };
    }
}
