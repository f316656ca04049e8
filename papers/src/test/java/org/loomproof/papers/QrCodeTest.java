package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.papers.bay.BaySheet;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.goods.bay.Visit;

/** The QR codes of a bay sheet, read back off the paper as a device would. */
class QrCodeTest {

    private static final String SHOP = "https://bench.example:8443";
    private static final Brief BRIEF = SampleJob.brief();
    private static final float DOTS_AN_INCH = 150;

    private static Page baySheet(Optional<ShopAddress> address) {
        return BaySheet.page(BRIEF, SampleJob.plan(), address, SampleJob.words());
    }

    private static Set<String> expected() {
        Set<String> steps = new TreeSet<>();
        BayOrder.of(BRIEF, SampleJob.plan())
                .stations()
                .forEach(station -> station.visits().forEach(visit -> {
                    switch (visit) {
                        case Visit.Tapped(var id, var wires) -> steps.add("/bay/" + id);
                        case Visit.Cut(var id, var wires) -> steps.add("/bay/" + id);
                        case Visit.Ground ground -> {}
                        case Visit.Mounted mounted -> {}
                        case Visit.SupplyFuse fuse -> {}
                    }
                }));
        return steps;
    }

    /** Printed, looked at in 150 dots an inch, decoded by the library's reader. */
    @ParameterizedTest
    @EnumSource(Sheet.class)
    void eachCircuitsCodeOpensItsStep(Sheet sheet) throws IOException {
        List<String> read = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(Pdf.of(baySheet(ShopAddress.in(SHOP)), sheet))) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                read.addAll(codes(renderer.renderImageWithDPI(page, DOTS_AN_INCH)));
            }
        }
        assertThat(read).allMatch(text -> text.matches("https://bench\\.example:8443/jobs/[0-9a-f]{12}/bay/[^/]+"));
        assertThat(read)
                .extracting(text -> text.substring(text.indexOf("/bay/")))
                .containsAll(expected());
        assertThat(read).noneMatch(text -> text.contains("van") || text.contains("ash"));
    }

    private static List<String> codes(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        try {
            return Arrays.stream(new QRCodeMultiReader()
                            .decodeMultiple(
                                    new BinaryBitmap(new HybridBinarizer(source)),
                                    Map.of(DecodeHintType.TRY_HARDER, true)))
                    .map(Result::getText)
                    .toList();
        } catch (ReaderException e) {
            return List.of();
        }
    }

    @Test
    void withoutAnAddressTheStepIsNamedAndNothingLeadsAnywhere() {
        String page = baySheet(Optional.empty()).html();
        assertThat(page).doesNotContain("class=\"qr\"", "href").contains("bay/starter");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bench.example",
                "ftp://bench.example",
                "https://",
                "https://u:p@bench.example",
                "https://a b",
                "https://bench.example/?x=1",
                "https://bench.example/#x",
                "javascript:alert(1)"
            })
    void whatIsNoPlainAddressIsNone(String typed) {
        assertThat(ShopAddress.in(typed)).isEmpty();
    }

    @Test
    void slashesAtItsEndAreLeftOff() {
        assertThat(ShopAddress.in("http://192.0.2.7:8080/bench/"))
                .contains(new ShopAddress("http://192.0.2.7:8080/bench"));
    }
}
