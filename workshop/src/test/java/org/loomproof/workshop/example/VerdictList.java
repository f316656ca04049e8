package org.loomproof.workshop.example;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileReader;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.sizing.Protection;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.trade.wire.Surroundings;
import org.loomproof.workshop.words.Messages;

/** What the data files come to, in texts: it is asked of classes that were loaded anew over other files. */
public final class VerdictList {

    private VerdictList() {}

    /** The verdict on every claim of a plan file's text, a line each. */
    public static List<String> verdicts(String planFile) {
        TradeDefaults usual = TradeDefaults.read();
        PlanFileReader reader =
                new PlanFileReader(new BriefReader(usual, new SheetCompletion(usual)), Messages.english());
        PlanFile file = ((Checked.Good<PlanFile>) reader.read(new SourceText("plan.yaml", planFile))).value();
        return Prover.prove(file.given().brief(), file.plan()).results().stream()
                .map(result -> result.id() + ": " + result.verdict().getClass().getSimpleName())
                .toList();
    }

    /** The largest fuse of every metric size in the engine space and in the cabin, a line each. */
    public static List<String> ceilings() {
        List<String> lines = new ArrayList<>();
        for (Conductor size : Conductors.listMetric()) {
            for (double air : new double[] {30, 60, 80}) {
                Surroundings around = new Surroundings(new Celsius(105), new Celsius(air), 1);
                lines.add(size.name() + " in " + air + " °C: " + Protection.ceiling(size.area(), around));
            }
        }
        return lines;
    }
}
