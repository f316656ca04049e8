package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Finding;
import org.loomproof.intake.check.MeterQuestion;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.words.Messages;

/** What a person has to settle about entries. */
class FindingsTest {

    private static List<Finding.Kind> kinds(ReadNotes notes) {
        return notes.findings().stream().map(Finding::kind).toList();
    }

    @Test
    void aFeedOfTheKeyThatIsSaidToBeNegativeContradictsItselfAndIsNotSure() {
        ReadNotes notes = Notes.read("Ignition\tpink\t-\tcolumn\nHorn\tblack\t-\tcolumn\n");
        assertThat(kinds(notes)).containsExactly(Finding.Kind.CONTRADICTION);
        assertThat(notes.entries().getFirst().role().orElseThrow().sure()).isLessThan(0.7);
        assertThat(notes.entries().getLast().role().orElseThrow().sure()).isGreaterThan(0.9);
    }

    @Test
    void twoWiresForOneHornStandSideBySideWithTheQuestionThatAMeterSettles() {
        ReadNotes notes = Notes.read("Horn\tblack\t-\tcolumn\nHorn\tblack/white\t-\tcolumn\n");
        assertThat(kinds(notes)).containsExactly(Finding.Kind.CONFLICT);
        assertThat(notes.entries())
                .hasSize(2)
                .allSatisfy(e -> assertThat(e.sure()).isLessThan(0.7));
        assertThat(notes.findings().getFirst().ask()).isEqualTo(MeterQuestion.of(CircuitRole.HORN));
    }

    @Test
    void theSameSaidTwiceIsToldAndNoLessSure() {
        ReadNotes notes = Notes.read("Horn\tblack\t-\tcolumn\nhorn\tBK\tneg\tcolumn\n");
        assertThat(kinds(notes)).containsExactly(Finding.Kind.SAID_TWICE);
        assertThat(notes.entries()).allSatisfy(e -> assertThat(e.sure()).isGreaterThan(0.9));
    }

    @Test
    void leftAndRightHandDriveDoNotConflict() {
        assertThat(kinds(Notes.read(
                        "Circuit,Colour,Polarity,Place\nHorn,green,-,column (LHD)\nHorn,blue,-,column (RHD)\n")))
                .isEmpty();
    }

    @Test
    void twoDoorsMayHaveTwoWires() {
        assertThat(kinds(Notes.read(
                        "Driver door pin\tgreen\t-\tleft kick panel\nPassenger door pin\tblue\t-\tright kick panel\n")))
                .isEmpty();
    }

    @Test
    void oneCavityHoldsOneCircuit() {
        ReadNotes notes = Notes.read("""
                Circuit,Colour,Polarity,Connector,Pin
                Horn,green,-,C4,7
                Starter,violet,+,C4,7
                """);
        assertThat(kinds(notes)).containsExactly(Finding.Kind.CONFLICT);
    }

    @Test
    void everyRoleHasItsQuestionForTheMeter() {
        for (CircuitRole role : CircuitRole.values()) {
            assertThat(Messages.english().text(MeterQuestion.of(role))).isNotBlank();
        }
    }

    @Test
    void anEntryIsAsSureAsItsWeakestField() {
        Entry entry = Notes.read("Horn ??\tblack\t-\tcolumn\nBrake\twhite\t+\tpedal\n")
                .entries()
                .getFirst();
        assertThat(entry.doubted()).isTrue();
        assertThat(entry.sure()).isLessThan(0.7);
    }
}
