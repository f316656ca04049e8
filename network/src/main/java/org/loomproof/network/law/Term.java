package org.loomproof.network.law;

/** One two-terminal element of a part. Terminals are pin numbers; numbers from the pin count on are nodes inside the part. */
public sealed interface Term {
    int from();

    int to();

    When when();

    /** What a setting may state in place of the built value. */
    enum Stated {
        NOTHING,
        EMF,
        OHMS
    }

    /** i = g (v - emf). */
    record Conductance(int from, int to, double siemens, double emfVolts, When when, Stated stated) implements Term {
        static Conductance always(int from, int to, double ohms) {
            return new Conductance(from, to, 1 / ohms, 0, When.ALWAYS, Stated.NOTHING);
        }

        static Conductance when(When when, int from, int to, double ohms) {
            return new Conductance(from, to, 1 / ohms, 0, when, Stated.NOTHING);
        }
    }

    /** The curve of {@link ShockleyCurve}. */
    record Junction(int from, int to, ShockleyCurve curve, When when) implements Term {}

    /** The curve of {@link FilamentCurve}. */
    record Filament(int from, int to, FilamentCurve curve, When when) implements Term {}

    /** The curve of {@link ChannelCurve}. */
    record Channel(int from, int to, ChannelCurve curve, When when) implements Term {}
}
