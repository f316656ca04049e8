package org.loomproof.workshop.trade.wire;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;

/**
 * A size of wire.
 *
 * @param name as bought: {@code 2.5 mm²} or {@code 14 AWG}
 * @param area nominal for metric sizes, by the gauge law for AWG
 * @param ohmsPerMetre the most a metre may resist at 20 °C
 * @param fuseCeiling the largest fuse that may protect it
 * @param bought whether shops keep it
 */
public record Conductor(String name, SquareMillimetres area, double ohmsPerMetre, Amps fuseCeiling, boolean bought) {}
