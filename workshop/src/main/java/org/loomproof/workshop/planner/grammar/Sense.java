package org.loomproof.workshop.planner.grammar;

import org.loomproof.workshop.planner.coupling.Driving.Side;

/**
 * An input that reads wires which all switch alike, as far as poles decide.
 *
 * @param rest what the wires are held at while nothing is to be read
 * @param active what they are held at when something is
 * @param reads the pole that means something to the input
 * @param pulled whether the input pulls itself to the other pole
 * @param guarded whether a dead controller and the wire may disturb each other, so that more than a joint is wanted
 * @param several whether there is more than one wire, any of which counts
 */
public record Sense(Held rest, Held active, Side reads, boolean pulled, boolean guarded, boolean several)
        implements Shape {

    /** What a wire is held at: firmly by a switch, through a load or by electronics, or by nothing. */
    public enum Held {
        LOW,
        HIGH,
        PULLED_LOW,
        PULLED_HIGH,
        OPEN;

        boolean isFirm(Side pole) {
            return this == (pole == Side.HIGH ? HIGH : LOW);
        }

        boolean isAt(Side pole) {
            return isFirm(pole) || this == (pole == Side.HIGH ? PULLED_HIGH : PULLED_LOW);
        }
    }

    @Override
    public Judge judge() {
        return new SenseJudge(this);
    }
}
