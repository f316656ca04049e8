package org.loomproof.papers.record;

import java.util.Locale;
import org.loomproof.workshop.goods.joint.PlacedJoint;

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
    boolean shows(PlacedJoint joint) {
        return plain(name).startsWith(plain(joint.name()) + "-");
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9+]+", "-");
    }
}
