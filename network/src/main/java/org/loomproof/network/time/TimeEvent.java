package org.loomproof.network.time;

import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.PartId;

/** Something that happened at a moment of a run. */
public sealed interface TimeEvent {
    /** Seconds from the start of the run. */
    double seconds();

    /** The timeline's next setting took hold. */
    record SettingChanged(double seconds) implements TimeEvent {}

    /** A relay's coil reached the current that pulls it in, or fell to the one that lets it go. */
    record CoilCalled(double seconds, PartId relay, boolean pullsIn) implements TimeEvent {}

    /** A relay's contacts moved. */
    record ContactsMoved(double seconds, PartId relay, boolean pulledIn) implements TimeEvent {}

    /** An output's controller got supply enough to work, or lost it. */
    record Woke(double seconds, PartId output, boolean awake) implements TimeEvent {}

    /** A fuse opened. */
    record FuseOpened(double seconds, PartId fuse) implements TimeEvent {}

    /** A logic input came to read another level. */
    record Reads(double seconds, PartId input, LogicLevel level) implements TimeEvent {}

    /** Logic entered a state. */
    record StateEntered(double seconds, String logic, String state) implements TimeEvent {}
}
