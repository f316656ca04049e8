package org.loomproof.workshop;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between the packages of the workshop, which the compiler cannot see. ARCHITECTURE.md draws them. */
class ArchitectureTest {

    private static final String BASE = "org.loomproof.workshop";
    private static final String NETWORK = "network";

    /** Who may know whom. An arrow carries on: what a package knows, it knows with all that stands behind it. */
    private static final Map<String, Set<String>> ARROWS = Map.ofEntries(
            Map.entry("words", Set.of()),
            Map.entry("problem", Set.of("words")),
            Map.entry("quantity", Set.of("problem")),
            Map.entry("trade", Set.of("quantity")),
            Map.entry("brief", Set.of("trade")),
            Map.entry("sizing", Set.of("trade")),
            Map.entry("plan", Set.of("brief")),
            Map.entry("goods", Set.of("plan", "sizing")),
            Map.entry("standby", Set.of("plan", "sizing")),
            Map.entry("planner", Set.of("plan", "sizing", "standby")),
            Map.entry("wiring", Set.of("plan", "trade", NETWORK)),
            Map.entry("fault", Set.of("plan")),
            Map.entry("prover", Set.of("wiring", "fault")),
            Map.entry("weigh", Set.of("planner", "prover", "goods")),
            Map.entry("meter", Set.of("prover", "standby")),
            Map.entry(NETWORK, Set.of()));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages(BASE);

    static Set<String> rooms() {
        return new TreeSet<>(
                ARROWS.keySet().stream().filter(r -> !r.equals(NETWORK)).toList());
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aPackageKnowsOnlyWhatItsArrowsReach(String room) {
        forbidden(room, ARROWS).check(CLASSES);
    }

    @Test
    void everyPackageHasItsArrows() {
        Set<String> strangers = CLASSES.stream()
                .map(ArchitectureTest::roomOf)
                .filter(room -> !room.isEmpty() && !rooms().contains(room))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(strangers).as("packages of %s that no arrow speaks of", BASE).isEmpty();
    }

    @Test
    void plannerAndProverMeetOnlyWhereTheyAreWeighed() {
        Set<String> meetings = CLASSES.stream()
                .filter(one -> !roomOf(one).equals("weigh"))
                .filter(one -> knows(one, "planner") && knows(one, "prover"))
                .map(JavaClass::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(meetings).isEmpty();
    }

    /** Between rooms the arrows see to it; this is about the packages beside each other inside a room. */
    @Test
    void thePackagesOfARoomDoNotGoInCircles() {
        SlicesRuleDefinition.slices()
                .matching(BASE + ".(*).(*)..")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }

    @Test
    void nothingIsPrintedOrLoggedFromHere() {
        GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(CLASSES);
        GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(CLASSES);
    }

    /** The alarm bell itself: with its arrows gone, a package that plainly uses another is caught. */
    @Test
    void aMissingArrowIsNoticed() {
        Map<String, Set<String>> cut = new TreeMap<>(ARROWS);
        cut.put("plan", Set.of());
        assertThatThrownBy(() -> forbidden("plan", cut).check(CLASSES))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(BASE + ".brief");
    }

    private static ArchRule forbidden(String room, Map<String, Set<String>> arrows) {
        Set<String> allowed = reach(room, arrows, new TreeSet<>());
        String[] others = arrows.keySet().stream()
                .filter(other -> !other.equals(room) && !allowed.contains(other))
                .map(ArchitectureTest::packageOf)
                .toArray(String[]::new);
        return noClasses()
                .that(resideInAPackage(packageOf(room)))
                .should()
                .dependOnClassesThat(resideInAnyPackage(others))
                .as(room + " may know " + (allowed.isEmpty() ? "nothing" : String.join(", ", allowed)))
                .allowEmptyShould(true);
    }

    private static Set<String> reach(String room, Map<String, Set<String>> arrows, Set<String> found) {
        for (String next : arrows.getOrDefault(room, Set.of())) {
            if (found.add(next)) {
                reach(next, arrows, found);
            }
        }
        return found;
    }

    private static boolean knows(JavaClass one, String room) {
        return one.getDirectDependenciesFromSelf().stream()
                .map(Dependency::getTargetClass)
                .anyMatch(resideInAPackage(packageOf(room)));
    }

    private static String packageOf(String room) {
        return (room.equals(NETWORK) ? "org.loomproof.network" : BASE + "." + room) + "..";
    }

    /** First name after the base package; empty for the base package itself. */
    private static String roomOf(JavaClass one) {
        String rest = one.getPackageName().substring(BASE.length());
        return rest.isEmpty() ? "" : rest.substring(1).split("\\.", 2)[0];
    }
}
