package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.testing.Note;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;

/**
 * Pictures of paper, drawn here a little crooked and with specks, and read by Debian's tesseract. Where that is missing the tests are
 * skipped with a line; with {@code CI} set they fail.
 */
class PaperPicturesTest {

    private static final int WIDTH = 1800;
    private static final int HEIGHT = 500;
    private static final double CROOKED_DEGREES = 0.4;
    private static final double SPECKS = 0.0005;
    private static final String READ_AS = "horn GN/BK NEGATIVE";

    private static boolean isInstalled() {
        try {
            Process process = new ProcessBuilder("tesseract", "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            return process.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void needsTesseract() {
        boolean installed = isInstalled();
        if (!installed) {
            Note.that("pictures of paper are not read here: tesseract is not installed");
            assertThat(System.getenv("CI")).as("CI without tesseract").isNull();
        }
        assumeTrue(installed);
    }

    private static List<String> languages() throws IOException {
        Process asked = new ProcessBuilder("tesseract", "--list-langs")
                .redirectErrorStream(true)
                .start();
        try (var out = asked.inputReader()) {
            return out.lines().map(String::strip).toList();
        }
    }

    /** Rows of a table in the language, the first its header. */
    private static BufferedImage paper(List<List<String>> rows) {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.rotate(Math.toRadians(CROOKED_DEGREES), WIDTH / 2.0, HEIGHT / 2.0);
        graphics.setColor(Color.DARK_GRAY);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 40));
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                graphics.drawString(rows.get(row).get(column), 60 + 560 * column, 110 + 90 * row);
            }
        }
        graphics.dispose();
        Random specks = new Random(7);
        for (int i = 0; i < WIDTH * HEIGHT * SPECKS; i++) {
            picture.setRGB(specks.nextInt(WIDTH), specks.nextInt(HEIGHT), Color.GRAY.getRGB());
        }
        return picture;
    }

    private static byte[] png(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }

    private static byte[] scan(BufferedImage picture, int pages) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            for (int i = 0; i < pages; i++) {
                PDPage page = new PDPage(new PDRectangle(WIDTH * 0.24f, HEIGHT * 0.24f));
                pdf.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
                    content.drawImage(
                            LosslessFactory.createFromImage(pdf, picture), 0, 0, WIDTH * 0.24f, HEIGHT * 0.24f);
                }
            }
            pdf.save(bytes);
        }
        return bytes.toByteArray();
    }

    private static List<String> read(String name, byte[] bytes) {
        return ReadNotes.of(Notes.lines(name, bytes)).entries().stream()
                .map(e -> e.role().map(a -> a.value().role().word()).orElse("-") + " "
                        + e.colour().map(a -> a.value().letters()).orElse("-") + " "
                        + e.behaviour().map(a -> a.value().kind().name()).orElse("-"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "eng,Circuit,Colour,Polarity,Horn,green/black,negative",
        "deu,Stromkreis,Farbe,Polarität,Hupe,grün/schwarz,negativ",
        "spa,Circuito,Color,Polaridad,Bocina,verde/negro,negativo",
        "fra,Circuit,Couleur,Polarité,Klaxon,vert/noir,négatif"
    })
    void aCrookedPictureWithSpecksIsRead(
            String language, String one, String two, String three, String a, String b, String c) throws IOException {
        needsTesseract();
        assumeTrue(languages().contains(language), language + " is not installed");
        BufferedImage paper = paper(List.of(List.of(one, two, three), List.of(a, b, c), List.of(a, b, c)));
        assertThat(read("photo.png", png(paper))).contains(READ_AS);
    }

    @Test
    void aPdfThatHoldsOnlyPicturesIsReadPageByPage() throws IOException {
        needsTesseract();
        BufferedImage paper =
                paper(List.of(List.of("Circuit", "Colour", "Polarity"), List.of("Horn", "green/black", "negative")));
        assertThat(read("scan.pdf", scan(paper, 2))).containsExactly(READ_AS, READ_AS);
    }

    @Test
    void aBlankPageIsNoTextAndSaidSo() throws IOException {
        needsTesseract();
        assertThat(hints(new Decoder().decode("blank.pdf", scan(paper(List.of()), 1))))
                .containsExactly("problem.hint.picture-unreadable");
    }

    @Test
    void aPageForgedToBeHugeIsNotDrawn() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage(new PDRectangle(14_000, 14_000)));
            pdf.save(bytes);
        }
        assertThat(hints(new Decoder().decode("huge.pdf", bytes.toByteArray())))
                .containsExactly("problem.hint.picture-unreadable");
    }

    private static List<String> hints(Checked<SourceLines> decoded) {
        return switch (decoded) {
            case Checked.Good<SourceLines> ignored -> List.of();
            case Checked.Bad<SourceLines>(List<Problem> problems) ->
                problems.stream().map(p -> p.hint().key()).toList();
        };
    }
}
