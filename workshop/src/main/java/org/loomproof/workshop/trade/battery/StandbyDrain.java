package org.loomproof.workshop.trade.battery;

import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;

/**
 * How many days a parked car's battery lasts until the engine no longer cranks: {@code capacity · share / (24 · current)}, and
 * sooner by Peukert's law for a current above the one its capacity is printed for.
 *
 * <p>The share is 40 % at 25 °C by a car maker's dealer bulletin, and by common practice less for an old battery. In the cold a
 * full battery has less cranking power (an Army table), and what is taken from it must leave enough: power is taken to go with
 * charge, and a full sound battery to crank its engine just down to -17.8 °C; both are common practice with no published source.
 */
public final class StandbyDrain {

    private static final double HOURS_A_DAY = 24;

    /** What is meant by mild weather. Common practice, no published source. */
    public static final Celsius MILD = new Celsius(20);

    /** What is meant by the cold, where the shop reckons with it. Common practice, no published source. */
    public static final Celsius COLD = new Celsius(-10);

    private StandbyDrain() {}

    /** What may be taken of the rated capacity in mild weather, by the battery's age in years. */
    public static double usableShare(double ageYears) {
        return ParkedBattery.usableShare(ageYears);
    }

    /** What may be taken when the engine is to crank at that temperature; nothing in harder cold than its battery is made for. */
    public static double usableShare(double ageYears, Celsius temperature) {
        double needed = ParkedBattery.crankingPower(ParkedBattery.coldestStart());
        double cold = Math.max(0, 1 - needed / ParkedBattery.crankingPower(temperature));
        double mild = usableShare(ageYears);
        // An old battery gives less in the cold in the same proportion.
        return Math.min(mild, cold * mild / ParkedBattery.usableShare(0));
    }

    /** Days until the usable share is gone; without end when nothing is drawn. */
    public static double days(AmpHours capacity, double usableShare, Amps drawn) {
        return drawn.value() <= 0
                ? Double.POSITIVE_INFINITY
                : usableShare
                        * Math.min(
                                capacity.value() / drawn.value(),
                                Peukert.hours(
                                        capacity, ParkedBattery.ratedHours(), ParkedBattery.peukertExponent(), drawn))
                        / HOURS_A_DAY;
    }
}
