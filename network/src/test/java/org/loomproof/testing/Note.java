package org.loomproof.testing;

/** A line that {@code ./check} repeats among its own, such as how many mutations were tried and caught. */
public final class Note {

    private Note() {}

    /** Prints the line on the test's standard stream, marked so that {@code ./check} finds it. */
    public static void that(String line) {
        System.out.println("note: " + line);
    }
}
