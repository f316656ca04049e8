package org.loomproof.papers.schematic;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.Drawing;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.drawing.LayeredLayout;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Plan;

/** Draws any part of a plan, and says whether a sheet has room for it. */
final class Draughtsman {

    /** How often a net may be crossed where the plan can be taken apart further. */
    private static final int MOST_CROSSINGS_OF_A_NET = 1;

    /** The most crossings at one net first, then all of them. */
    private static final Comparator<PlacedDrawing> CLEAREST =
            Comparator.comparingInt(Draughtsman::mostAtOneNet).thenComparingInt(Inspection::countCrossings);

    private final Brief brief;
    private final Joints joints;
    private final Sides sides;
    private final Wording words;

    Draughtsman(Brief brief, Plan whole, Joints joints, Wording words) {
        this.brief = brief;
        this.joints = joints;
        this.sides = new Sides(whole);
        this.words = words;
    }

    /** The vehicle's column alone often shows that there is no room, long before everything has a place. */
    boolean fits(Plan part) {
        Drawing drawing = draw(part, SheetIndex.NONE).drawing(Set.of());
        double column = drawing.blocks().stream()
                .filter(b -> b.zone() == Block.Zone.LEFT)
                .mapToDouble(Block::height)
                .sum();
        if (!SheetFrame.fits(0, column)) {
            return false;
        }
        if (!SheetFrame.fits(LayeredLayout.placeQuickly(drawing))) {
            return false;
        }
        PlacedDrawing placed = place(part, SheetIndex.NONE);
        return SheetFrame.fits(placed) && mostAtOneNet(placed) <= MOST_CROSSINGS_OF_A_NET;
    }

    /** The part in its place, each relay the way up that has fewer crossings. */
    PlacedDrawing place(Plan part, SheetIndex index) {
        PlanDrawing drawing = draw(part, index);
        Set<AddedPartId> turned = new HashSet<>();
        PlacedDrawing best = LayeredLayout.place(drawing.drawing(turned));
        List<AddedPartId> relays = part.parts().stream()
                .filter(AddedPart.Relay.class::isInstance)
                .map(AddedPart::id)
                .toList();
        for (AddedPartId relay : relays) {
            if (Inspection.countCrossings(best) > 0) {
                turned.add(relay);
                PlacedDrawing other = LayeredLayout.place(drawing.drawing(turned));
                if (CLEAREST.compare(other, best) < 0) {
                    best = other;
                } else {
                    turned.remove(relay);
                }
            }
        }
        return best;
    }

    private PlanDrawing draw(Plan part, SheetIndex index) {
        return new PlanDrawing(brief, part, sides, joints, index, words);
    }

    private static int mostAtOneNet(PlacedDrawing drawing) {
        return Inspection.crossingsByNet(drawing).stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
    }
}
