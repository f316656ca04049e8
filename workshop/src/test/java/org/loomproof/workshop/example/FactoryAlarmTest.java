package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.words.Messages;

/** A car with an alarm of its own that is unlocked by remote. Common practice, no published source. */
class FactoryAlarmTest {

    private static final Path ALARM = ExampleFiles.root().resolve("circuits/locks-with-a-factory-alarm");

    @TempDir
    private Path folder;

    private Plan planned(String sheetFrom, String sheetTo, String kitTo) {
        Brief brief = ReworkedExample.brief(
                ALARM,
                folder,
                (file, text) ->
                        file.equals("kit.yaml") ? text.replace("behaviour:", kitTo) : text.replace(sheetFrom, sheetTo));
        return Planner.plan(brief).plans().getFirst();
    }

    private static List<String> cautions(Plan plan) {
        return plan.cautions().stream().map(Messages.english()::text).toList();
    }

    @Test
    void itIsDisarmedByTheLeadThatUnlocks() {
        Plan plan = planned("active: ground", "active: ground", "behaviour:");

        assertThat(plan.hookups())
                .filteredOn(hookup -> hookup instanceof Hookup.Connect connect
                        && connect.circuits().toString().contains("alarm"))
                .extracting(hookup -> ((Hookup.Connect) hookup).circuits().toString())
                .containsExactlyInAnyOrder("[lock-wire, alarm-on]", "[unlock-wire, alarm-off]");
        assertThat(cautions(plan)).noneMatch(caution -> caution.contains("is not worked by these locks"));
    }

    @Test
    void whereActuatorsWorkTheLocksItIsSaidThatTheAlarmIsLeftOut() {
        Plan plan = planned(
                "active: ground\n    follows: [lock-switch]",
                "active: data\n    follows: [lock-switch]",
                "extras:\n  - {name: driver door actuator, kind: actuator, draws: 4.5 A}\n\nbehaviour:");

        assertThat(plan.refusals()).isEmpty();
        assertThat(cautions(plan)).anyMatch(caution -> caution.contains("is not worked by these locks"));
    }
}
