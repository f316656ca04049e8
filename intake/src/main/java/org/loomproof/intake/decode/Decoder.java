package org.loomproof.intake.decode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Bytes to lines of text: plain text in any usual encoding, a page's source, a PDF with text, or a picture of paper. */
public final class Decoder {

    /** A source must be smaller than this: ten times what anybody typed about one vehicle. */
    public static final int SIZE_LIMIT_BYTES = 10_000_000;

    private final PictureText pictures;

    /** Pictures are read by the program that is installed, when it is. */
    public Decoder() {
        this(new PictureText("tesseract"));
    }

    Decoder(PictureText pictures) {
        this.pictures = pictures;
    }

    /** The lines of the file, or the problem that keeps them from being read. */
    public Checked<SourceLines> decode(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            return bad(name, ProblemKind.FILE_NOT_FOUND, "problem.wanted.file", "problem.hint.directory");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return decode(name, in.readNBytes(SIZE_LIMIT_BYTES + 1));
        } catch (IOException e) {
            String hint = Files.exists(file) ? "problem.hint.not-readable" : "problem.hint.no-such-file";
            return bad(name, ProblemKind.FILE_NOT_FOUND, "problem.wanted.file", hint);
        }
    }

    /** The lines that the bytes stand for, or the problem that keeps them from being read. */
    public Checked<SourceLines> decode(String name, byte[] bytes) {
        if (bytes.length > SIZE_LIMIT_BYTES) {
            Phrase wanted = Phrase.of("problem.wanted.smaller-file", Integer.toString(SIZE_LIMIT_BYTES / 1_000_000));
            return bad(name, ProblemKind.FILE_TOO_LARGE, wanted, Phrase.of("problem.hint.wrong-file"));
        }
        if (PdfText.isPdf(bytes)) {
            return pdf(name, bytes);
        }
        if (PictureText.isPicture(bytes)) {
            return picture(name, bytes);
        }
        Optional<Encoding.Decoded> decoded = Encoding.decode(bytes);
        if (decoded.isEmpty()) {
            return bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.binary");
        }
        String text = decoded.get().text();
        List<Passage> lines = HtmlLines.isPage(text) ? HtmlLines.of(text) : TextLines.of(text);
        return lines(name, decoded.get().encoding(), lines);
    }

    private Checked<SourceLines> pdf(String name, byte[] bytes) {
        Optional<String> text = PdfText.read(bytes);
        if (text.isEmpty()) {
            return bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.pdf-broken");
        }
        if (text.get().isBlank()) {
            return scanned(name, bytes);
        }
        return lines(name, "PDF", TextLines.of(text.get()));
    }

    /** A PDF of pictures: each page is read as one. */
    private Checked<SourceLines> scanned(String name, byte[] bytes) {
        StringBuilder text = new StringBuilder();
        boolean[] missing = new boolean[1];
        boolean read = PdfText.eachPage(bytes, page -> switch (pictures.read(page)) {
            case PictureText.Outcome.Text(String said) -> {
                text.append(said).append('\n');
                yield true;
            }
            case PictureText.Outcome.NotInstalled ignored -> {
                missing[0] = true;
                yield false;
            }
            case PictureText.Outcome.Failed ignored -> false;
        });
        if (missing[0]) {
            return bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.install-tesseract");
        }
        return read && !text.toString().isBlank()
                ? lines(name, "tesseract", TextLines.of(text.toString()))
                : bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.picture-unreadable");
    }

    private Checked<SourceLines> picture(String name, byte[] bytes) {
        return switch (pictures.read(bytes)) {
            case PictureText.Outcome.Text(String text) -> lines(name, "tesseract", TextLines.of(text));
            case PictureText.Outcome.NotInstalled ignored ->
                bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.install-tesseract");
            case PictureText.Outcome.Failed ignored ->
                bad(name, ProblemKind.NOT_TEXT, "problem.wanted.readable-source", "problem.hint.picture-unreadable");
        };
    }

    private static Checked<SourceLines> lines(String name, String encoding, List<Passage> lines) {
        if (lines.size() > TextLines.MOST_LINES) {
            Phrase wanted = Phrase.of("problem.wanted.fewer-lines", Integer.toString(TextLines.MOST_LINES));
            return bad(name, ProblemKind.FILE_TOO_LARGE, wanted, Phrase.of("problem.hint.wrong-file"));
        }
        return new Checked.Good<>(new SourceLines(name, encoding, lines));
    }

    private static Checked<SourceLines> bad(String name, ProblemKind kind, String wanted, String hint) {
        return bad(name, kind, Phrase.of(wanted), Phrase.of(hint));
    }

    private static Checked<SourceLines> bad(String name, ProblemKind kind, Phrase wanted, Phrase hint) {
        return new Checked.Bad<>(List.of(new Problem(Place.file(name), kind, "", wanted, hint)));
    }
}
