package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** A sheet as it comes from a first try: every mistake told, none in the way of the others. */
class MessySheetTest {

    private static List<Problem> problems(String text) {
        TradeDefaults usual = TradeDefaults.read();
        BriefReader reader = new BriefReader(usual, new SheetCompletion(usual));
        return switch (reader.readSheet(new SourceText("van.yaml", text))) {
            case Checked.Good<Sheet> good -> List.of();
            case Checked.Bad<Sheet> bad -> bad.problems();
        };
    }

    private static String circuit(String fuse) {
        return """
                format: loomproof sheet 1
                vehicle: {name: old pickup, system-voltage: 12 V, ground: negative, gearbox: manual, drive: combustion,
                  start: key, key: plain, steering: left, battery: {capacity: 60 Ah, age-years: 4}}
                circuits:
                  - id: constant
                    role: constant-supply
                    rest: supply
                    active: supply
                    access: may-be-tapped
                    certainty: verified
                    origin: meter
                    path: [supply, {fuse: {id: F1, rating: %s}}, here]
                """.formatted(fuse);
    }

    @Test
    void aFuseRatingWithoutItsUnitIsOneProblemAndNotACrash() {
        assertThat(problems(circuit("20 A"))).isEmpty();
        assertThat(problems(circuit("20"))).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ProblemKind.WRONG_UNIT);
            assertThat(problem.at().path()).contains("fuse.rating");
        });
    }

    @Test
    void aFuseOfNothingIsOutOfRange() {
        assertThat(problems(circuit("0 A")))
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.OUT_OF_RANGE));
    }
}
