package org.loomproof.workshop.meter.shock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

class BlowsReaderTest {

    private static final String HEAD = "setting,mass,height,noticed\n";
    private static final String ASKED = ",200 g,1 cm,must-not\n,200 g,25 cm,must\n";

    private static Checked<Series> read(String text) {
        return BlowsReader.read(new SourceText("blows.csv", text));
    }

    private static List<Problem> problems(String text) {
        return read(text) instanceof Checked.Bad<Series>(var problems) ? problems : List.of();
    }

    @Test
    void blowsAreReadWithMassAndHeight() {
        Checked<Series> read =
                read(HEAD + "# sill, driver's side\n" + ASKED + "3,0.2 kg,0.1 m,no\n3,200 g,141 mm,yes\n");
        assertThat(read).isInstanceOf(Checked.Good.class);
        Series series = ((Checked.Good<Series>) read).value();
        assertThat(series.blows()).extracting(Blow::noticed).containsExactly(false, true);
        assertThat(series.blows().getFirst().joules()).isCloseTo(0.19613, within(1e-5));
        assertThat(series.harmless().joules()).isCloseTo(0.019613, within(1e-6));
        assertThat(series.matters().joules()).isCloseTo(0.49033, within(1e-5));
    }

    @Test
    void aSpreadsheetOfAnotherCountryReadsTheSame() {
        Checked<Series> read =
                read("setting;mass;height;noticed\n;0,2 kg;1 cm;Must not\n;200 g;25 cm;MUST\n3;200 g;14,1 cm;YES\n");
        assertThat(read).isInstanceOf(Checked.Good.class);
        assertThat(((Checked.Good<Series>) read).value().blows().getFirst().joules())
                .isCloseTo(0.27655, within(1e-5));
        assertThat(read("setting\tmass\theight\tnoticed\n\t200 g\t1 cm\tmust-not\n\t200 g\t25 cm\tmust\n"))
                .isInstanceOf(Checked.Good.class);
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        List<Problem> problems = problems(HEAD
                + ",200 g,25 cm,must-not\n"
                + ",200 g,1 cm,must\n"
                + ",200 g,10 cm,yes\n"
                + "3,200,10 cm,yes\n"
                + "3,200 g,10,no\n"
                + "3,200 g,10 cm,perhaps\n"
                + "3,90 kg,10 cm,no\n"
                + "5,200 g,10 cm,yes\n"
                + "5,200 g,20 cm,yes\n");
        assertThat(problems).extracting(p -> p.at().line()).contains(3, 4, 5, 6, 7, 8, 10);
        assertThat(problems)
                .extracting(Problem::kind)
                .contains(
                        ProblemKind.CONTRADICTION,
                        ProblemKind.MISSING,
                        ProblemKind.WRONG_UNIT,
                        ProblemKind.NOT_ONE_OF,
                        ProblemKind.OUT_OF_RANGE);
    }

    @Test
    void whatFollowsABlowThatCannotBeReadIsNotJudgedByIt() {
        assertThat(problems(HEAD + ASKED + "3,200 g,8 cm,nope\n3,200 g,16 cm,yes\n3,200 g,11.3 cm,no\n"))
                .extracting(p -> p.at().line())
                .containsExactly(4);
    }

    @Test
    void whatIsAskedForMustBeSaidOnce() {
        assertThat(problems(HEAD + "3,200 g,10 cm,no\n"))
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.MISSING, ProblemKind.MISSING);
        assertThat(problems(HEAD + ASKED + ASKED))
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.DUPLICATE_KEY, ProblemKind.DUPLICATE_KEY);
        assertThat(problems("")).isNotEmpty();
        assertThat(problems("wire,step\nx,y\n")).isNotEmpty();
    }
}
