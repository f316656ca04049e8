package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.order.DeclaredChange.Becomes;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What changes on purpose is neither held nor broken but declared: so far, there, and where it really comes about. */
class DeclaredChangeTest {

    private static final Path LIT = ExampleFiles.root().resolve("circuits/light-lit-in-override");
    private static final String LIGHT = "stock-as-before map-leds";
    private static final String RADIO = "stock-as-before radio-module-reads";

    @TempDir
    private Path folder;

    private static ClaimResult result(Brief brief, String claim) {
        return Prover.prove(brief, PlannedExamples.job(LIT).plan()).results().stream()
                .filter(result -> result.id().equals(claim))
                .findFirst()
                .orElseThrow();
    }

    private static Verdict verdict(String claim, DeclaredChange... declared) {
        Brief brief = ExamplesAreReadTest.brief(LIT);
        return result(new Brief(brief.sheet(), brief.kit(), brief.order().declaring(List.of(declared))), claim)
                .verdict();
    }

    private static DeclaredChange light(String becomes, int percent) {
        return change("map-leds", new Becomes.Draws(becomes.equals("more"), percent), Map.of(), "override");
    }

    private static DeclaredChange change(String of, Becomes becomes, Map<String, String> at, String... controller) {
        return new DeclaredChange(
                new ElementId(of),
                becomes,
                at.entrySet().stream().collect(Collectors.toMap(e -> new OperableId(e.getKey()), Map.Entry::getValue)),
                Arrays.stream(controller)
                        .findFirst()
                        .map(word -> Arrays.stream(ControllerState.values())
                                .filter(state -> state.word().equals(word))
                                .findFirst()
                                .orElseThrow()),
                "told",
                "because");
    }

    private static String english(Phrase phrase) {
        return Messages.english().text(phrase);
    }

    /** Hand-worked in the example's README: 12.6 V / 601.6 ohm = 20.9 mA, dark before; at 14.8 V 24.6 mA. */
    @Test
    void whatComesAboutAsDeclaredIsDeclaredWithTheStepsToSeeIt() {
        Brief brief = ExamplesAreReadTest.brief(LIT);
        assertThat(result(brief, LIGHT).verdict()).isInstanceOfSatisfying(Verdict.Declared.class, declared -> {
            assertThat(declared.change().of().value()).isEqualTo("map-leds");
            assertThat(english(declared.found())).contains("instead of 0 A");
            assertThat(declared.witness().situation().controller()).isEqualTo(ControllerState.OVERRIDE);
            assertThat(declared.witness().seen())
                    .anySatisfy(seen -> assertThat(seen.reads()).isEqualTo("20.9 mA"));
        });
        assertThat(result(brief, RADIO).verdict()).isInstanceOf(Verdict.Declared.class);
    }

    @Test
    void whatIsNotDeclaredIsBroken() {
        assertThat(verdict(LIGHT)).isInstanceOf(Verdict.Broken.class);
        assertThat(verdict(RADIO)).isInstanceOf(Verdict.Broken.class);
    }

    /** The light goes from dark to all of its current: a share of 100 %. */
    @ParameterizedTest
    @CsvSource({
        "more, 100, Declared",
        "more, 98, Open",
        "more, 51, Open",
        "more, 48, Broken",
        "more, 6, Broken",
        "less, 100, Broken"
    })
    void furtherThanDeclaredIsOpenAndOverTwiceAsFarIsBroken(String becomes, int percent, String verdict) {
        assertThat(verdict(LIGHT, light(becomes, percent)).getClass().getSimpleName())
                .isEqualTo(verdict);
    }

    @Test
    void whatIsDeclaredAndDoesNotComeAboutIsOpenWhateverThePlan() {
        Brief brief = ExamplesAreReadTest.brief(LIT);
        DeclaredChange lamp = change("boot-lamp", new Becomes.Draws(false, 20), Map.of());
        ClaimResult result = result(
                new Brief(brief.sheet(), brief.kit(), brief.order().declaring(List.of(lamp))),
                "stock-as-before boot-lamp");
        assertThat(result.verdict())
                .isInstanceOfSatisfying(
                        Verdict.Open.class,
                        open -> assertThat(open.because().key()).isEqualTo("open.declared-and-no-change"));
        assertThat(result.planDecides()).isFalse();
    }

    @Test
    void elsewhereThanDeclaredIsBroken() {
        Becomes all = new Becomes.Draws(true, 100);
        assertThat(verdict(LIGHT, change("map-leds", all, Map.of()))).isInstanceOf(Verdict.Declared.class);
        assertThat(verdict(LIGHT, change("map-leds", all, Map.of(), "disarmed")))
                .isInstanceOf(Verdict.Broken.class);
        assertThat(verdict(LIGHT, change("map-leds", all, Map.of("map-switch-lever", "off"), "override")))
                .isInstanceOf(Verdict.Declared.class);
        assertThat(verdict(LIGHT, change("map-leds", all, Map.of("map-switch-lever", "lit"), "override")))
                .isInstanceOf(Verdict.Broken.class);
        assertThat(verdict(LIGHT, change("map-leds", all, Map.of("boot", "open"), "override")))
                .isInstanceOf(Verdict.Broken.class);
    }

    @Test
    void anInputThatReadsAnotherLevelThanDeclaredIsBroken() {
        assertThat(verdict(RADIO, change("radio-module-reads", new Becomes.Reads(false), Map.of(), "override")))
                .isInstanceOf(Verdict.Declared.class);
        assertThat(verdict(RADIO, change("radio-module-reads", new Becomes.Reads(true), Map.of(), "override")))
                .isInstanceOf(Verdict.Broken.class);
    }

    /** Two states in which the outputs stand alike are solved as one: what is declared of the one must not pass for the other. */
    @Test
    void theSameChangeInAnotherStateIsNotCoveredByADeclarationOfTheOne() {
        Brief both = ReworkedExample.brief(
                LIT,
                folder,
                (file, text) -> file.equals("kit.yaml")
                        ? text.replace("on-in: [override]", "on-in: [override, disarmed]")
                        : text);
        assertThat(result(both, LIGHT).verdict()).isInstanceOf(Verdict.Broken.class);
        assertThat(result(both, RADIO).verdict()).isInstanceOf(Verdict.Broken.class);
    }

    /** A chafed wire lights the map light in every state: that is a fault, though in override it may be lit. */
    @Test
    void aFaultThatDoesTheSameElsewhereStaysAFault() {
        Brief brief = ExamplesAreReadTest.brief(LIT);
        assertThat(FaultProver.prove(brief, PlannedExamples.job(LIT).plan(), FaultWatch.PATIENT)
                        .results())
                .filteredOn(result -> result.mishap().id().equals("output-stuck-on P1-1"))
                .singleElement()
                .satisfies(stuck -> assertThat(stuck.breaks())
                        .extracting(effect -> effect.claim())
                        .contains(LIGHT, RADIO));
    }

    @Test
    void theDeclarationOfOneOfTwoLeavesTheOtherBroken() {
        assertThat(verdict(RADIO, light("more", 100))).isInstanceOf(Verdict.Broken.class);
        assertThat(verdict(LIGHT, light("more", 100))).isInstanceOf(Verdict.Declared.class);
    }
}
