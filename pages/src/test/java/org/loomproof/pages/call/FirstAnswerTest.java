package org.loomproof.pages.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.pages.call.FirstAnswer.Kind;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.words.Phrase;

class FirstAnswerTest {

    private static Call usual(Wish... wishes) {
        Set<Wish> all = EnumSet.noneOf(Wish.class);
        all.addAll(Set.of(wishes));
        return new Call(2014, 4, true, false, true, false, 2, 7, all);
    }

    @Test
    void aUsualCarWithUsualWishesIsAYes() {
        FirstAnswer answer = FirstAnswer.to(usual(Wish.SIREN, Wish.LAMPS));
        assertThat(answer.kind()).isEqualTo(Kind.YES);
        assertThat(answer.reasons()).isEmpty();
        // hours.csv: 1.5 to 2.5 for the basics, 0.3 to 0.6 for the siren, 0.3 to 0.8 for the lamps
        assertThat(answer.hoursLow()).isEqualTo(2.1, offset(1e-9));
        assertThat(answer.hoursHigh()).isEqualTo(3.9, offset(1e-9));
    }

    @Test
    void whatCouldStopAMovingCarIsRefusedAndAloneIsANo() {
        assertThat(FirstAnswer.to(usual(Wish.ENGINE_STOP_WHILE_MOVING)).kind()).isEqualTo(Kind.NO);
        FirstAnswer beside = FirstAnswer.to(usual(Wish.ENGINE_STOP_WHILE_MOVING, Wish.SIREN));
        assertThat(beside.kind()).isEqualTo(Kind.YES_IF);
        assertThat(beside.reasons()).extracting(Phrase::key).containsExactly("pages.call.never");
    }

    @Test
    void remoteStartWithAGearboxWorkedByHandIsRefused() {
        assertThat(FirstAnswer.to(usual(Wish.REMOTE_START)).kind()).isEqualTo(Kind.NO);
        Call automatic = new Call(2014, 4, false, false, true, false, 2, 7, Set.of(Wish.REMOTE_START));
        assertThat(FirstAnswer.to(automatic).kind()).isEqualTo(Kind.YES);
    }

    @Test
    void everyConditionIsTold() {
        Call call = new Call(1998, 2, true, true, false, true, 6, 30, Set.of(Wish.LOCKS, Wish.STARTER_INTERRUPT));
        FirstAnswer answer = FirstAnswer.to(call);
        assertThat(answer.kind()).isEqualTo(Kind.YES_IF);
        assertThat(answer.reasons())
                .extracting(Phrase::key)
                .containsExactlyInAnyOrder(
                        "pages.call.earlier-alarm",
                        "pages.call.old-battery",
                        "pages.call.long-unused",
                        "pages.call.no-locks",
                        "pages.call.start-button");
        assertThat(answer.hoursLow())
                .isGreaterThan(FirstAnswer.to(usual(Wish.LOCKS, Wish.STARTER_INTERRUPT))
                        .hoursLow());
    }
}
