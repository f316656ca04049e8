package org.loomproof.papers.page;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;
import org.loomproof.papers.markup.Element;

/** A QR code (ISO/IEC 18004) drawn as one path, dark on a light ground on any page. */
public final class QrCode {

    /** Modules of quiet ground on each side, as the standard asks. */
    private static final int QUIET_MODULES = 4;

    private QrCode() {}

    /**
     * The code of a text.
     *
     * @param label what a reader says who cannot see it
     * @throws IllegalArgumentException when the text is too long for one code
     */
    public static Element of(String text, String label) {
        BitMatrix modules = modules(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y)) {
                    int from = x;
                    while (x < modules.getWidth() && modules.get(x, y)) {
                        x++;
                    }
                    path.append('M')
                            .append(from)
                            .append(' ')
                            .append(y)
                            .append('h')
                            .append(x - from);
                    path.append("v1h-").append(x - from).append('z');
                }
            }
        }
        String side = String.valueOf(modules.getWidth());
        return Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .styled("qr")
                .with("viewBox", "0 0 " + side + " " + side)
                .with("width", "104")
                .with("height", "104")
                .with("role", "img")
                .with("aria-label", label)
                .with("shape-rendering", "crispEdges")
                .add(
                        Element.of("rect")
                                .with("width", side)
                                .with("height", side)
                                .with("fill", "#ffffff"),
                        Element.of("path").with("d", path.toString()).with("fill", "#000000"));
    }

    private static BitMatrix modules(String text) {
        try {
            return new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET_MODULES,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for one code: " + text.length() + " characters", e);
        }
    }
}
