package org.loomproof.papers.record;

import java.util.Base64;
import java.util.Locale;

/**
 * A picture for the record, small and bare: nothing in it says where, when or with what it was taken.
 *
 * @param name its file's name as given
 * @param width in pixels
 * @param height in pixels
 * @param jpeg the picture as JPEG in base 64
 */
public record Photo(String name, int width, int height, String jpeg) {

    /** Whether its name begins with the joint's, such as {@code J3-door.jpg} or {@code FU1-1.jpg}; case does not matter. */
    boolean shows(String joint) {
        return plain(name).startsWith(plain(joint) + "-");
    }

    /** The picture as a file. */
    public byte[] bytes() {
        return Base64.getDecoder().decode(jpeg);
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]+", "-");
    }
}
