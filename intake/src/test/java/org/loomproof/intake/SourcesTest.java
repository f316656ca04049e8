package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.testing.Note;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;

/** The same two circuits as a page, a PDF and a picture. */
class SourcesTest {

    private static final List<List<String>> ROWS = List.of(
            List.of("Circuit", "Colour", "Polarity", "Location"),
            List.of("Horn", "green/black", "negative", "steering column"),
            List.of("Ignition", "pink", "positive", "fuse box"));

    private static List<String> read(ReadNotes notes) {
        return notes.entries().stream()
                .map(e -> e.role().map(a -> a.value().role().word()).orElse("-") + " "
                        + e.colour().map(a -> a.value().letters()).orElse("-") + " "
                        + e.behaviour().map(a -> a.value().kind().name()).orElse("-") + " "
                        + e.spot().map(a -> a.value().panel()).orElse("-"))
                .toList();
    }

    private static final List<String> WANTED =
            List.of("horn GN/BK NEGATIVE steering column", "ignition PK POSITIVE fuse box");

    @Test
    void aPageIsReadAndItsEntriesKnowTheirLineInThePagesSource() {
        StringBuilder page = new StringBuilder("<html><body>\n<h1>Notes</h1>\n<table>\n");
        ROWS.forEach(row ->
                page.append("<tr><td>").append(String.join("</td><td>", row)).append("</td></tr>\n"));
        page.append("</table></body></html>");
        ReadNotes notes = ReadNotes.of(Notes.lines("page.html", page.toString().getBytes(StandardCharsets.UTF_8)));
        assertThat(read(notes)).isEqualTo(WANTED);
        assertThat(notes.entries().getFirst().origin().line()).isEqualTo(5);
    }

    @Test
    void aPdfWithTextKeepsItsColumns() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            PDPage page = new PDPage();
            pdf.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
                content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 10);
                for (int row = 0; row < ROWS.size(); row++) {
                    for (int column = 0; column < ROWS.get(row).size(); column++) {
                        content.beginText();
                        content.newLineAtOffset(50 + 130 * column, 700 - 20 * row);
                        content.showText(ROWS.get(row).get(column));
                        content.endText();
                    }
                }
            }
            pdf.save(bytes);
        }
        assertThat(read(ReadNotes.of(Notes.lines("notes.pdf", bytes.toByteArray()))))
                .isEqualTo(WANTED);
    }

    @Test
    void aPdfThatHoldsNoTextIsToldAsAPictureOfPaper() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument()) {
            pdf.addPage(new PDPage());
            pdf.save(bytes);
        }
        assertThat(hints(bytes.toByteArray())).containsExactly("problem.hint.pdf-scanned");
    }

    @Test
    void aPictureIsReadWhereTheProgramIsAndElseItIsToldHowToInstallIt() throws IOException {
        BufferedImage picture = new BufferedImage(1600, 300, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        graphics.setColor(Color.BLACK);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 40));
        for (int row = 0; row < ROWS.size(); row++) {
            for (int column = 0; column < ROWS.get(row).size(); column++) {
                graphics.drawString(ROWS.get(row).get(column), 40 + 390 * column, 80 + 80 * row);
            }
        }
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        switch (new Decoder().decode("photo.png", bytes.toByteArray())) {
            case Checked.Good<SourceLines>(SourceLines lines) ->
                assertThat(read(ReadNotes.of(lines))).contains(WANTED.getFirst());
            case Checked.Bad<SourceLines>(List<Problem> problems) -> {
                Note.that("pictures are not read here: tesseract is not installed");
                assertThat(problems).extracting(p -> p.hint().key()).containsExactly("problem.hint.install-tesseract");
            }
        }
    }

    private static List<String> hints(byte[] bytes) {
        return switch (new Decoder().decode("given", bytes)) {
            case Checked.Good<SourceLines> good -> List.of();
            case Checked.Bad<SourceLines>(List<Problem> problems) ->
                problems.stream().map(p -> p.hint().key()).toList();
        };
    }
}
