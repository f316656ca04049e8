package org.loomproof.workshop.sizing;

import java.util.Optional;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.connector.CrimpPull;
import org.loomproof.workshop.trade.connector.InsulatedTerminal;
import org.loomproof.workshop.trade.connector.Workmanship;

/**
 * How one end of a wire is joined, by its size and its place.
 *
 * @param method what is done
 * @param sleeve the size of tap, splice or terminal; none for a soldered joint, or when no insulated one takes the conductor
 * @param strip how much insulation comes off; none where a tap bites through it, and where it is the barrel's length
 * @param pull what the crimp must withstand; none for a soldered joint and for a tap
 */
public record JointChoice(
        Method method, Optional<InsulatedTerminal> sleeve, Optional<Metres> strip, Optional<CrimpPull> pull) {

    /** What is done at a joint. */
    public enum Method {
        /** Bared without cutting, wrapped, soldered, supported and sleeved. */
        WRAP_AND_SOLDER,
        /** A tap connector around the factory conductor. */
        TAP_CONNECTOR,
        /** Both conductors in one crimped splice. */
        CRIMP_SPLICE,
        /** Two ends wrapped, soldered, supported and sleeved. */
        SOLDER_SPLICE,
        /** A push-on terminal on a relay, fuse holder or load. */
        TERMINAL,
        /** A ring under a screw of its own on bare metal. */
        RING
    }

    /** Whether a factory wire carries what must not hang on a tap connector: supply or starter. */
    public enum Carries {
        SIGNAL,
        POWER
    }

    /**
     * A joint on a whole factory wire. Tap connectors are for signals only, and are chosen by the factory conductor; what
     * carries power is wrapped and soldered, or spliced when it is too thick for that.
     *
     * @param factory the factory conductor
     * @param own the added one
     * @param solder whether the shop solders
     */
    public static JointChoice onWhole(
            SquareMillimetres factory, SquareMillimetres own, Carries carries, boolean solder) {
        if (solder && isSolderable(factory)) {
            return soldered(Method.WRAP_AND_SOLDER);
        }
        return switch (carries) {
            case SIGNAL ->
                new JointChoice(
                        Method.TAP_CONNECTOR, InsulatedTerminal.find(factory), Optional.empty(), Optional.empty());
            case POWER -> splice(factory, own);
        };
    }

    /** A joint at a cut end of a factory wire, or of one loose conductor with another. */
    public static JointChoice onEnd(SquareMillimetres factory, SquareMillimetres own, boolean solder) {
        return solder && isSolderable(factory) && isSolderable(own)
                ? soldered(Method.SOLDER_SPLICE)
                : splice(factory, own);
    }

    /** A terminal on a part, chosen by the conductor in it. */
    public static JointChoice onPart(SquareMillimetres own) {
        return crimped(Method.TERMINAL, own, own);
    }

    /** A ring on the body, chosen by the conductor in it. */
    public static JointChoice onBody(SquareMillimetres own) {
        return crimped(Method.RING, own, own);
    }

    private static JointChoice splice(SquareMillimetres factory, SquareMillimetres own) {
        // The barrel must take the thicker; the thinner, doubled over, is what pulls out first.
        boolean ownThicker = own.value() > factory.value();
        return crimped(Method.CRIMP_SPLICE, ownThicker ? own : factory, ownThicker ? factory : own);
    }

    private static JointChoice crimped(Method method, SquareMillimetres thicker, SquareMillimetres thinner) {
        return new JointChoice(method, InsulatedTerminal.find(thicker), Optional.empty(), CrimpPull.find(thinner));
    }

    private static JointChoice soldered(Method method) {
        return new JointChoice(method, Optional.empty(), Optional.of(Workmanship.wrappedStrip()), Optional.empty());
    }

    private static boolean isSolderable(SquareMillimetres conductor) {
        return conductor.value() <= Workmanship.thickestSoldered().value();
    }
}
