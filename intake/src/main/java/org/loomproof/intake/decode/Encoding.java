package org.loomproof.intake.decode;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Tells how bytes stand for text: by a byte order mark, else UTF-16 when every other byte is zero, else UTF-8 when it is
 * well formed, else Windows-1252, which holds Latin-1. The order is that of the WHATWG's Encoding Standard; what is
 * well-formed UTF-8 with letters beyond ASCII is hardly ever anything else.
 */
final class Encoding {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4096;

    private Encoding() {}

    /** A text and the name of its encoding. */
    record Decoded(String text, String encoding) {}

    /** The text, or nothing when the bytes are no text: zero bytes are left over. */
    static Optional<Decoded> decode(byte[] bytes) {
        Charset marked = mark(bytes);
        Charset charset = marked != null ? marked : unmarked(bytes);
        String text = new String(bytes, charset);
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        return text.indexOf('\0') >= 0 ? Optional.empty() : Optional.of(new Decoded(text, charset.name()));
    }

    private static @Nullable Charset mark(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return StandardCharsets.UTF_8;
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        return startsWith(bytes, 0xFE, 0xFF) ? StandardCharsets.UTF_16BE : null;
    }

    private static Charset unmarked(byte[] bytes) {
        int looked = Math.min(bytes.length, LOOKED_AT);
        int[] zeros = new int[2];
        for (int i = 0; i < looked; i++) {
            zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
        }
        // Western text in UTF-16 has nearly all its zeros on one side.
        if (zeros[1] > looked / 4 && zeros[0] < looked / 20 + 1) {
            return StandardCharsets.UTF_16LE;
        }
        if (zeros[0] > looked / 4 && zeros[1] < looked / 20 + 1) {
            return StandardCharsets.UTF_16BE;
        }
        return isUtf8(bytes) ? StandardCharsets.UTF_8 : WINDOWS_1252;
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        if (bytes.length < head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
