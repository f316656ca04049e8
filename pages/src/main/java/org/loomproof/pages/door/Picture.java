package org.loomproof.pages.door;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A kind of picture that may be handed in, known by its first bytes and never by what it calls itself (signatures of the formats' own
 * specifications: JFIF and Exif begin with an SOI and a further marker; PNG, section 5.2; WebP container).
 */
public enum Picture {
    JPEG("image/jpeg", "ffd8ff", ""),
    PNG("image/png", "89504e470d0a1a0a", ""),
    WEBP("image/webp", "52494646", "57454250");

    /** Photos of today's phones are up to 8 MB or so. */
    public static final int MOST_BYTES = 12_000_000;

    private static final int SECOND_AT = 8;

    private final String mediaType;
    private final String first;
    private final String second;

    Picture(String mediaType, String first, String second) {
        this.mediaType = mediaType;
        this.first = first;
        this.second = second;
    }

    /** As it is told to a browser. */
    public String mediaType() {
        return mediaType;
    }

    /** The kind of these bytes; nothing when they are no picture of a kind we take. */
    public static Optional<Picture> in(byte[] bytes) {
        String head = HexFormat.of().formatHex(Arrays.copyOf(bytes, Math.min(bytes.length, 16)));
        return Arrays.stream(values())
                .filter(kind -> head.startsWith(kind.first)
                        && (kind.second.isEmpty() || head.startsWith(kind.second, 2 * SECOND_AT)))
                .findFirst();
    }
}
