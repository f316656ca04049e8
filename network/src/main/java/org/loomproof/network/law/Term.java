package org.loomproof.network.law;

/** One two-terminal element of a part. Terminals are pin numbers; numbers from the pin count on are nodes inside the part. */
public sealed interface Term {
    int from();

    int to();

    When when();

    /** Whether its current is no straight line over its voltage, in a steady state. */
    default boolean isCurved() {
        return switch (this) {
            case Junction junction -> true;
            case Filament filament -> true;
            case Channel channel -> true;
            case Conductance straight -> false;
            case Coil straight -> false;
            case Capacitance nothing -> false;
            case Throw straight -> false;
        };
    }

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

        /** Where a short between the first two pins goes, in parts that have no other term there; must come first. */
        static Conductance ifShorted() {
            return new Conductance(0, 1, 1, 0, When.NEVER, Stated.NOTHING);
        }

        static Conductance when(When when, int from, int to, double ohms) {
            return new Conductance(from, to, 1 / ohms, 0, when, Stated.NOTHING);
        }
    }

    /** v = R i + L di/dt: in a steady state a conductance 1 / R. */
    record Coil(int from, int to, double ohms, double henries, When when) implements Term {}

    /** i = C du/dt with v = u + Rs i: nothing in a steady state. */
    record Capacitance(int from, int to, double farads, double seriesOhms, When when) implements Term {}

    /** A conductance that counts while the setting has the part in this position. */
    record Throw(int from, int to, double siemens, int position) implements Term {
        @Override
        public When when() {
            return When.ALWAYS;
        }
    }

    /** The curve of {@link ShockleyCurve}. */
    record Junction(int from, int to, ShockleyCurve curve, When when) implements Term {}

    /** The curve of {@link FilamentCurve}. */
    record Filament(int from, int to, FilamentCurve curve, When when) implements Term {}

    /** The curve of {@link ChannelCurve}. */
    record Channel(int from, int to, ChannelCurve curve, When when) implements Term {}
}
