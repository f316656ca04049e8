package org.loomproof.workshop.brief.read;

import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.QuantityText.Outcome;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.trade.template.PartDefaults;

/** Ranges for figures left out, round enough to be recognised in an assertion. */
final class UsualForTests implements PartDefaults {

    private static final Map<String, Outcome<?>> RANGES = Map.ofEntries(
            ohms("fuse.resistance", "1..2..3 mohm"),
            amps("fuse.rating", "5..10..30 A"),
            ohms("switch.closed-resistance", "10..20..30 mohm"),
            ohms("contact.closed-resistance", "11..21..31 mohm"),
            ohms("coil.resistance", "70..85..100 ohm"),
            volts("coil.pull-in", "6..7..8 V"),
            volts("coil.drop-out", "1..2..3 V"),
            entry("lamp.power", "5..7..21 W", Unit.WATTS),
            ohms("load.solenoid.resistance", "0.2..0.3..0.4 ohm"),
            ohms("load.motor.resistance", "1..2..3 ohm"),
            ohms("load.heater.resistance", "1..2..3 ohm"),
            ohms("load.electronic.resistance", "100..200..300 ohm"),
            entry("wire.length", "1..2..3 m", Unit.METRES),
            entry("wire.size", "0.5..0.75..1 mm2", Unit.SQUARE_MILLIMETRES),
            volts("input.low-below", "1..1.5..2 V"),
            volts("input.high-above", "3..3.5..4 V"),
            entry("battery.capacity", "40..60..80 Ah", Unit.AMP_HOURS),
            amps("vehicle.sleep-current", "10..20..30 mA"),
            entry("lead.size", "0.35..0.5..0.75 mm2", Unit.SQUARE_MILLIMETRES),
            volts("port.input.low-below", "1.5..2..2.5 V"),
            volts("port.input.high-above", "3.5..4..4.5 V"),
            volts("port.low-side.saturation", "0.1..0.3..0.7 V"),
            volts("port.high-side.saturation", "0.1..0.2..0.7 V"),
            amps("kit.standby", "5..10..20 mA"),
            entry("kit.arming-delay", "10..20..30 s", Unit.SECONDS),
            entry("shop.usual-run", "1..1.5..2 m", Unit.METRES));

    private static Map.Entry<String, Outcome<?>> ohms(String key, String range) {
        return entry(key, range, Unit.OHMS);
    }

    private static Map.Entry<String, Outcome<?>> amps(String key, String range) {
        return entry(key, range, Unit.AMPS);
    }

    private static Map.Entry<String, Outcome<?>> volts(String key, String range) {
        return entry(key, range, Unit.VOLTS);
    }

    private static Map.Entry<String, Outcome<?>> entry(String key, String range, Unit<?> unit) {
        return Map.entry(key, QuantityText.read(range, unit));
    }

    @Override
    public <Q extends Quantity> Optional<Range<Q>> find(String key, Class<Q> unit) {
        if (RANGES.get(key) instanceof Outcome.Read(Range<?> range)) {
            return Optional.of(
                    new Range<>(unit.cast(range.low()), unit.cast(range.typical()), unit.cast(range.high())));
        }
        return Optional.empty();
    }
}
