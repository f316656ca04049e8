package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.check.ReadNotes;

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
}
