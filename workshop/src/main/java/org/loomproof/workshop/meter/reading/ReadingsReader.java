package org.loomproof.workshop.meter.reading;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.meter.reading.Step.Worked;
import org.loomproof.workshop.problem.Checked;

/** Reads a file of readings taken at a car as it came; its lines are those of {@link ReadingLines}. */
public final class ReadingsReader {

    /** The columns, those that must be there first. */
    public static final List<String> COLUMNS = ReadingLines.COLUMNS;

    private final ReadingLines<Step> lines;

    /** @param named what the sheet names and a hand works, by its name; empty without a sheet */
    public ReadingsReader(Map<String, Worked> named) {
        this.lines = new ReadingLines<>(new StepReader(named));
    }

    /** The readings in a file, or every problem in it. */
    public Checked<Readings> read(Path file) {
        return readings(lines.read(file));
    }

    /** The readings in a text, or every problem in it. */
    public Checked<Readings> read(SourceText source) {
        return readings(lines.read(source));
    }

    /** The readings of a text that could be read; what is wrong with the others is noted. */
    public Readings read(SourceText source, Problems problems) {
        return readings(lines.read(source, problems));
    }

    private static Checked<Readings> readings(Checked<List<ReadingLine<Step>>> read) {
        return switch (read) {
            case Checked.Bad<List<ReadingLine<Step>>>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<List<ReadingLine<Step>>>(var all) -> new Checked.Good<>(readings(all));
        };
    }

    private static Readings readings(List<ReadingLine<Step>> all) {
        return new Readings(all.stream().map(ReadingsReader::reading).toList()).withBatteryOfItsLines();
    }

    private static Reading reading(ReadingLine<Step> line) {
        return new Reading(
                line.at(),
                line.wire(),
                line.step(),
                line.measured(),
                line.shown(),
                line.batteryVolts(),
                line.meter(),
                line.place(),
                line.colour(),
                line.note());
    }
}
