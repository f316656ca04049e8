package org.loomproof.intake.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.colour.ColourReader;
import org.loomproof.workshop.trade.colour.WireColour;

/** Entries from a clean table of ours: every cell is a word or figure of ours, so nothing has to be guessed. */
public final class TableEntries {

    private static final Map<String, Level> LEVELS = Map.of(
            "supply", new Level.Supply(),
            "ground", new Level.Ground(),
            "open", new Level.Open(),
            "reversing", new Level.Reversing(),
            "data", new Level.Data());

    private final Map<String, String> cells = new HashMap<>();
    private final Origin origin;

    private TableEntries(CleanTable.Row row, Origin origin) {
        for (int i = 0; i < row.cells().size(); i++) {
            cells.put(CleanTable.listColumns().get(i), row.cells().get(i));
        }
        this.origin = origin;
    }

    /** The notes in a clean table of ours; empty when the source is any other text. */
    public static Optional<ReadNotes> of(SourceLines source) {
        String text = source.lines().stream().map(Passage::text).collect(Collectors.joining("\n"));
        return CleanTable.read(text).map(rows -> {
            List<Entry> entries = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                entries.add(new TableEntries(rows.get(i), new Origin(i + 2, 1, i + 2, 1)).entry());
            }
            return ReadNotes.checked(entries, List.of());
        });
    }

    private Entry entry() {
        Optional<WireColour> colour = ColourReader.read(cell("colour"));
        Spot spot = new Spot(cell("location"), cell("connector"), cell("pin"));
        Optional<Double> size = figure("size", Unit.SQUARE_MILLIMETRES);
        List<String> marks = List.of(cell("marks").split(" ", -1));
        return new Entry(
                cell("circuit"),
                Arrays.stream(CircuitRole.values())
                        .filter(r -> r.word().equals(cell("role")))
                        .findFirst()
                        .map(r -> answer(new RoleReading(r, List.of(r.word())), "role")),
                colour.map(c -> answer(c, "colour")),
                colour.isPresent() ? "" : cell("colour"),
                size.map(s -> answer(new SquareMillimetres(s), "size")),
                kind().map(k -> answer(new Behaviour(k, level("rest"), level("active")), "polarity")),
                spot.isSaid() ? Optional.of(answer(spot, "location")) : Optional.empty(),
                cell("steering"),
                cell("validity"),
                marks.contains(CleanTable.DOUBTED),
                marks.contains(CleanTable.ABSENT),
                cell("note").isEmpty() ? List.of() : List.of(Passage.line(cell("note"), origin.line(), 1)),
                List.of(),
                origin);
    }

    private String cell(String column) {
        return cells.getOrDefault(column, "");
    }

    private Optional<Behaviour.Kind> kind() {
        String word = cell("polarity").toUpperCase(Locale.ROOT).replace('-', '_');
        return Arrays.stream(Behaviour.Kind.values())
                .filter(k -> k.name().equals(word))
                .findFirst();
    }

    private Optional<Level> level(String column) {
        Optional<Level> word = Optional.ofNullable(LEVELS.get(cell(column)));
        return word.or(() -> figure(column, Unit.OHMS).map(Ohms::new).map(Level.Resistance::new))
                .or(() -> figure(column, Unit.VOLTS).map(Volts::new).map(Level.Voltage::new));
    }

    private Optional<Double> figure(String column, Unit<?> unit) {
        return QuantityText.read(cell(column), unit) instanceof QuantityText.Outcome.Read(Range<?> range)
                ? Optional.of(range.typical().value())
                : Optional.empty();
    }

    /** As sure as the table says; what it does not say is as sure as a cell of its own column. */
    private <T> Answer<T> answer(T value, String column) {
        String percent = cell("certainty").replace("%", "").strip();
        double sure = percent.matches("\\d{1,3}") ? Math.min(100, Integer.parseInt(percent)) / 100.0 : USUAL;
        return new Answer<>(value, Evidence.IN_ITS_COLUMN, sure, origin, cell(column));
    }

    private static final double USUAL = 0.9;
}
