package org.loomproof.workshop.planner.grammar;

import org.loomproof.workshop.planner.coupling.Driving.Side;

/**
 * An output that works targets, as far as poles decide: what is the same for every amount of current.
 *
 * @param output the pole the output gives
 * @param active the pole the targets want
 * @param leaks whether current can get from a target into a controller that has lost a feed
 * @param kicks whether a target has a coil in it
 * @param stepped whether the target wants the body through a stated resistance
 * @param several whether there is more than one target
 */
public record Drive(Side output, Side active, boolean leaks, boolean kicks, boolean stepped, boolean several)
        implements Shape {

    @Override
    public Judge judge() {
        return new DriveJudge(this);
    }
}
