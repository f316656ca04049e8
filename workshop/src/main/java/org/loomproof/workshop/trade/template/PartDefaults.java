package org.loomproof.workshop.trade.template;

import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.Range;

/**
 * The usual ranges of figures that a sheet, a kit or an order may leave out. What is read here is always marked assumed.
 *
 * <p>Keys are the part and its figure as written in files: {@code fuse.rating}, {@code fuse.resistance},
 * {@code switch.closed-resistance}, {@code contact.closed-resistance}, {@code coil.resistance}, {@code coil.pull-in},
 * {@code coil.drop-out}, {@code lamp.power}, {@code load.solenoid.resistance} (and {@code motor}, {@code heater},
 * {@code electronic}), {@code wire.length}, {@code wire.size}, {@code input.low-below}, {@code input.high-above},
 * {@code battery.capacity}, {@code vehicle.sleep-current}; of a kit {@code lead.size}, {@code port.input.low-below},
 * {@code port.input.high-above}, {@code port.low-side.saturation}, {@code port.high-side.saturation},
 * {@code kit.standby}, {@code kit.arming-delay}; of an order {@code shop.usual-run}.
 */
public interface PartDefaults {

    /** The usual range of the figure, in the given unit; empty when the trade has none and it must be stated. */
    <Q extends Quantity> Optional<Range<Q>> find(String key, Class<Q> unit);

    /** The usual range of a factory fuse's resistance, holder included, when its rating is known to lie in a range. */
    default Optional<Range<Ohms>> findFuseResistance(Range<Amps> rating) {
        return find("fuse.resistance", Ohms.class);
    }

    /** Knows nothing: whatever is left out is a problem. */
    static PartDefaults none() {
        return new PartDefaults() {
            @Override
            public <Q extends Quantity> Optional<Range<Q>> find(String key, Class<Q> unit) {
                return Optional.empty();
            }
        };
    }
}
