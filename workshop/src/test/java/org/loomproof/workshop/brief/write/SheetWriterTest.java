package org.loomproof.workshop.brief.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;

class SheetWriterTest {

    private static Sheet read(String text) {
        return switch (GivenTexts.reader().readSheet(new SourceText("sheet.yaml", text))) {
            case Checked.Good<Sheet>(Sheet sheet) -> sheet;
            case Checked.Bad<Sheet>(List<Problem> problems) ->
                throw new AssertionError(GivenTexts.lines(problems) + "\n" + text);
        };
    }

    @Test
    void aSheetReadsBackAsTheSameSheet() throws ReflectiveOperationException {
        Sheet sheet = read(GivenTexts.valid().sheet());
        assertThat(withoutPlaces(read(SheetWriter.write(sheet)))).isEqualTo(withoutPlaces(sheet));
    }

    @Test
    void aCompletedSheetReadsBackWithItsAssumedFiguresAsRanges() throws ReflectiveOperationException {
        Sheet completed = new SheetCompletion(GivenTexts.usual())
                .apply(read(GivenTexts.valid().sheet()));
        assertThat(completed.circuits().getLast().paths()).isNotEmpty();
        String text = SheetWriter.write(completed);
        assertThat(text).contains(" assumed");
        assertThat(withoutPlaces(read(text))).isEqualTo(withoutPlaces(completed));
    }

    @Test
    void aShadeOfBaseOrTracerIsKept() throws ReflectiveOperationException {
        Sheet sheet = read(GivenTexts.valid()
                .withSheet("colour: RD", "colour: DK BLU / LT GRN")
                .withSheet("colour: GY/BK", "colour: BLK/LT BLU")
                .sheet());
        assertThat(SheetWriter.write(sheet)).contains("dark BU/light GN").contains("BK/light BU");
        assertThat(withoutPlaces(read(SheetWriter.write(sheet)))).isEqualTo(withoutPlaces(sheet));
    }

    /** Everything a value holds, record by record, but for places. */
    static List<Object> withoutPlaces(Object value) throws ReflectiveOperationException {
        List<Object> parts = new ArrayList<>();
        switch (value) {
            case Place place -> {}
            case Record record -> {
                parts.add(record.getClass().getSimpleName());
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    component.getAccessor().setAccessible(true);
                    parts.add(withoutPlaces(component.getAccessor().invoke(record)));
                }
            }
            case Optional<?> optional when optional.isPresent() -> parts.add(withoutPlaces(optional.get()));
            case Iterable<?> items -> {
                for (Object item : items) {
                    parts.add(withoutPlaces(item));
                }
            }
            default -> parts.add(value);
        }
        return parts;
    }
}
