package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.correct.Correction;
import org.loomproof.intake.correct.ReviewLine;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.correct.Suggestion;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;

/** What a person puts right, and what the shop remembers of it. */
class CorrectionTest {

    private static final String NOTES = "Wuzzle feed\tchampagne\t-\tcolumn\nHorn\tblack\t-\tcolumn\n";

    private static List<ReviewLine> review(String text, ShopMemory memory) {
        SourceLines lines = Notes.lines("notes.txt", text.getBytes(StandardCharsets.UTF_8));
        return ReviewLine.of(lines, ReadNotes.of(lines), memory);
    }

    @Test
    void theSourceStandsBesideWhatWasUnderstood() {
        List<ReviewLine> lines = review(NOTES, ShopMemory.empty());
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1).source()).extracting(Passage::text).containsExactly("Horn\tblack\t-\tcolumn");
        assertThat(lines.get(1).entry().role().orElseThrow().value().role()).isEqualTo(CircuitRole.HORN);
        assertThat(lines).allSatisfy(line -> assertThat(line.suggestions()).isEmpty());
    }

    @Test
    void ofALineThatTellsOfManyTheEntrysOwnPartIsToldApart() {
        String prose =
                "The lock wire is green/white and the horn is black (-) at the column. Everything else on this car was left as it came from its maker, and so it shall stay.";
        List<ReviewLine> lines = review(prose, ShopMemory.empty());
        assertThat(lines.getFirst().listTold())
                .containsExactly(new ReviewLine.Told(
                        "",
                        "The lock wire is green/white",
                        " and the horn is black (-) at the column. Everything else on \u2026"));
        assertThat(lines.get(1).listTold().getFirst().own()).contains("the horn is black (-)");
        assertThat(lines.get(1).listTold().getFirst().before()).isEqualTo("The lock wire is green/white and ");
        // A row of a table is its entry's from end to end.
        assertThat(review(NOTES, ShopMemory.empty()).get(1).listTold())
                .containsExactly(new ReviewLine.Told("", "Horn\tblack\t-\tcolumn", ""));
    }

    @Test
    void aTapPutsAFieldRightAndNothingElse() {
        ReviewLine line = review(NOTES, ShopMemory.empty()).getFirst();
        Entry before = line.entry();
        assertThat(before.role()).isEmpty();
        Entry right = line.corrected(Correction.of(before, Field.ROLE, "horn")).entry();
        assertThat(right.role().orElseThrow().value().role()).isEqualTo(CircuitRole.HORN);
        assertThat(right.role().orElseThrow().sure()).isEqualTo(1);
        assertThat(right.colourAsWritten()).isEqualTo(before.colourAsWritten());
        assertThat(right.behaviour()).isEqualTo(before.behaviour());
        assertThat(right.spot()).isEqualTo(before.spot());
        Entry coloured =
                line.corrected(Correction.of(before, Field.COLOUR, "WH/GY")).entry();
        assertThat(coloured.colour().orElseThrow().value().letters()).isEqualTo("WH/GY");
        assertThat(coloured.colourAsWritten()).isEmpty();
    }

    @Test
    void aCorrectionThatCannotBeReadChangesNothing() {
        ReviewLine line = review(NOTES, ShopMemory.empty()).getFirst();
        for (Field field : Field.values()) {
            assertThat(line.corrected(Correction.of(line.entry(), field, " "))).isEqualTo(line);
        }
    }

    @Test
    void whatWasPutRightIsSuggestedOnTheShopsLaterSheetsAndNotTaken() {
        Entry first = review(NOTES, ShopMemory.empty()).getFirst().entry();
        ShopMemory memory = ShopMemory.empty()
                .with(Correction.of(first, Field.ROLE, "parking-lamp"))
                .with(Correction.of(first, Field.ROLE, "accessory"))
                .with(Correction.of(first, Field.COLOUR, "light brown"));
        assertThat(memory.lines()).hasSize(3);
        ReviewLine later = later(memory);
        assertThat(later.entry().role()).isEmpty();
        assertThat(later.suggestions())
                .extracting(s ->
                        s.correction().field() + " " + s.correction().means() + " " + s.times() + " of " + s.ofAll())
                .containsExactly("ROLE accessory 1 of 2", "COLOUR light brown 1 of 1");
        assertThat(later.corrected(later.suggestions().getFirst().correction()).suggestions())
                .hasSize(1);
    }

    @Test
    void whatTheShopSaidMoreOftenIsSuggestedAndNeverCalledSure() {
        Entry first = review(NOTES, ShopMemory.empty()).getFirst().entry();
        ShopMemory memory = ShopMemory.empty()
                .with(Correction.of(first, Field.ROLE, "accessory"))
                .with(Correction.of(first, Field.ROLE, "accessory"))
                .with(Correction.of(first, Field.ROLE, "horn"));
        Suggestion suggestion = later(memory).suggestions().getFirst();
        assertThat(suggestion.correction().means()).isEqualTo("accessory");
        // Rule of succession (Laplace): two of three, (2 + 1) / (3 + 2).
        assertThat(suggestion.sure()).isEqualTo(0.6);
        ShopMemory much = memory;
        for (int i = 0; i < 1000; i++) {
            much = much.with(Correction.of(first, Field.ROLE, "accessory"));
        }
        assertThat(later(much).suggestions().getFirst().sure()).isLessThan(1);
        assertThat(later(much).entry().role()).isEmpty();
    }

    private static ReviewLine later(ShopMemory memory) {
        return review("WUZZLE  Feed\tChampagne\t+\tdash\nHorn\tblack\t-\tcolumn\n", kept(memory.write()))
                .getFirst();
    }

    private static ShopMemory kept(String text) {
        return switch (ShopMemory.read(new SourceText("shop.csv", text))) {
            case Checked.Good<ShopMemory>(ShopMemory memory) -> memory;
            case Checked.Bad<ShopMemory>(var problems) -> throw new AssertionError(problems);
        };
    }

    @Test
    void aMemoryReadsBackAsItWasWritten() {
        ShopMemory memory = ShopMemory.empty()
                .with(new Correction(Field.PLACE, "under, \"the\" dash\nleft", "dash"))
                .with(new Correction(Field.ROLE, "türkontakt", "door-trigger"));
        assertThat(kept(memory.write())).isEqualTo(memory);
    }

    @Test
    void aBrokenMemoryTellsAllItsProblemsAtOnce() {
        List<Problem> problems = new ArrayList<>();
        String text =
                "field,written,means,times\nrolle,horn wire,horn,1\nrole,horn wire,horn,half\nrole,a,b,0\nrole,a\n";
        assertThat(ShopMemory.read(new SourceText("shop.csv", text)).orTell(problems))
                .isEmpty();
        assertThat(problems).hasSize(4);
    }
}
