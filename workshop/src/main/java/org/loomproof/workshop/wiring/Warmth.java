package org.loomproof.workshop.wiring;

import java.util.List;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.Celsius;

/**
 * How warm the car is: one more figure with a range, which moves everything made of copper at once. No reading settles it, since
 * a car is cold in winter and hot in the sun.
 */
public final class Warmth {

    /** What it is called at a {@link Corner}. */
    public static final String KEY = "temperature";

    /** At which parts are rated, and figures of copper stand. */
    public static final Celsius ROOM = new Celsius(20);

    private Warmth() {}

    /** From the coldest to the hottest that the shop reckons with; room temperature is among them. */
    public static RangedFigure range(ShopChoices shop) {
        return new RangedFigure(
                KEY,
                new Figure<>(
                        new Celsius(Math.min(shop.coldest().value(), ROOM.value())),
                        ROOM,
                        new Celsius(Math.max(shop.hottest().value(), ROOM.value())),
                        new Basis(Certainty.VERIFIED, Place.nowhere(""))));
    }

    /** How warm the car is at a corner. */
    static Celsius at(Corner corner, ShopChoices shop) {
        return new Celsius(corner.value(KEY, range(shop).figure()));
    }

    /** The corners at which the car alone is at its coldest and at its hottest. */
    public static List<Corner> ends() {
        return List.of(Corner.TYPICAL.with(KEY, Corner.Taken.LOW), Corner.TYPICAL.with(KEY, Corner.Taken.HIGH));
    }
}
