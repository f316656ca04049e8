package org.loomproof.network;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The engine is a library of its own: it knows volts and contacts and has never heard of a car. */
class ArchitectureTest {

    /** Words of the trade that have no business in an electrical engine. */
    private static final Set<String> CAR_WORDS = Set.of(
            "alarm",
            "bonnet",
            "brief",
            "car",
            "claim",
            "controller",
            "door",
            "driver",
            "hood",
            "hookup",
            "horn",
            "ignition",
            "immobiliser",
            "key",
            "kit",
            "lead",
            "lock",
            "opening",
            "plan",
            "proof",
            "prover",
            "siren",
            "starter",
            "tailgate",
            "trunk",
            "unlock",
            "vehicle",
            "window",
            "wish");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.loomproof.network");

    @Test
    void itNeedsNothingButTheJavaLibrary() {
        ArchRuleDefinition.classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("org.loomproof.network..", "java..", "org.jspecify.annotations..")
                .check(CLASSES);
    }

    @Test
    void noNameSpeaksOfACar() {
        Set<String> found = CLASSES.stream()
                .flatMap(ArchitectureTest::namesIn)
                .filter(name -> wordsOf(name).stream().anyMatch(CAR_WORDS::contains))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(found).as("names in the engine that speak of a car").isEmpty();
    }

    @Test
    void aCarWordInsideANameIsSeen() {
        assertThat(wordsOf("openDriverDoor")).containsExactly("open", "driver", "door");
        assertThat(wordsOf("IGNITION_FEED")).containsExactly("ignition", "feed");
    }

    @Test
    void nothingIsPrintedOrLoggedFromHere() {
        GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CLASSES);
        GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(CLASSES);
    }

    private static Stream<String> namesIn(JavaClass one) {
        return Stream.concat(
                Stream.of(one.getSimpleName()), one.getMembers().stream().map(JavaMember::getName));
    }

    private static List<String> wordsOf(String name) {
        return Arrays.stream(name.split("_|(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])"))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
    }
}
