package org.loomproof.papers.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Messages;

class WordingTest {

    private static final Wording WORDS = new Wording(Messages.english());

    @Test
    void everyWishRoleStateAndFeedHasAWord() {
        assertThat(Arrays.stream(Wish.values()).map(WORDS::wish)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(LeadRole.values()).map(WORDS::role)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(CircuitRole.values()).map(WORDS::role)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(ShopChoices.Joint.values()).map(WORDS::joint)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(ControllerState.values()).map(s -> WORDS.of("controller-state." + s.word())))
                .doesNotHaveDuplicates();
        assertThat(Arrays.stream(SupplyPoint.values()).map(s -> WORDS.of("supply-point." + s.word())))
                .doesNotHaveDuplicates();
        assertThat(Arrays.stream(ControllerFeed.values()).map(f -> WORDS.of("feed." + f.word())))
                .doesNotHaveDuplicates();
    }

    @Test
    void noTwoMarksHaveTheSameShape() {
        assertThat(Arrays.stream(Mark.values()).map(m -> MarkupWriter.fragment(m.drawn())))
                .doesNotHaveDuplicates();
    }

    @Test
    void noTwoInsulationColoursAreDrawnAlike() {
        assertThat(Arrays.stream(Colour.values()).map(Insulation::hex)).doesNotHaveDuplicates();
    }
}
