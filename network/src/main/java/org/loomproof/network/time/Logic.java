package org.loomproof.network.time;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;

/**
 * What works outputs of a network by what it reads there and by time: the inside of a controller. Immutable; each run begins a
 * course of its own. Whether an output has supply enough to be driven is the output's affair.
 */
public interface Logic {
    /** Name of the block, for events. */
    String name();

    /** Every output that it drives at some time; the settings rule those no longer. */
    Set<PartId> outputs();

    /**
     * What is wrong where it is put into this network, such as a part that is not there; empty where nothing is.
     *
     * @param network that it is to read and work
     */
    List<String> mistakesIn(Network network);

    /** It begins, in a network in which it makes no mistakes. */
    Course begin(Network network);

    /** One run of it: used by that run alone, and moved only forward in time. */
    interface Course {
        /** What it drives now; every other output of its own is let go. */
        Set<PartId> outputsOn();

        /** Voltages that move it once they are there. What is there must move it, so that it no longer waits for it. */
        List<Awaited> awaited();

        /** When time moves it next, seconds from the start of the run; infinite where nothing but a voltage does. */
        double due();

        /**
         * Moves by one step, if there is one to take at this time.
         *
         * @param isThere whether an awaited voltage is there
         * @return the state entered, for events; empty where nothing moves
         */
        Optional<String> move(double seconds, Predicate<Awaited> isThere);
    }

    /**
     * A voltage that is waited for.
     *
     * @param at the node it is read at
     * @param against the node it is read against
     * @param fromVolts at least this, may be minus infinity
     * @param toVolts at most this, may be infinity
     */
    record Awaited(Node at, Node against, double fromVolts, double toVolts) {
        public Awaited {
            if (!(fromVolts <= toVolts)) {
                throw new IllegalArgumentException("no voltage lies from " + fromVolts + " to " + toVolts + " V");
            }
        }

        /** How far a voltage is from being there; zero or less once it is. */
        double marginVolts(double volts) {
            return Math.max(fromVolts - volts, volts - toVolts);
        }
    }
}
