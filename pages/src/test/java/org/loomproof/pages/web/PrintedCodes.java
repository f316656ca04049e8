package org.loomproof.pages.web;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The QR codes of a print, looked at in 150 dots an inch and read as a phone reads them. */
final class PrintedCodes {

    private static final float DOTS_AN_INCH = 150;

    private PrintedCodes() {}

    static SortedSet<String> in(byte[] pdf) throws IOException {
        SortedSet<String> found = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                found.addAll(on(renderer.renderImageWithDPI(page, DOTS_AN_INCH)));
            }
        }
        return found;
    }

    private static List<String> on(BufferedImage image) {
        int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        BinaryBitmap seen = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), dots)));
        try {
            return Arrays.stream(new QRCodeMultiReader().decodeMultiple(seen, Map.of(DecodeHintType.TRY_HARDER, true)))
                    .map(Result::getText)
                    .toList();
        } catch (ReaderException e) {
            return List.of(); // a page without a code
        }
    }
}
