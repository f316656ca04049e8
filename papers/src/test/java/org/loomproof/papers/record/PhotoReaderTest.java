package org.loomproof.papers.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

/** Pictures for the record: small, upright, and with nothing in them but what is seen. */
public class PhotoReaderTest {

    /** What a telephone writes beside the picture. */
    private static final String PLACE = "N 48 12.3456 E 016 22.1234";

    @TempDir
    private Path folder = Path.of("");

    /** A picture of joint J1, as read. */
    public static Photo photo() {
        try {
            Path folder = Files.createTempDirectory("photo");
            Path file = Files.write(folder.resolve("J1-ground.jpg"), telephone(400, 300, 1));
            Photo photo = good(PhotoReader.read(List.of(file))).getFirst();
            Files.delete(file);
            Files.delete(folder);
            return photo;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Red in the upper left corner, blue elsewhere; a JPEG with an Exif block that names a place and how it was held. */
    private static byte[] telephone(int width, int height, int orientation) throws IOException {
        byte[] plain = encoded(width, height, "jpeg");
        byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + place.length);
        exif.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        exif.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8);
        exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
        exif.putShort((short) orientation).putShort((short) 0).putInt(0).put(place);
        ByteBuffer file = ByteBuffer.allocate(plain.length + 4 + exif.capacity());
        file.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + exif.capacity()));
        file.put(exif.array()).put(plain, 2, plain.length - 2);
        return file.array();
    }

    private static byte[] encoded(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.BLUE);
        g.fillRect(0, 0, width, height);
        g.setColor(Color.RED);
        g.fillRect(0, 0, width / 2, height / 2);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private Path file(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static List<Photo> good(Checked<List<Photo>> read) {
        return switch (read) {
            case Checked.Good<List<Photo>>(var photos) -> photos;
            case Checked.Bad<List<Photo>>(var problems) -> throw new AssertionError(problems.toString());
        };
    }

    private static List<Problem> bad(Checked<List<Photo>> read) {
        return switch (read) {
            case Checked.Good<List<Photo>> good -> List.of();
            case Checked.Bad<List<Photo>>(var problems) -> problems;
        };
    }

    private static byte[] jpeg(Photo photo) {
        return Base64.getDecoder().decode(photo.jpeg());
    }

    @Test
    void neitherPlaceNorAnythingElseThatWasWrittenBesideThePictureIsKept() throws IOException {
        byte[] given = telephone(400, 300, 1);
        assertThat(new String(given, StandardCharsets.ISO_8859_1)).contains("Exif", PLACE);
        byte[] kept =
                jpeg(good(PhotoReader.read(List.of(file("J1.jpg", given)))).getFirst());
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", PLACE);
    }

    @Test
    void aLargePictureIsMadeSmallAndASmallOneLeftAsLargeAsItIs() throws IOException {
        List<Photo> photos = good(PhotoReader.read(
                List.of(file("large.jpg", telephone(4000, 3000, 1)), file("small.jpg", telephone(80, 60, 1)))));
        assertThat(photos.get(0)).extracting(Photo::width, Photo::height).containsExactly(1000, 750);
        assertThat(photos.get(1)).extracting(Photo::width, Photo::height).containsExactly(80, 60);
        assertThat(jpeg(photos.get(0))).hasSizeLessThan(100_000);
    }

    /** Where the upper left corner of what the sensor saw comes to lie, by Exif's own table of orientations (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1, 400, 300, left, top", "2, 400, 300, right, top", "3, 400, 300, right, bottom", "4, 400, 300, left, bottom",
        "5, 300, 400, left, top", "6, 300, 400, right, top", "7, 300, 400, right, bottom", "8, 300, 400, left, bottom"
    })
    void aPictureTakenLyingStandsUpright(int held, int width, int height, String side, String end) throws IOException {
        Photo photo = good(PhotoReader.read(List.of(file("J1.jpg", telephone(400, 300, held)))))
                .getFirst();
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(jpeg(photo)));
        assertThat(List.of(seen.getWidth(), seen.getHeight())).containsExactly(width, height);
        int x = side.equals("left") ? width / 4 : 3 * width / 4;
        int y = end.equals("top") ? height / 4 : 3 * height / 4;
        assertThat(new Color(seen.getRGB(x, y)).getRed()).isGreaterThan(200);
        assertThat(new Color(seen.getRGB(width - 1 - x, height - 1 - y)).getRed())
                .isLessThan(50);
    }

    @Test
    void aFolderGivesItsPicturesByName() throws IOException {
        file("b.png", encoded(40, 30, "png"));
        file("a.JPG", telephone(40, 30, 1));
        file("notes.txt", new byte[0]);
        assertThat(good(PhotoReader.read(List.of(folder))))
                .extracting(Photo::name)
                .containsExactly("a.JPG", "b.png");
    }

    @Test
    void everyFileThatIsNoPictureIsToldAtOnce() throws IOException {
        List<Problem> problems = bad(PhotoReader.read(List.of(
                file("text.jpg", "no picture".getBytes(StandardCharsets.UTF_8)),
                folder.resolve("gone.jpg"),
                file("torn.jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, 0}))));
        assertThat(problems)
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.WRONG_FORMAT, ProblemKind.FILE_NOT_FOUND, ProblemKind.WRONG_FORMAT);
    }

    @Test
    void theSameFileGivesTheSamePicture() throws IOException {
        Path file = file("J1.jpg", telephone(1500, 900, 6));
        assertThat(PhotoReader.read(List.of(file))).isEqualTo(PhotoReader.read(List.of(file)));
    }
}
