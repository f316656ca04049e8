package org.loomproof.network.part;

import java.util.List;

/**
 * One thing that can be wired: its pins and its ratings, never its present state. Units are those of the SI; every
 * constructor throws {@link IllegalArgumentException} on a value that no real part can have.
 */
public sealed interface Part
        permits Battery,
                Resistor,
                Wire,
                Fuse,
                Meter,
                Switch,
                Relay,
                Diode,
                Lamp,
                LowSideOutput,
                HighSideOutput,
                LogicInput,
                Capacitor,
                Inductor,
                Zener,
                Suppressor,
                Motor,
                PulsedSource,
                SelectorSwitch,
                SteppedSwitch {
    PartId id();

    /** The terminals in the order of the record's components; currents are counted into them. */
    List<Pin> pins();
}
