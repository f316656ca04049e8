package org.loomproof.book.key;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Base64;

/**
 * What opens the book. The same words typed on another keyboard give the same bytes: they are normalised (Unicode NFKC, as
 * NIST SP 800-63B section 5.1.1.2 has it for passwords).
 */
public final class Passphrase {

    /** Shorter ones are refused when a book is made; common practice for a phrase that meets an offline attack. */
    public static final int FEWEST_CHARACTERS = 12;

    private static final long LARGEST_KEY_FILE_BYTES = 1 << 20;

    private final byte[] bytes;

    private Passphrase(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The passphrase a person typed. */
    public static Passphrase of(String typed) {
        return new Passphrase(Normalizer.normalize(typed, Normalizer.Form.NFKC).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The content of a key file, every byte of it; for a server that starts with nobody there.
     *
     * @throws IOException when it cannot be read, or is larger than 1 MiB and thus hardly a key
     */
    public static Passphrase inFile(Path file) throws IOException {
        if (Files.size(file) > LARGEST_KEY_FILE_BYTES) {
            throw new IOException("larger than a key file can be");
        }
        return new Passphrase(Base64.getEncoder().encode(Files.readAllBytes(file)));
    }

    /** True when it is long enough to lock a new book with. */
    public boolean isLongEnough() {
        return new String(bytes, StandardCharsets.UTF_8).codePoints().count() >= FEWEST_CHARACTERS;
    }

    byte[] bytes() {
        return bytes.clone();
    }

    /** Never the words themselves. */
    @Override
    public String toString() {
        return "Passphrase";
    }
}
