package org.loomproof.benchmarks;

import java.io.File;
import java.nio.file.Path;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** The bakery's van, the largest example. */
final class BakeryVan {

    private BakeryVan() {}

    /** What is given of it, completed. */
    static Brief brief() {
        Path folder =
                new File(System.getProperty("loomproof.home", ".")).toPath().resolve("examples/bakery-van");
        TradeDefaults usual = TradeDefaults.read();
        Checked<ReadBrief> read = new BriefReader(usual, new SheetCompletion(usual))
                .read(folder.resolve("sheet.yaml"), folder.resolve("kit.yaml"), folder.resolve("order.yaml"));
        return ((Checked.Good<ReadBrief>) read).value().brief();
    }
}
