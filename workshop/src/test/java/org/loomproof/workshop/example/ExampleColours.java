package org.loomproof.workshop.example;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.loomproof.workshop.trade.colour.Colour;

/**
 * Deals insulation colours and plug positions for the examples by seed, so that no real vehicle's or kit's come back from
 * memory. Run it with an example's seed to write a new example; a test holds the files to it.
 */
final class ExampleColours {
    private ExampleColours() {}

    /** That many different colours in IEC 60757 letters, plain and with tracer, in the order of the seed. */
    static List<String> colours(long seed, int count) {
        List<String> all = new ArrayList<>();
        for (Colour base : Colour.values()) {
            for (Colour tracer : Colour.values()) {
                all.add(base == tracer ? base.code() : base.code() + "/" + tracer.code());
            }
        }
        return dealt(seed, all).subList(0, count);
    }

    /** The items in the order of the seed: how roles were laid on the positions of one plug. */
    static <T> List<T> dealt(long seed, List<T> items) {
        List<T> shuffled = new ArrayList<>(items);
        Collections.shuffle(shuffled, new Random(seed));
        return List.copyOf(shuffled);
    }
}
