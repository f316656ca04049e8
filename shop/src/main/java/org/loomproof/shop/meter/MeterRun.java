package org.loomproof.shop.meter;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.finding.Identifier;
import org.loomproof.workshop.meter.finding.NamedThings;
import org.loomproof.workshop.meter.finding.WireFinding;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.ReadingsReader;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.meter.shock.BlowsReader;
import org.loomproof.workshop.meter.shock.Series;
import org.loomproof.workshop.meter.shock.ShockFinding;
import org.loomproof.workshop.meter.shock.Wanted;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** Runs what is asked of the meter from its files. */
public final class MeterRun {

    private final SheetCompletion completion = new SheetCompletion(TradeDefaults.read());
    private final BriefReader briefs = new BriefReader(TradeDefaults.read(), completion);

    /** What every wire of a file of readings is, with or without a sheet; or every problem of both files. */
    public Checked<List<WireFinding>> identify(Path readings, Optional<Path> sheet, Costs costs) {
        List<Problem> problems = new ArrayList<>();
        Optional<Sheet> known = sheet.flatMap(path -> sheet(path).orTell(problems));
        Map<String, Worked> names = known.map(NamedThings::of).orElse(Map.of());
        Optional<Readings> read = new ReadingsReader(names).read(readings).orTell(problems);
        if (!problems.isEmpty()) {
            return new Checked.Bad<>(problems);
        }
        return new Checked.Good<>(new Identifier(known, costs).identify(read.orElseThrow()));
    }

    /** How the setting of a shock sensor stands by a file of blows, or every problem of the file. */
    public Checked<ShockFinding> shock(Path blows, Wanted wanted) {
        return switch (BlowsReader.read(blows)) {
            case Checked.Bad<Series> bad -> new Checked.Bad<>(bad.problems());
            case Checked.Good<Series>(Series series) -> new Checked.Good<>(ShockFinding.of(series, wanted));
        };
    }

    /** The sheet in a file, completed. */
    private Checked<Sheet> sheet(Path path) {
        return switch (TextFile.read(path)) {
            case Checked.Bad<SourceText> bad -> new Checked.Bad<>(bad.problems());
            case Checked.Good<SourceText> good ->
                switch (briefs.readSheet(good.value())) {
                    case Checked.Bad<Sheet> bad -> bad;
                    case Checked.Good<Sheet> read -> new Checked.Good<>(completion.apply(read.value()));
                };
        };
    }
}
