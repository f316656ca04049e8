package org.loomproof.workshop.planner.grammar;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * All words of a grammar for one pairing.
 *
 * @param <W> the words
 * @param enumerated how many words there are within the bound
 * @param leftOut how many were left out, by reason
 * @param words what is left, fewest parts first
 */
public record Enumeration<W>(long enumerated, Map<LeftOut, Long> leftOut, List<W> words) {

    public Enumeration {
        leftOut = Collections.unmodifiableMap(new EnumMap<>(leftOut));
        words = List.copyOf(words);
    }

    /** The same with further words left out. */
    public Enumeration<W> leavingOut(Function<W, Optional<LeftOut>> judge) {
        Map<LeftOut, Long> more = new EnumMap<>(leftOut);
        List<W> left = words.stream()
                .filter(word -> {
                    Optional<LeftOut> reason = judge.apply(word);
                    reason.ifPresent(r -> more.merge(r, 1L, Long::sum));
                    return reason.isEmpty();
                })
                .toList();
        return new Enumeration<>(enumerated, more, left);
    }
}
