package org.loomproof.network.part;

/**
 * How strongly a transistor output drives when it is on.
 *
 * @param onOhms resistance of the path at small currents, above zero
 * @param saturationVolts extra junction drop at the limit current (bipolar outputs); zero for a field-effect transistor
 * @param limitAmps current at which the output stops following; infinite for none
 */
public record Drive(double onOhms, double saturationVolts, double limitAmps) {
    public Drive {
        if (!(onOhms > 0) || Double.isInfinite(onOhms)) {
            throw new IllegalArgumentException("on ohms must be above zero and finite, was " + onOhms);
        }
        if (!(saturationVolts >= 0) || Double.isInfinite(saturationVolts)) {
            throw new IllegalArgumentException("saturation volts must not be negative, was " + saturationVolts);
        }
        if (!(limitAmps > 0)) {
            throw new IllegalArgumentException("limit amps must be above zero, was " + limitAmps);
        }
        if (saturationVolts > 0 && Double.isInfinite(limitAmps)) {
            throw new IllegalArgumentException(
                    "a saturation voltage is stated at the limit current, which must be finite");
        }
    }
}
