package org.loomproof.papers.schematic;

import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Sketch;

/**
 * What is written on a conductor, and how it is drawn.
 *
 * @param text such as {@code W10 PK/BK 0.5 mm², 1.5 m}
 * @param pen its colours
 */
record Tag(String text, Pen pen) {

    double width() {
        return FontWidths.width(text, Sketch.TYPE, false);
    }
}
