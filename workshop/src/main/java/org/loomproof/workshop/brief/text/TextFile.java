package org.loomproof.workshop.brief.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Reads a file as UTF-8 text. A byte order mark of UTF-8 at its head is passed over. */
public final class TextFile {

    /** A file must be smaller than this. A sheet of a whole car is under 100 kB. */
    public static final int SIZE_LIMIT_BYTES = 10_000_000;

    private TextFile() {}

    /** The file's text, or the one problem that keeps it from being read. */
    public static Checked<SourceText> read(Path path) {
        String name = path.toString();
        Problems problems = new Problems(name);
        Place place = Place.file(name);
        if (Files.isDirectory(path)) {
            problems.add(
                    place,
                    ProblemKind.FILE_NOT_FOUND,
                    name,
                    Phrase.of("problem.wanted.file"),
                    Phrase.of("problem.hint.directory"));
            return problems.orElse(new SourceText(name, ""));
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            // Never more than the limit is taken in, whatever the file system says of its size.
            bytes = in.readNBytes(SIZE_LIMIT_BYTES);
        } catch (IOException e) {
            String hint = Files.exists(path) ? "problem.hint.not-readable" : "problem.hint.no-such-file";
            problems.add(place, ProblemKind.FILE_NOT_FOUND, name, Phrase.of("problem.wanted.file"), Phrase.of(hint));
            return problems.orElse(new SourceText(name, ""));
        }
        if (bytes.length == SIZE_LIMIT_BYTES) {
            problems.add(
                    place,
                    ProblemKind.FILE_TOO_LARGE,
                    "",
                    Phrase.of("problem.wanted.smaller-file", Integer.toString(SIZE_LIMIT_BYTES / 1_000_000)),
                    Phrase.of("problem.hint.wrong-file"));
        }
        return problems.orElse(new SourceText(name, decoded(bytes, problems)));
    }

    private static String decoded(byte[] bytes, Problems problems) {
        if (!problems.isEmpty()) {
            return "";
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') < 0) {
                return text.startsWith("\uFEFF") ? text.substring(1) : text;
            }
            notText(bytes, "problem.hint.binary", problems);
        } catch (CharacterCodingException e) {
            notText(bytes, startsAsUtf16(bytes) ? "problem.hint.utf-16" : "problem.hint.not-utf-8", problems);
        }
        return "";
    }

    private static void notText(byte[] bytes, String hint, Problems problems) {
        int line = 1;
        int end = wellFormedLength(bytes);
        for (int i = 0; i < end; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        Place place = new Place(problems.file(), line, 1, "");
        problems.add(place, ProblemKind.NOT_UTF8, "", Phrase.of("problem.wanted.utf-8"), Phrase.of(hint));
    }

    /** How many bytes at the head are text: UTF-8 without a zero byte. */
    private static int wellFormedLength(byte[] bytes) {
        var decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        decoder.decode(in, java.nio.CharBuffer.allocate(bytes.length), true);
        int end = in.position();
        for (int i = 0; i < end; i++) {
            if (bytes[i] == 0) {
                return i;
            }
        }
        return end;
    }

    private static boolean startsAsUtf16(byte[] bytes) {
        return bytes.length >= 2
                && ((bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)
                        || (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF));
    }
}
