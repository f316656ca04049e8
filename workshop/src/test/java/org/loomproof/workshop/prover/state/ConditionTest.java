package org.loomproof.workshop.prover.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.wiring.ControllerFeed;

class ConditionTest {
    private static final LeadId INTERRUPT = new LeadId("interrupt");
    private static final LeadId LAMPS = new LeadId("lamps");
    private static final LeadId UNLOCK = new LeadId("unlock");

    private static final Behaviour BEHAVIOUR = new Behaviour(
            AKit.simple().kit().behaviour().armingDelay(),
            Set.of(),
            Set.of(),
            List.of(
                    new OutputBehaviour(
                            INTERRUPT, Set.of(ControllerState.ARMED, ControllerState.SOUNDING), OutputTiming.STEADY),
                    new OutputBehaviour(LAMPS, Set.of(ControllerState.SOUNDING), OutputTiming.FLASHING),
                    new OutputBehaviour(UNLOCK, Set.of(ControllerState.DISARMED), OutputTiming.PULSE)));

    private static Kit kit() {
        Kit simple = AKit.simple().kit();
        return new Kit(
                simple.name(),
                simple.leastSupply(),
                simple.mostSupply(),
                simple.survives(),
                simple.standby(),
                simple.leads(),
                simple.options(),
                simple.extras(),
                BEHAVIOUR);
    }

    @Test
    void aPulseAndAFlashAreOnAtFirstAndOffInTheEnd() {
        assertThat(BEHAVIOUR.listOn(ControllerState.DISARMED, Moment.ACTING)).containsExactly(UNLOCK);
        assertThat(BEHAVIOUR.listOn(ControllerState.DISARMED, Moment.SETTLED)).isEmpty();
        assertThat(BEHAVIOUR.listOn(ControllerState.SOUNDING, Moment.ACTING)).containsExactly(INTERRUPT, LAMPS);
        assertThat(BEHAVIOUR.listOn(ControllerState.SOUNDING, Moment.SETTLED)).containsExactly(INTERRUPT);
    }

    @Test
    void aControllerWithoutItsFeedIsLookedAtWithSteadyOutputsOnly() {
        List<Condition> conditions = Condition.list(kit(), true, false);
        assertThat(conditions)
                .flatExtracting(Condition::members)
                .filteredOn(doing -> doing.feed() != ControllerFeed.WHOLE)
                .isNotEmpty()
                .allSatisfy(doing -> assertThat(doing.moment()).isEqualTo(Moment.SETTLED));
    }

    @Test
    void whatAsksTheSameOfTheOutputsIsSolvedOnce() {
        List<Condition> whole = Condition.list(kit(), false, false).stream()
                .filter(c -> c.representative().feed() == ControllerFeed.WHOLE)
                .toList();
        // Unlocking; nothing; guarding; sounding with lamps lit; the last two while unlocking still lasts.
        assertThat(whole).hasSize(6);
        assertThat(whole)
                .filteredOn(c -> c.members()
                        .contains(new Condition.Doing(ControllerState.SOUNDING, ControllerFeed.WHOLE, Moment.SETTLED)))
                .singleElement()
                .satisfies(c -> assertThat(c.members())
                        .contains(new Condition.Doing(ControllerState.ARMED, ControllerFeed.WHOLE, Moment.ACTING)));
    }
}
