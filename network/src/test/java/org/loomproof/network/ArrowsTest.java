package org.loomproof.network;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The arrows between the engine's packages. */
class ArrowsTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.loomproof.network");

    @Test
    void partsKnowNothingAndOnlyTheSolverKnowsLaws() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("part")
                .definedBy("..network.part..")
                .layer("netlist")
                .definedBy("..network.netlist..")
                .layer("law")
                .definedBy("..network.law..")
                .layer("solve")
                .definedBy("..network.solve..")
                .layer("probe")
                .definedBy("..network.probe..")
                .layer("time")
                .definedBy("..network.time..")
                .layer("corner")
                .definedBy("..network.corner..")
                .whereLayer("part")
                .mayNotAccessAnyLayer()
                .whereLayer("netlist")
                .mayOnlyAccessLayers("part")
                .whereLayer("law")
                .mayOnlyAccessLayers("part")
                .whereLayer("solve")
                .mayOnlyAccessLayers("part", "netlist", "law")
                .whereLayer("probe")
                .mayOnlyAccessLayers("part", "netlist", "solve")
                .whereLayer("time")
                .mayOnlyAccessLayers("part", "netlist", "law", "solve")
                .whereLayer("corner")
                .mayOnlyAccessLayers("part", "netlist", "law", "solve")
                .check(CLASSES);
    }

    @Test
    void noPackageCircle() {
        slices().matching("org.loomproof.network.(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }
}
