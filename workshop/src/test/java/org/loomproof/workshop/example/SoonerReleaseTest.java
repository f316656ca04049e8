package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** A zener behind the clamp diode wherever an output that goes on and off lets go of a coil: at relays in cut wires, and at the car's own. */
class SoonerReleaseTest {

    /** Behind a diode alone a cube relay takes 20 ms: with pauses of 15 ms it must let go sooner, with pauses of 30 ms it need not. */
    @Test
    void relaysInCutWiresLetGoInTime() {
        PlannedJob quick = new Weigher().weigh(legs(0.015, 45));
        assertThat(zeners(quick)).isEqualTo(2);
        assertThat(released(quick)).hasSize(2).allMatch(result -> result.verdict() instanceof Verdict.Holds);

        PlannedJob slow = new Weigher().weigh(legs(0.030, 45));
        assertThat(zeners(slow)).isZero();
        assertThat(released(slow)).hasSize(2).allMatch(result -> result.verdict() instanceof Verdict.Holds);
    }

    /** What the output does not bear is not laid across the coil. */
    @Test
    void relaysInCutWiresGetNoZenerThatTheOutputDoesNotBear() {
        PlannedJob weak = new Weigher().weigh(legs(0.015, 20));
        assertThat(zeners(weak)).isZero();
        assertThat(weak.plan().refusals()).isNotEmpty();
    }

    @Test
    void theCarsOwnRelayLetsGoInTime() {
        PlannedJob job = new Weigher()
                .weigh(ExamplesAreReadTest.brief(ExampleFiles.root().resolve("circuits/horn-relay-in-short-blasts")));
        assertThat(zeners(job)).isEqualTo(1);
        assertThat(job.plan().parts()).noneMatch(AddedPart.Relay.class::isInstance);
        assertThat(released(job)).hasSize(1).allMatch(result -> result.verdict() instanceof Verdict.Holds);
    }

    private static long zeners(PlannedJob job) {
        return job.plan().parts().stream()
                .filter(AddedPart.Zener.class::isInstance)
                .count();
    }

    private static List<ClaimResult> released(PlannedJob job) {
        return job.proof().results().stream()
                .filter(result -> result.id().startsWith("lets-go-in-time "))
                .toList();
    }

    private static Brief legs(double pause, double bears) {
        Brief given = ExamplesAreReadTest.brief(ExampleFiles.root().resolve("circuits/locks-legs-at-ground"));
        Kit kit = given.kit();
        return new Brief(
                given.sheet(),
                new Kit(
                        kit.name(),
                        kit.leastSupply(),
                        kit.mostSupply(),
                        kit.survives(),
                        kit.standby(),
                        kit.leads().stream()
                                .map(lead -> quick(lead, pause, bears))
                                .toList(),
                        kit.options(),
                        kit.extras(),
                        kit.behaviour()),
                given.order());
    }

    private static Lead quick(Lead lead, double pause, double bears) {
        boolean locks = lead.role() == LeadRole.LOCK || lead.role() == LeadRole.UNLOCK;
        return locks && lead.port() instanceof Port.LowSide out
                ? new Lead(
                        lead.id(),
                        lead.plug(),
                        lead.position(),
                        lead.colour(),
                        lead.size(),
                        lead.role(),
                        new Port.LowSide(
                                out.rating(),
                                out.saturation(),
                                out.pulse(),
                                out.bodyDiode(),
                                out.clamp(),
                                Optional.of(Figured.volts(bears)),
                                Optional.of(Figure.exactly(new Seconds(pause), Figured.STATED)),
                                out.rush()),
                        lead.alwaysUsed(),
                        lead.note(),
                        lead.basis())
                : lead;
    }
}
