package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.planner.survey.Family;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

class RulesTest {

    @ParameterizedTest
    @EnumSource(LeadRole.class)
    void everyRoleOfALeadHasExactlyOneRule(LeadRole role) {
        List<Rule> speaking =
                Rules.ALL.stream().filter(r -> r.roles().contains(role)).toList();
        assertThat(speaking).hasSize(1);
        assertThat(Messages.english().knows("term.lead." + role.word())).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Wish.class)
    void everyWishHasExactlyOneRule(Wish wish) {
        List<Rule> speaking =
                Rules.ALL.stream().filter(r -> r.wishes().contains(wish)).toList();
        assertThat(speaking).hasSize(1);
        assertThat(Messages.english().knows("term.wish." + wish.word())).isTrue();
    }

    @ParameterizedTest
    @EnumSource(CircuitRole.class)
    void everyRoleOfACircuitHasWords(CircuitRole role) {
        assertThat(Messages.english().knows("term.circuit." + role.word())).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Family.class)
    void everyWayOfSwitchingHasWordsAndAWayOut(Family family) {
        assertThat(Messages.english().text(family.phrase())).isNotBlank();
        assertThat(Messages.english().text(Phrase.of("possible.family." + family.word())))
                .isNotBlank();
    }
}
