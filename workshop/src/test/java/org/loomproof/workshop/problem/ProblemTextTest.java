package org.loomproof.workshop.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.words.Messages;

class ProblemTextTest {

    private static String place(int line, int column, String path) {
        return ProblemText.place(new Place("r.csv", line, column, path), Messages.english());
    }

    @Test
    void onlyWhatIsKnownOfAPlaceIsTold() {
        assertThat(place(12, 7, "blue.step")).isEqualTo("r.csv:12:7 blue.step");
        assertThat(place(12, 0, "blue.step")).isEqualTo("r.csv:12 blue.step");
        assertThat(place(0, 0, "")).isEqualTo("r.csv");
    }
}
