package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;

/** An opening is noticed only if it holds its level for longer than the input takes to read it. */
class HeldLongEnoughTest {

    private static final Path IN_TIME = ExampleFiles.root().resolve("circuits/openings-read-in-time");
    private static final String DOOR = "held-long-enough driver-door";
    private static final String BOOT = "held-long-enough boot";

    @TempDir
    private Path folder;

    /** The proof of the example's own plan with one text of one file changed. */
    private Proof proof(String file, String from, String to) {
        Brief brief = ReworkedExample.brief(IN_TIME, folder, (each, text) -> {
            assertThat(!each.equals(file) || text.contains(from)).isTrue();
            return each.equals(file) ? text.replace(from, to) : text;
        });
        return Prover.prove(brief, PlannedExamples.job(IN_TIME).plan());
    }

    private static Optional<Verdict> find(Proof proof, String claim) {
        return proof.results().stream()
                .filter(result -> result.id().equals(claim))
                .findFirst()
                .map(ClaimResult::verdict);
    }

    private Verdict verdict(String claim, String file, String from, String to) {
        return find(proof(file, from, to), claim).orElseThrow();
    }

    private static boolean saysThatTimeIsUnknown(Proof proof) {
        return proof.bounds().stream().anyMatch(bound -> bound.key().equals("bound.reading-time"));
    }

    /** Hand-worked: a door stands open for 1 s at least (common practice), the input takes 0.5 s. */
    @Test
    void anOpeningIsReadByAnInputThatTakesLessThanItStands() {
        assertThat(verdict(DOOR, "kit.yaml", "0.5 s", "0.5 s"))
                .isInstanceOfSatisfying(
                        Verdict.Holds.class,
                        holds -> assertThat(holds.tightest().slack()).isCloseTo(0.5, within(1e-9)));
        assertThat(verdict(DOOR, "kit.yaml", "0.5 s", "0.5..1.1 s")).isInstanceOf(Verdict.Open.class);
        assertThat(verdict(DOOR, "kit.yaml", "0.5 s", "1.1 s"))
                .isInstanceOfSatisfying(
                        Verdict.Broken.class,
                        broken -> assertThat(broken.witness().steps().stream().map(Messages.english()::text))
                                .contains("open driver-door, shut it again after 1 s, and wait for the alarm"));
        assertThat(saysThatTimeIsUnknown(proof("kit.yaml", "0.5 s", "0.5 s"))).isFalse();
    }

    /** Hand-worked: 200 a second are 5 ms a turn, 60 % of it 3 ms; the input takes 1 ms. */
    @Test
    void aWireDimmedByPulsesIsReadOnlyByAnInputFasterThanOnePulse() {
        assertThat(verdict(BOOT, "kit.yaml", "1 ms", "1 ms"))
                .isInstanceOfSatisfying(
                        Verdict.Holds.class,
                        holds -> assertThat(holds.tightest().slack()).isCloseTo(0.002, within(1e-9)));
        assertThat(verdict(BOOT, "kit.yaml", "1 ms", "4 ms")).isInstanceOf(Verdict.Broken.class);
        assertThat(verdict(BOOT, "sheet.yaml", "pulsed: 3 ms", "pulsed: 0.5..3 ms"))
                .isInstanceOf(Verdict.Open.class);
        assertThat(verdict(BOOT, "sheet.yaml", "    pulsed: 3 ms\n", "")).isInstanceOf(Verdict.Holds.class);
    }

    @Test
    void whereTheKitSaysNothingItIsABoundAndOfADimmedWireOpen() {
        Proof silentDoor = proof("kit.yaml", ", reads-after: 0.5 s", "");
        assertThat(find(silentDoor, DOOR)).isEmpty();
        assertThat(saysThatTimeIsUnknown(silentDoor)).isTrue();
        assertThat(verdict(BOOT, "kit.yaml", ", reads-after: 1 ms", ""))
                .isInstanceOfSatisfying(
                        Verdict.Open.class,
                        open -> assertThat(open.settledBy())
                                .extracting(Measurement::name)
                                .singleElement()
                                .asString()
                                .startsWith("figure-of reads-after"));
    }

    /** The dome's wire is said to follow the boot too, and does not: what the boot's own lead is too slow for, nobody notices. */
    @Test
    void aLeadThatIsTooSlowProvesNothingBesideOneThatIsNot() {
        Brief brief = ReworkedExample.brief(IN_TIME, folder, (file, text) -> switch (file) {
            case "kit.yaml" -> text.replace("1 ms", "4 ms");
            case "sheet.yaml" -> text.replace("follows: [driver-door]", "follows: [driver-door, boot]");
            default -> text;
        });
        Proof proof = Prover.prove(brief, PlannedExamples.job(IN_TIME).plan());
        assertThat(find(proof, BOOT)).containsInstanceOf(Verdict.Holds.class);
        assertThat(find(proof, "opening-seen boot")).containsInstanceOf(Verdict.Broken.class);
    }
}
