package org.loomproof.workshop.brief.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.template.PartDefaults;

class TemplatePathTest {

    private static final Operable KEY = new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS);

    private static List<List<PathStep>> paths(String template) {
        Place place = new Place("van.yaml", 40, 5, "circuits[starter]");
        Circuit circuit = new Circuit(
                new CircuitId("starter"),
                CircuitRole.STARTER,
                new Where("", "", "", ""),
                Optional.empty(),
                Optional.empty(),
                new Switching(new Level.Ground(), new Level.Supply()),
                List.of(Operable.KEY),
                List.of(),
                Access.MAY_BE_CUT,
                new Basis(Certainty.VERIFIED, place),
                "",
                "");
        return TemplatePath.read(new SourceText("starter.yaml", template), circuit, List.of(KEY), PartDefaults.none());
    }

    @Test
    void figuresOfATemplateAreAssumedEvenOnAVerifiedCircuitAndPointAtTheCircuitsOwnLine() {
        PathStep.Load solenoid = (PathStep.Load) paths("""
                path:
                  - supply
                  - switch: {operated-by: key, closed-at: [start], closed-resistance: 10..30 mohm}
                  - here
                  - load: {kind: solenoid, resistance: 0.2..0.5 ohm}
                  - ground
                """).getFirst().get(3);
        assertThat(solenoid.resistance().isAssumed()).isTrue();
        assertThat(solenoid.resistance().high()).isEqualTo(new Ohms(0.5));
        assertThat(solenoid.resistance().basis().place())
                .isEqualTo(new Place("van.yaml", 40, 5, "circuits[starter].path[3].load.resistance"));
        assertThat(solenoid.id().value()).isEqualTo("starter/load-1");
    }

    @Test
    void aFaultyTemplateIsOurOwnMistakeAndIsToldAtOnce() {
        assertThatThrownBy(() -> paths("path: [supply, here, {lamp: {power: 5}}, ground]"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("path[2].lamp.power")
                .hasMessageContaining("write 5 W");
    }
}
