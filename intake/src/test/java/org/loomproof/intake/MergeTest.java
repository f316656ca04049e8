package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.intake.sheet.Merge;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.write.SheetWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** A second source merged into a sheet. */
class MergeTest {

    private static final String SHEET = """
            format: loomproof sheet 1
            vehicle: {name: cart, system-voltage: 12 V, ground: negative, drive: combustion, start: key, key: plain, steering: left}
            openings: [{id: bonnet, kind: hood}]
            circuits:
              - {id: horn, role: horn, colour: BK, rest: supply, active: ground, access: may-be-tapped, certainty: guessed, origin: first}
              - {id: kl15, role: ignition, colour: PK, rest: ground, active: supply, follows: [key], access: may-be-tapped, certainty: verified, origin: meter}
            """;

    private static Sheet read(String text) {
        TradeDefaults usual = TradeDefaults.read();
        Checked<Sheet> read =
                new BriefReader(usual, new SheetCompletion(usual)).readSheet(new SourceText("sheet.yaml", text));
        return switch (read) {
            case Checked.Good<Sheet>(Sheet sheet) -> sheet;
            case Checked.Bad<Sheet>(var problems) -> throw new AssertionError(problems);
        };
    }

    private static Merge merged(String notes) {
        Sheet sheet = read(SHEET);
        Set<String> taken = sheet.circuits().stream().map(c -> c.id().value()).collect(Collectors.toSet());
        return Merge.of(sheet, DraftSheet.of(Notes.read(notes), "second.txt", Map.of("steering", "left"), taken));
    }

    private static Certainty certainty(Merge merge, String id) {
        return merge.sheet().circuit(new CircuitId(id)).basis().certainty();
    }

    @Test
    void whatAStatedSecondSourceBearsOutIsNoGuessAnyMoreAndNamesBoth() {
        Merge merge = merged("Horn\tblack\t12V at rest, ground when pressed\tcolumn\nBrake\twhite\t+\tpedal\n");
        assertThat(merge.agreements()).containsExactly(new CircuitId("horn"));
        assertThat(certainty(merge, "horn")).isEqualTo(Certainty.STATED);
        assertThat(merge.sheet().circuit(new CircuitId("horn")).origin()).startsWith("first; second.txt 1:1");
    }

    @Test
    void twoGuessesMakeNoStatement() {
        Merge merge = merged("Horn\tblack\t-\tcolumn\nBrake\twhite\t+\tpedal\n");
        assertThat(merge.agreements()).containsExactly(new CircuitId("horn"));
        assertThat(certainty(merge, "horn")).isEqualTo(Certainty.GUESSED);
    }

    @Test
    void whatContradictsIsPutBesideAsAGuessAndTheMetersWordStands() {
        Merge merge = merged("Ignition\tyellow\t+\tcolumn\nBrake\twhite\t+\tpedal\n");
        assertThat(merge.conflicts())
                .containsExactly(new Merge.Conflict(new CircuitId("kl15"), new CircuitId("ignition")));
        assertThat(certainty(merge, "kl15")).isEqualTo(Certainty.VERIFIED);
        assertThat(certainty(merge, "ignition")).isEqualTo(Certainty.GUESSED);
    }

    @Test
    void whatIsNewIsAddedAndTheHoodKeepsTheSheetsName() {
        Merge merge = merged("Hood pin\tgrey\t-\tfender\nBrake\twhite\t+\tpedal\n");
        assertThat(merge.added()).hasSize(2);
        Circuit hood = merge.sheet().circuits().get(2);
        assertThat(hood.follows()).extracting(id -> id.value()).containsExactly("bonnet");
        assertThat(merge.sheet().operables()).extracting(Operable::kind).doesNotHaveDuplicates();
        assertThat(read(SheetWriter.write(merge.sheet())).circuits()).hasSize(4);
    }
}
