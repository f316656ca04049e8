package org.loomproof.pages.work;

import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * One entry of a work log as a device wrote it.
 *
 * @param id drawn by chance on the device: a UUID in small letters
 * @param when by the device's own clock, to the millisecond; for people to read, since such clocks go wrong
 * @param work what was done
 */
public record Entry(String id, Instant when, Work work) {

    private static final Pattern SHAPE = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    public Entry {
        if (!SHAPE.matcher(id).matches()) {
            throw new IllegalArgumentException("not the name of an entry");
        }
    }

    /** An entry that is written here and now. */
    public static Entry of(Instant when, Work work) {
        return new Entry(UUID.randomUUID().toString(), when, work);
    }
}
