package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.Plan;

/** The plan on as many sheets as it takes, by function; joints are numbered over all of them. */
public final class Schematic {

    private Schematic() {}

    /** The sheets, in the kit's order. */
    public static List<PlacedDrawing> sheets(Brief brief, Plan plan, Wording words) {
        Draughtsman draughtsman = new Draughtsman(brief, plan, new Joints(brief, plan), words);
        List<Plan> parts = Splitting.of(plan).intoSheets(draughtsman::fits);
        SheetIndex index = SheetIndex.of(parts);
        SheetFrame frame = new SheetFrame(brief, words);
        List<PlacedDrawing> sheets = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Plan part = parts.get(i);
            sheets.add(frame.around(
                    draughtsman.place(part, index.seenFrom(i + 1)), i + 1, parts.size(), hasBothSides(part)));
        }
        return sheets;
    }

    /** A part of a plan by itself, without the sheet's frame; its joints have the numbers given. */
    public static PlacedDrawing detail(Brief brief, Plan part, Joints joints, Wording words) {
        return new Draughtsman(brief, part, joints, words).place(part, SheetIndex.ofOwners(List.of(part), List.of(1)));
    }

    private static boolean hasBothSides(Plan part) {
        return !part.hookups().isEmpty() && !PlanDrawing.circuits(part).isEmpty();
    }
}
