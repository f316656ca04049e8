package org.loomproof.workshop.trade.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RoleTemplatesTest {
    @Test
    void aTemplateIsFoundByRoleAndByHowItSwitches() {
        assertThat(RoleTemplates.find("door-trigger", "supply", "ground")).isPresent();
        assertThat(RoleTemplates.find("starter", "open", "supply"))
                .isEqualTo(RoleTemplates.find("starter", "ground", "supply"));
        assertThat(RoleTemplates.find("data", "data", "data")).isEmpty();
        assertThat(RoleTemplates.find("lock", "reversing", "reversing")).isEmpty();
    }

    @Test
    void noTwoTemplatesSpeakForTheSameCircuit() {
        Set<String> seen = new HashSet<>();
        for (RoleTemplate template : RoleTemplates.listTemplates()) {
            for (String rest : template.rest()) {
                assertThat(seen.add(template.role() + " " + rest + " " + template.active()))
                        .as(template.role() + " " + rest)
                        .isTrue();
            }
        }
        assertThat(seen).hasSizeGreaterThan(30);
    }

    @Test
    void everythingTheCircuitFollowsGetsABranchOfItsOwn() {
        RoleTemplate doors =
                RoleTemplates.find("door-trigger", "supply", "ground").orElseThrow();
        String text = doors.text(
                "doors",
                "supply",
                List.of(
                        new RoleTemplate.Follower("left", List.of("open")),
                        new RoleTemplate.Follower("right", List.of("open"))));
        assertThat(text)
                .contains("doors-pin-left, operated-by: left, closed-at: [open]")
                .contains("doors-pin-right, operated-by: right, closed-at: [open]")
                .doesNotContain("$");
    }
}
