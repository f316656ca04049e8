package org.loomproof.workshop.problem;

/**
 * Where in the reader's own text something stands.
 *
 * @param file the file's name as the reader gave it
 * @param line from 1; 0 when the whole file is meant
 * @param column from 1; 0 when the whole line or file is meant
 * @param path the way to the entry, such as {@code circuits[2].path[0].fuse.amps}
 */
public record Place(String file, int line, int column, String path) {

    /** The place of a file as a whole. */
    public static Place file(String file) {
        return new Place(file, 0, 0, "");
    }

    /** A place that no text stands behind: a value that came from our own data or was made in code. */
    public static Place nowhere(String path) {
        return new Place("", 0, 0, path);
    }
}
