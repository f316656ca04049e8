package org.loomproof.workshop.replay;

import java.util.Arrays;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;

/**
 * What a controller does at a moment.
 *
 * @param state its state
 * @param on the outputs that it drives
 * @param pulses whether any of them is a pulse under way
 */
record Status(ControllerState state, Set<LeadId> on, boolean pulses) {

    Status {
        on = Collections.unmodifiableSet(new TreeSet<>(on));
    }

    /** The text of one that has no supply. */
    static final String ASLEEP = "asleep";

    /** What an event told. */
    static Status of(String text) {
        String state = text.substring(0, text.indexOf(' '));
        String on = text.substring(text.indexOf('[') + 1, text.length() - 1);
        return new Status(
                Arrays.stream(ControllerState.values())
                        .filter(each -> each.word().equals(state))
                        .findFirst()
                        .orElseThrow(),
                on.isEmpty()
                        ? Set.of()
                        : Arrays.stream(on.split(", ")).map(LeadId::new).collect(Collectors.toSet()),
                false);
    }

    /** As events tell it. */
    String text() {
        return state.word() + " " + on;
    }
}
