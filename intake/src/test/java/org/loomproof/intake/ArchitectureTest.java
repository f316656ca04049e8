package org.loomproof.intake;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The steps of the reader know only those before them: decode, field, role, layout, check, correct; sheet and kit stand beside each other behind them. */
class ArchitectureTest {

    private static final List<String> STEPS =
            List.of("decode", "field", "fact", "role", "layout", "check", "correct", "sheet", "kit");

    @Test
    void aStepKnowsNoLaterOne() {
        JavaClasses classes = new ClassFileImporter().importPackages("org.loomproof.intake");
        for (int i = 0; i + 1 < STEPS.size(); i++) {
            String[] later = STEPS.subList(i + 1, STEPS.size()).stream()
                    .map(s -> "org.loomproof.intake." + s + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("org.loomproof.intake." + STEPS.get(i) + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(later)
                    .check(classes);
        }
    }
}
