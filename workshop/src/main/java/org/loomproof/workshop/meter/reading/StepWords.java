package org.loomproof.workshop.meter.reading;

import java.util.List;
import java.util.Optional;

/**
 * The closed list of words for what a car was doing.
 *
 * @param <S> what they mean
 */
public interface StepWords<S> {

    /** What a text means; empty when it is not on the list. */
    Optional<S> read(String text);

    /** Every word and form that is accepted, for a reader who used another. */
    List<String> accepted();
}
