package org.loomproof.papers.record;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How a camera was held, by the orientation tag of Exif (CIPA DC-008, tag 0x0112; from memory): 1 upright, 2 to 4 mirrored or
 * upside down, 5 to 8 lying.
 */
final class Orientation {

    private static final int START_OF_IMAGE = 0xFFD8;
    private static final int APP1 = 0xFFE1;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final int TAG = 0x0112;
    private static final int UPRIGHT = 1;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

    private Orientation() {}

    /** The tag of a picture file; 1 where there is none or it cannot be read. */
    static int of(byte[] file) {
        try {
            ByteBuffer in = ByteBuffer.wrap(file);
            if (unsigned(in, 0) != START_OF_IMAGE) {
                return UPRIGHT;
            }
            int at = 2;
            while (unsigned(in, at) != START_OF_SCAN) {
                if (unsigned(in, at) == APP1 && isExif(in, at + 4)) {
                    return tag(in.slice(at + 4 + EXIF.length, in.limit() - at - 4 - EXIF.length));
                }
                at += 2 + Math.max(2, unsigned(in, at + 2));
            }
            return UPRIGHT;
        } catch (IndexOutOfBoundsException e) {
            return UPRIGHT; // cut off in the middle: the picture itself will be looked at by its own reader
        }
    }

    private static boolean isExif(ByteBuffer in, int at) {
        byte[] found = new byte[EXIF.length];
        in.get(at, found);
        return Arrays.equals(found, EXIF);
    }

    /** The tag among those of the first directory of a TIFF header. */
    private static int tag(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'M' ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = unsigned(tiff, directory);
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if (unsigned(tiff, entry) == TAG) {
                int found = unsigned(tiff, entry + 8);
                return found >= 1 && found <= 8 ? found : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    private static int unsigned(ByteBuffer in, int at) {
        return Short.toUnsignedInt(in.getShort(at));
    }

    /** The picture as it was seen by whoever held the camera that way. */
    static BufferedImage upright(BufferedImage image, int orientation) {
        int w = image.getWidth();
        int h = image.getHeight();
        boolean lies = orientation >= 5;
        BufferedImage upright = new BufferedImage(lies ? h : w, lies ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < upright.getHeight(); y++) {
            for (int x = 0; x < upright.getWidth(); x++) {
                int rgb = switch (orientation) {
                    case 2 -> image.getRGB(w - 1 - x, y);
                    case 3 -> image.getRGB(w - 1 - x, h - 1 - y);
                    case 4 -> image.getRGB(x, h - 1 - y);
                    case 5 -> image.getRGB(y, x);
                    case 6 -> image.getRGB(y, h - 1 - x);
                    case 7 -> image.getRGB(w - 1 - y, h - 1 - x);
                    case 8 -> image.getRGB(w - 1 - y, x);
                    default -> image.getRGB(x, y);
                };
                upright.setRGB(x, y, rgb);
            }
        }
        return upright;
    }
}
