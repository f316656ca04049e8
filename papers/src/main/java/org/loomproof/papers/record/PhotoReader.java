package org.loomproof.papers.record;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads pictures for the record. Each is set upright, made small and written anew, so that nothing of the file but what is seen
 * is kept: no place, no time, no device.
 */
public final class PhotoReader {

    /** Pixels of the longer side: a joint is still plain to see at a third of a page. */
    private static final int LONGEST = 1000;

    private static final float QUALITY = 0.8f;
    private static final long MOST_BYTES = 40L << 20;
    private static final long MOST_PIXELS = 60_000_000;

    private final List<Problem> problems = new ArrayList<>();

    private PhotoReader() {}

    /**
     * The pictures of files and of folders of files, those of a folder by name; what is no JPEG or PNG by its name is left out of
     * a folder. Every problem of every file is told at once.
     */
    public static Checked<List<Photo>> read(List<Path> given) {
        return new PhotoReader().readAll(given);
    }

    private Checked<List<Photo>> readAll(List<Path> given) {
        List<Photo> photos = new ArrayList<>();
        for (Path path : given) {
            try {
                for (Path file : files(path)) {
                    read(file).ifPresent(photos::add);
                }
            } catch (IOException e) {
                tell(path, ProblemKind.FILE_NOT_FOUND);
            }
        }
        return problems.isEmpty() ? new Checked.Good<>(List.copyOf(photos)) : new Checked.Bad<>(List.copyOf(problems));
    }

    private static List<Path> files(Path path) throws IOException {
        if (!Files.isDirectory(path)) {
            return List.of(path);
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> name(file).toLowerCase(Locale.ROOT).matches(".*\\.(jpe?g|png)")
                            && Files.isRegularFile(file))
                    .sorted()
                    .toList();
        }
    }

    private static String name(Path file) {
        return Objects.requireNonNull(file.getFileName()).toString();
    }

    private Optional<Photo> read(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            tell(file, ProblemKind.FILE_TOO_LARGE);
            return Optional.empty();
        }
        try {
            return Optional.of(photo(name(file), Files.readAllBytes(file)));
        } catch (NoPicture e) {
            tell(file, e.kind);
            return Optional.empty();
        }
    }

    /** The picture of a file that somebody sent; nothing when it is none that can be read, or too large. */
    public static Optional<Photo> read(String name, byte[] bytes) {
        try {
            return bytes.length > MOST_BYTES ? Optional.empty() : Optional.of(photo(name, bytes));
        } catch (NoPicture | IOException e) {
            return Optional.empty();
        }
    }

    /** A picture that was read before, from its own bytes; nothing when they are damaged. */
    public static Optional<Photo> kept(String name, byte[] jpeg) {
        try {
            return Optional.of(looked(
                    jpeg,
                    reader -> new Photo(
                            name,
                            reader.getWidth(0),
                            reader.getHeight(0),
                            Base64.getEncoder().encodeToString(jpeg))));
        } catch (NoPicture e) {
            return Optional.empty();
        }
    }

    private static Photo photo(String name, byte[] bytes) throws NoPicture, IOException {
        BufferedImage small = small(Orientation.upright(looked(bytes, PhotoReader::thinned), Orientation.of(bytes)));
        return new Photo(
                name, small.getWidth(), small.getHeight(), Base64.getEncoder().encodeToString(jpeg(small)));
    }

    private void tell(Path file, ProblemKind kind) {
        problems.add(new Problem(
                Place.file(file.toString()),
                kind,
                file.toString(),
                Phrase.of("problem.wanted.photo"),
                Phrase.of("problem.hint.none")));
    }

    /** Why bytes give no picture. */
    private static final class NoPicture extends Exception {
        private static final long serialVersionUID = 1L;
        private final ProblemKind kind;

        NoPicture(ProblemKind kind) {
            super(kind.name());
            this.kind = kind;
        }
    }

    /** What is asked of a file by whoever can read its kind. */
    private interface Question<T> {
        T of(ImageReader reader) throws IOException;
    }

    private static <T> T looked(byte[] bytes, Question<T> question) throws NoPicture {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (readers.hasNext()) {
                ImageReader reader = readers.next();
                try {
                    reader.setInput(in, true, true);
                    if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
                        throw new NoPicture(ProblemKind.FILE_TOO_LARGE);
                    }
                    return question.of(reader);
                } finally {
                    reader.dispose();
                }
            }
        } catch (IOException | RuntimeException e) {
            // Readers of pictures throw whatever a damaged file makes them stumble over; the reader is told below.
        }
        throw new NoPicture(ProblemKind.WRONG_FORMAT);
    }

    /** The picture, already thinned out where it is more than twice as large as needed. */
    private static BufferedImage thinned(ImageReader reader) throws IOException {
        ImageReadParam param = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / LONGEST);
        param.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, param);
    }

    private static BufferedImage small(BufferedImage image) {
        double scale = Math.min(1, (double) LONGEST / Math.max(image.getWidth(), image.getHeight()));
        int width = (int) Math.max(1, Math.round(image.getWidth() * scale));
        int height = (int) Math.max(1, Math.round(image.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, width, height, Color.WHITE, null);
        g.dispose();
        return small;
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream sink = ImageIO.createImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(sink);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
