package org.loomproof.papers;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** The photographs of a print, as they are drawn. */
final class DrawnPictures extends PDFStreamEngine {

    private final List<Drawn> found = new ArrayList<>();

    /**
     * One of them.
     *
     * @param pixelsWide of the picture itself
     * @param pixelsHigh of the picture itself
     * @param wide on paper, in points
     * @param high on paper, in points
     */
    record Drawn(int pixelsWide, int pixelsHigh, double wide, double high) {}

    private DrawnPictures() {
        addOperator(new Concatenate(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
    }

    static List<Drawn> in(byte[] pdf) throws IOException {
        DrawnPictures pictures = new DrawnPictures();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                pictures.processPage(page);
            }
        }
        return pictures.found;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (operator.getName().equals("Do")
                && operands.getFirst() instanceof COSName name
                && getResources().getXObject(name) instanceof PDImageXObject image) {
            Matrix at = getGraphicsState().getCurrentTransformationMatrix();
            found.add(new Drawn(image.getWidth(), image.getHeight(), at.getScalingFactorX(), at.getScalingFactorY()));
        }
        super.processOperator(operator, operands);
    }
}
