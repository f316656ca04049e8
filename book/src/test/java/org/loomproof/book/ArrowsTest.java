package org.loomproof.book;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The arrows between the book's packages. */
class ArrowsTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.loomproof.book");

    @Test
    void onlyTheStoreKnowsTheOthers() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("key")
                .definedBy("..book.key..")
                .layer("vehicle")
                .definedBy("..book.vehicle..")
                .layer("card")
                .definedBy("..book.card..")
                .layer("place")
                .definedBy("..book.place..")
                .layer("work")
                .definedBy("..book.work..")
                .layer("store")
                .definedBy("..book.store..")
                .whereLayer("key")
                .mayNotAccessAnyLayer()
                .whereLayer("vehicle")
                .mayNotAccessAnyLayer()
                .whereLayer("card")
                .mayNotAccessAnyLayer()
                .whereLayer("place")
                .mayNotAccessAnyLayer()
                .whereLayer("work")
                .mayOnlyAccessLayers("card")
                .whereLayer("store")
                .mayOnlyAccessLayers("key", "card", "place", "work")
                .check(CLASSES);
    }

    @Test
    void noPackageCircle() {
        slices().matching("org.loomproof.book.(*)..").should().beFreeOfCycles().check(CLASSES);
    }
}
