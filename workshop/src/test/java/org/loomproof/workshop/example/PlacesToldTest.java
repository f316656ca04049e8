package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Where things out of the box go: common practice, no published source. */
class PlacesToldTest {

    private static List<String> cautions() {
        return Planner.plan(ExamplesAreReadTest.brief(ExampleFiles.root().resolve("bakery-van")))
                .plans()
                .getFirst()
                .cautions()
                .stream()
                .map(PlacesToldTest::english)
                .toList();
    }

    private static String english(Phrase phrase) {
        return Messages.english().text(phrase);
    }

    @Test
    void theIndicatorIsSeenFromOutsideTheDriversSide() {
        assertThat(cautions()).anySatisfy(c -> assertThat(c).contains("Indicator", "seen from outside", "driver's"));
    }

    @Test
    void theOverrideButtonIsHiddenAndWithinReach() {
        assertThat(cautions()).anySatisfy(c -> assertThat(c).contains("Override button", "hidden", "within reach"));
    }

    @Test
    void theControllerLooksLikePartOfTheCarAndIsClearOfWhatMoves() {
        assertThat(cautions())
                .anySatisfy(
                        c -> assertThat(c).contains("Controller", "looks like part of the car", "clear of", "moves"));
    }

    @Test
    void theSounderIsMouthDownAtTheEngineSideOfTheBulkhead() {
        assertThat(cautions())
                .anySatisfy(c -> assertThat(c).contains("Siren", "engine side of the bulkhead", "mouth down"));
    }
}
