package org.loomproof.workshop.brief.complete;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.trade.template.RoleTemplate;
import org.loomproof.workshop.trade.template.RoleTemplates;
import org.loomproof.workshop.trade.template.TradeDefaults;

class SheetCompletionTest {
    private static final String VEHICLE = """
            format: loomproof sheet 1
            vehicle: {name: test bed, system-voltage: 12 V, ground: negative, gearbox: manual, drive: combustion,
              start: key, key: plain, steering: left}
            openings: [{id: left-door, kind: door}, {id: right-door, kind: door}]
            controls: [{id: knob, positions: [off, one, two]}]
            circuits:
            """;

    private static Sheet completed(String circuits) {
        BriefReader reader = new BriefReader(TradeDefaults.read(), new SheetCompletion(TradeDefaults.read()));
        Checked<Sheet> read = reader.readSheet(new SourceText("bed.yaml", VEHICLE + circuits));
        assertThat(read).as("%s", read).isInstanceOf(Checked.Good.class);
        return new SheetCompletion(TradeDefaults.read()).apply(((Checked.Good<Sheet>) read).value());
    }

    private static Circuit circuit(String role, String rest, String active, String follows) {
        return completed("  - {id: it, role: %s, rest: %s, active: %s, follows: [%s], access: may-be-tapped, note: n}%n"
                        .formatted(role, rest, active, follows))
                .circuit(new CircuitId("it"));
    }

    @Test
    void twoDoorsOnOneWireGetAPinEachToTheBody() {
        Circuit doors = circuit("door-trigger", "supply", "ground", "left-door, right-door");
        assertThat(doors.paths()).hasSize(3);
        assertThat(doors.paths().getFirst()).contains(new PathStep.Here(), new PathStep.Supply());
        List<OperableId> workedBy = new ArrayList<>();
        for (List<PathStep> pin : doors.paths().subList(1, 3)) {
            assertThat(pin.getLast()).isEqualTo(new PathStep.Ground());
            PathStep.Switch contact = (PathStep.Switch) pin.get(1);
            assertThat(contact.closedAt()).containsExactly("open");
            workedBy.add(contact.operatedBy());
        }
        assertThat(workedBy).containsExactly(new OperableId("left-door"), new OperableId("right-door"));
    }

    @Test
    void theStarterIsFedOnlyInStartAndIgnitionInOnAndStart() {
        assertThat(onlySwitch(circuit("starter", "ground", "supply", "key")).closedAt())
                .containsExactly("start");
        assertThat(onlySwitch(circuit("ignition", "ground", "supply", "key")).closedAt())
                .containsExactlyInAnyOrder("on", "start");
        assertThat(onlySwitch(circuit("second-ignition", "ground", "supply", "key"))
                        .closedAt())
                .containsExactly("on");
    }

    @Test
    void aControlClosesItsContactInEveryPositionButTheFirst() {
        assertThat(onlySwitch(circuit("parking-lamp", "ground", "supply", "knob"))
                        .closedAt())
                .containsExactlyInAnyOrder("one", "two");
    }

    @Test
    void anInputIsPulledUpToTheVoltsTheSheetStates() {
        Circuit pin = circuit("hood-trigger", "5 V", "ground", "left-door");
        PathStep.Input input = (PathStep.Input) pin.paths().getFirst().getLast();
        assertThat(input.pullUpTo().orElseThrow().typical().value()).isEqualTo(5);
    }

    @Test
    void whatTheTradeHasNoUsualPathForStaysWithout() {
        assertThat(circuit("other", "supply", "ground", "left-door").paths()).isEmpty();
        assertThat(circuit("lock-motor-leg", "reversing", "reversing", "knob").paths())
                .isEmpty();
        assertThat(circuit("data", "data", "data", "key").paths()).isEmpty();
    }

    @Test
    void aCircuitThatNothingIsKnownToWorkStaysWithout() {
        assertThat(circuit("door-trigger", "supply", "ground", "").paths()).isEmpty();
    }

    @Test
    void aFollowerWithoutAUsualPositionLeavesTheCircuitWithout() {
        assertThat(circuit("door-trigger", "supply", "ground", "left-door, key").paths())
                .isEmpty();
    }

    @Test
    void aStatedPathIsLeftAsItStands() {
        Sheet sheet = completed("""
                  - id: it
                    role: parking-lamp
                    rest: ground
                    active: supply
                    follows: [knob]
                    access: may-be-tapped
                    path:
                      - supply
                      - switch: {id: s, operated-by: knob, closed-at: [two], closed-resistance: 10 mohm}
                      - here
                      - lamp: {id: l, power: 10 W}
                      - ground
                """);
        assertThat(onlySwitch(sheet.circuit(new CircuitId("it"))).closedAt()).containsExactly("two");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void everyFigureOfEveryUsualPathIsAssumedAndNamedApart(RoleTemplate template) {
        for (String rest : template.rest()) {
            String stated = rest.equals("voltage") ? "5 V" : rest;
            String follows = template.keyAt().isEmpty() ? "left-door, knob" : "key, knob";
            Circuit circuit = circuit(template.role(), stated, template.active(), follows);
            assertThat(circuit.paths()).as(template.role() + " " + rest).isNotEmpty();
            Set<Place> places = new HashSet<>();
            for (Figure<?> figure : figures(circuit)) {
                assertThat(figure.basis().certainty()).isEqualTo(Certainty.ASSUMED);
                assertThat(figure.basis().place().path()).startsWith("circuits[it].");
                assertThat(places.add(figure.basis().place()))
                        .as("%s", figure.basis().place())
                        .isTrue();
            }
        }
    }

    static List<RoleTemplate> templates() {
        return RoleTemplates.listTemplates();
    }

    private static PathStep.Switch onlySwitch(Circuit circuit) {
        List<PathStep.Switch> switches = circuit.paths().stream()
                .flatMap(List::stream)
                .filter(PathStep.Switch.class::isInstance)
                .map(PathStep.Switch.class::cast)
                .toList();
        assertThat(switches).hasSize(1);
        return switches.getFirst();
    }

    private static List<Figure<?>> figures(Circuit circuit) {
        List<Figure<?>> figures = new ArrayList<>();
        for (PathStep step : circuit.paths().stream().flatMap(List::stream).toList()) {
            switch (step) {
                case PathStep.Fuse s -> figures.addAll(List.of(s.rating(), s.coldResistance()));
                case PathStep.Wire s -> figures.add(s.resistance());
                case PathStep.Switch s -> figures.add(s.closedResistance());
                case PathStep.Coil s -> figures.addAll(List.of(s.resistance(), s.pullIn(), s.dropOut()));
                case PathStep.Contact s -> figures.add(s.closedResistance());
                case PathStep.Lamp s -> figures.add(s.power());
                case PathStep.Load s -> figures.add(s.resistance());
                case PathStep.Resistor s -> figures.add(s.resistance());
                case PathStep.Input s -> {
                    s.pullUp().ifPresent(figures::add);
                    s.pullUpTo().ifPresent(figures::add);
                    s.pullDown().ifPresent(figures::add);
                    figures.addAll(List.of(s.lowBelow(), s.highAbove()));
                }
                case PathStep.Diode s -> {}
                case PathStep.Supply s -> {}
                case PathStep.Ground s -> {}
                case PathStep.Point s -> {}
                case PathStep.Here s -> {}
            }
        }
        return figures;
    }
}
