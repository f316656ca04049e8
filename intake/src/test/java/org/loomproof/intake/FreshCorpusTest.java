package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A second corpus, written by somebody who had not seen the reader or its dictionaries. The odd sheets of each file may be looked at to mend
 * the reader; the even ones are only scored. At the first reading, before anything was mended: of those looked at since role 322 of 477, colour
 * 370 of 481, polarity 258 of 381, place 207 of 436, and of the fields called at least 95 % sure 854 of 930 right; of those held back role 307 of
 * 447, colour 327 of 452, polarity 242 of 360, place 203 of 427, and 839 of 915. A circuit that is none of ours is right when it is
 * not taken for one of ours. A place counts as right when it holds the same words.
 * Since 27 November 2026 an answer is compared with the entry most like it of all pairs, and a connector's own word ("conn A") does not count.
 * The beginnings of the second sheets of the five files were seen by mistake before the dictionaries were mended, and one phrase
 * ("corriente directa") may stem from there, so those five are no longer counted. No answer was changed.
 */
class FreshCorpusTest {

    private static final List<String> FILES = List.of(
            "fresh-english.txt", "fresh-german.txt", "fresh-spanish.txt", "fresh-french.txt", "fresh-messy.txt");

    @Test
    void sheetsThatMayBeLookedAtAreReadAsWellAsBefore() throws IOException {
        Scores scores = fresh(0, true);
        scores.print("fresh, looked at");
        assertThat(scores.sheets()).isEqualTo(88);
        assertAtLeast(scores, 0.86, 0.92, 0.89, 0.83);
        assertThat(scores.shareOfSure()).as("called sure").isGreaterThan(0.98);
    }

    @Test
    void heldBackSheetsAreReadAsWellAsBefore() throws IOException {
        Scores scores = heldBack();
        scores.print("fresh, held back");
        assertThat(scores.sheets()).isEqualTo(80);
        assertAtLeast(scores, 0.78, 0.81, 0.75, 0.64);
        assertThat(scores.shareOfSure()).as("called sure").isGreaterThan(0.97);
    }

    /**
     * Twenty sheets written after the reader was mended last and before its next mending, by somebody who had not looked at its dictionaries: only
     * scored, none looked at. At the first reading role 119 of 146, colour 126 of 146, polarity 82 of 102, place 99 of 129; of the fields called at
     * least 95 % sure 297 of 302.
     */
    @Test
    void sheetsWrittenLaterAreReadAsWellAsBefore() throws IOException {
        Scores scores = later();
        scores.print("fresh, written later");
        assertThat(scores.sheets()).isEqualTo(20);
        assertAtLeast(scores, 0.81, 0.86, 0.80, 0.76);
        assertThat(scores.shareOfSure()).as("called sure").isGreaterThan(0.98);
    }

    static Scores later() throws IOException {
        Scores scores = new Scores(false);
        for (CorpusFile.Sheet sheet : CorpusFile.sheets("fresh/later.txt")) {
            scores.judge(sheet.name(), sheet.text(), sheet.circuitsWithWholePlace());
        }
        return scores;
    }

    /** What is reached today, rounded down; to be raised with the reader. */
    private static void assertAtLeast(Scores scores, double role, double colour, double polarity, double place) {
        assertThat(scores.share("role")).as("role").isGreaterThanOrEqualTo(role);
        assertThat(scores.share("colour")).as("colour").isGreaterThanOrEqualTo(colour);
        assertThat(scores.share("polarity")).as("polarity").isGreaterThanOrEqualTo(polarity);
        assertThat(scores.share("place")).as("place").isGreaterThanOrEqualTo(place);
    }

    /** Without the second sheet of each file, whose beginning was seen. */
    static Scores heldBack() throws IOException {
        return fresh(3, false, SEEN);
    }

    /** Held back until the eye of whoever mended the reader fell on them; not counted since. */
    private static final Set<String> SEEN = Set.of("footnoted-list", "trim-dependent-locks");

    static Scores fresh(int from, boolean tells) throws IOException {
        return fresh(from, tells, Set.of());
    }

    private static Scores fresh(int from, boolean tells, Set<String> without) throws IOException {
        Scores scores = new Scores(tells);
        for (String file : FILES) {
            List<CorpusFile.Sheet> sheets = CorpusFile.sheets("fresh/" + file);
            for (int i = from; i < sheets.size(); i += 2) {
                if (without.contains(sheets.get(i).name())) {
                    continue;
                }
                scores.judge(
                        sheets.get(i).name(),
                        sheets.get(i).text(),
                        sheets.get(i).circuitsWithWholePlace());
            }
        }
        return scores;
    }

    /** Known sheets dressed by the seeds from 0. */
    static Scores generated(boolean heldBack, int count) {
        Scores scores = new Scores(false);
        for (long seed = 0; seed < count; seed++) {
            Dresser.Dressed dressed = new Dresser(seed, heldBack).sheet(seed);
            scores.judge(dressed.name(), dressed.text(), dressed.answers());
        }
        return scores;
    }
}
