package org.loomproof.workshop.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.connector.CrimpPull;
import org.loomproof.workshop.trade.connector.InsulatedTerminal;
import org.loomproof.workshop.trade.connector.Workmanship;

/**
 * How conductors are joined at one place, by their sizes and by what the place is.
 *
 * @param method what is done
 * @param by what the sleeve is chosen by: one conductor, or all together that share a barrel
 * @param sleeve the size of tap, splice or terminal; none for a soldered joint, or when no insulated one takes so much copper
 * @param strip how much insulation comes off; none where a tap bites through it, and where it is the barrel's length
 * @param pull what the crimp must withstand: the thinnest conductor comes out first; none for a soldered joint and for a tap
 */
public record JointChoice(
        Method method,
        SquareMillimetres by,
        Optional<InsulatedTerminal> sleeve,
        Optional<Metres> strip,
        Optional<CrimpPull> pull) {

    /** What is done at a joint. */
    public enum Method {
        /** Bared without cutting, wrapped, soldered, supported and sleeved. */
        WRAP_AND_SOLDER,
        /** A tap connector around the factory conductor. */
        TAP_CONNECTOR,
        /** All conductors in one crimped barrel. */
        CRIMP_SPLICE,
        /** Ends wrapped, soldered, supported and sleeved. */
        SOLDER_SPLICE,
        /** A contact crimped on and pushed into a connector, with which it comes. */
        PLUG_CONTACT,
        /** A push-on terminal on a relay, fuse holder or load. */
        TERMINAL,
        /** A ring under a screw of its own on bare metal. */
        RING
    }

    /** What a factory wire carries: a tap connector will do for a signal only. */
    public enum Carries {
        SIGNAL,
        POWER
    }

    /**
     * A joint on a whole factory wire. A tap connector is chosen by the factory conductor; where the wire carries power it is
     * wrapped and soldered, or spliced when it is too thick for that.
     *
     * @param factory the factory conductor
     * @param own the added ones
     * @param solder whether the shop solders
     */
    public static JointChoice onWhole(
            SquareMillimetres factory, List<SquareMillimetres> own, Carries carries, boolean solder) {
        if (solder && isSolderable(factory)) {
            return soldered(Method.WRAP_AND_SOLDER, factory);
        }
        return switch (carries) {
            case SIGNAL ->
                new JointChoice(
                        Method.TAP_CONNECTOR,
                        factory,
                        InsulatedTerminal.find(factory),
                        Optional.empty(),
                        Optional.empty());
            case POWER -> {
                List<SquareMillimetres> all = with(factory, own);
                yield crimped(Method.CRIMP_SPLICE, together(all), all);
            }
        };
    }

    /** A joint at the end of a conductor, such as a cut factory wire: the others come from the other side of the splice. */
    public static JointChoice onEnd(SquareMillimetres end, List<SquareMillimetres> own, boolean solder) {
        List<SquareMillimetres> all = with(end, own);
        SquareMillimetres added = together(own);
        return solder && all.stream().allMatch(JointChoice::isSolderable)
                ? soldered(Method.SOLDER_SPLICE, end)
                : crimped(Method.CRIMP_SPLICE, end.value() >= added.value() ? end : added, all);
    }

    /** A terminal on a part, chosen by the conductors in it. */
    public static JointChoice onPart(List<SquareMillimetres> own) {
        return crimped(Method.TERMINAL, together(own), own);
    }

    /** A contact of a connector: it is of the connector's size, and comes with it. */
    public static JointChoice inPlug(List<SquareMillimetres> own) {
        JointChoice terminal = onPart(own);
        return new JointChoice(Method.PLUG_CONTACT, terminal.by(), Optional.empty(), Optional.empty(), terminal.pull());
    }

    /** A ring on the body, chosen by the conductors in it. */
    public static JointChoice onBody(List<SquareMillimetres> own) {
        return crimped(Method.RING, together(own), own);
    }

    /** Conductors that share a barrel count by all their copper (NASA-STD-8739.4 Change 6, before 19.12). */
    private static SquareMillimetres together(List<SquareMillimetres> conductors) {
        return new SquareMillimetres(
                conductors.stream().mapToDouble(SquareMillimetres::value).sum());
    }

    private static List<SquareMillimetres> with(SquareMillimetres one, List<SquareMillimetres> others) {
        return Stream.concat(Stream.of(one), others.stream()).toList();
    }

    private static JointChoice crimped(Method method, SquareMillimetres barrel, List<SquareMillimetres> conductors) {
        SquareMillimetres thinnest = conductors.stream()
                .min(Comparator.comparingDouble(SquareMillimetres::value))
                .orElseThrow(() -> new IllegalArgumentException("a joint without conductors"));
        return new JointChoice(
                method, barrel, InsulatedTerminal.find(barrel), Optional.empty(), CrimpPull.find(thinnest));
    }

    private static JointChoice soldered(Method method, SquareMillimetres by) {
        return new JointChoice(method, by, Optional.empty(), Optional.of(Workmanship.wrappedStrip()), Optional.empty());
    }

    private static boolean isSolderable(SquareMillimetres conductor) {
        return conductor.value() <= Workmanship.thickestSoldered().value();
    }
}
