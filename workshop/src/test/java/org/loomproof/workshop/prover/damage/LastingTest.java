package org.loomproof.workshop.prover.damage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.explore.Ends;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;

/** What is so at typical values and is not so at some end is not sure. */
class LastingTest {

    private static final List<String> FIGURES = List.of("one", "other");

    /** Each figure adds to what there is so much at its low end, and takes as much away at its high end. */
    private static boolean lasts(double typical, Map<String, Double> moves) {
        Lasting lasting = new Lasting(
                variations(),
                new Ends(false),
                (corner, places) -> places.stream()
                        .map(place -> typical
                                + FIGURES.stream()
                                        .mapToDouble(f -> moved(corner, f, moves))
                                        .sum())
                        .toList());
        return lasting.everywhere(List.of(typical)).get(0);
    }

    private static double moved(Corner corner, String figure, Map<String, Double> moves) {
        double by = moves.getOrDefault(figure, 0.0);
        return switch (corner.taken(figure)) {
            case LOW -> by;
            case TYPICAL -> 0;
            case HIGH -> -by;
        };
    }

    private static List<Variations.Variation> variations() {
        Brief brief = Jobs.simple().brief();
        Vehicle any = Vehicle.stock(brief, Corner.TYPICAL);
        List<Variations.Variation> all = new ArrayList<>();
        for (String figure : FIGURES) {
            for (Corner.Taken taken : List.of(Corner.Taken.LOW, Corner.Taken.HIGH)) {
                all.add(new Variations.Variation(
                        new RangedFigure(figure, Figured.assumed(figure, Ohms::new, 1, 2, 3)), taken, any, any));
            }
        }
        return all;
    }

    @Test
    void whatNoFigureMovesFarEnoughIsSure() {
        assertThat(lasts(1, Map.of())).isTrue();
        assertThat(lasts(1, Map.of("one", 0.5, "other", -0.4))).isTrue();
    }

    @Test
    void whatOneFigureAloneUndoesIsNot() {
        assertThat(lasts(1, Map.of("one", 1.1))).isFalse();
        assertThat(lasts(1, Map.of("one", -1.1))).isFalse();
    }

    @Test
    void whatTwoUndoOnlyTogetherIsNotEither() {
        assertThat(lasts(1, Map.of("one", 0.6, "other", -0.6))).isFalse();
    }
}
