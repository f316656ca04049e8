package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.testing.Note;

/**
 * Facts of the vehicle in notes. The corpus (25 notes) is by a hand that had not seen the reader; the first ten may be looked at, the others are only
 * scored. At the first reading of those held back 38 of 68 facts were read and 6 told wrong; since a year may end a sentence, and bodies are compared by
 * what their names mean, 42 and 4. That is why a fact is shown and never taken by itself. Facts of which a sheet and this reader have no notion (where a
 * battery is, which fuse) are not counted.
 */
class VehicleFactsTest {

    private static final int LOOKED_AT = 10;

    /** How the corpus names what a sheet, or this reader, names otherwise. */
    private static final Map<String, String> KEYS =
            Map.of("system-volts", "system-voltage", "transponder", "key", "keyless", "key");

    private static VehicleFacts facts(String text) {
        return VehicleFacts.of(Notes.lines("notes.txt", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theNotesThatMayBeLookedAtAreReadAsWellAsBefore() throws IOException {
        assertRead(0, LOOKED_AT, true, LOOKED_AT_FLOOR);
    }

    @Test
    void theNotesHeldBackAreReadAsWellAsBefore() throws IOException {
        assertRead(LOOKED_AT, Integer.MAX_VALUE, false, HELD_BACK_FLOOR);
    }

    private static final double LOOKED_AT_FLOOR = 0.9;
    private static final double HELD_BACK_FLOOR = 0.6;

    /** What is told wrong of all there is: as reached, to be lowered. */
    private static final double MOST_WRONG = 0.06;

    private static void assertRead(int from, int to, boolean tells, double floor) throws IOException {
        int right = 0;
        int wrong = 0;
        int all = 0;
        List<CorpusFile.Sheet> sheets = CorpusFile.sheets("fresh/facts.txt");
        for (CorpusFile.Sheet sheet : sheets.subList(from, Math.min(to, sheets.size()))) {
            Map<String, String> read = facts(sheet.text()).values();
            for (String answer : sheet.answers()) {
                String[] halves = answer.split("=", 2);
                String key = KEYS.getOrDefault(halves[0], halves[0]);
                Optional<String> wanted = wanted(halves[0], halves[1]);
                if (wanted.isEmpty()) {
                    continue;
                }
                all++;
                String got = read.getOrDefault(key, "");
                right += got.equals(wanted.get()) ? 1 : 0;
                wrong += got.isEmpty() || got.equals(wanted.get()) ? 0 : 1;
                if (tells && !got.equals(wanted.get())) {
                    System.out.println(sheet.name() + ": wanted " + answer + ", got " + key + "=" + got);
                }
            }
        }
        Note.that(
                "facts of the vehicle, notes " + from + " on: " + right + " of " + all + " read, " + wrong + " wrong");
        assertThat(right / (double) all).isGreaterThanOrEqualTo(floor);
        assertThat(wrong / (double) all).isLessThanOrEqualTo(MOST_WRONG);
    }

    private static Optional<String> wanted(String key, String value) {
        return switch (key) {
            case "system-volts" -> Optional.of(value + " V");
            case "transponder" -> value.equals("yes") ? Optional.of("transponder") : Optional.empty();
            case "keyless" -> value.equals("yes") ? Optional.of("proximity") : Optional.empty();
            // Bodies and fuels have many names: the one that the reader gives the corpus's own word.
            case "fuel", "body" -> Optional.of(facts(value).values().getOrDefault(key, value));
            case "year", "gearbox", "doors", "steering", "start", "ground", "drive", "tailgate" -> Optional.of(value);
            default -> Optional.empty();
        };
    }

    @Test
    void whatTwoPlacesSayDifferentlyIsTakenFromNeither() {
        VehicleFacts facts = facts("Diesel van, manual, 2009.\nCircuit notes for the automatic gearbox\n");
        assertThat(facts.values())
                .containsEntry("fuel", "diesel")
                .containsEntry("year", "2009")
                .doesNotContainKey("gearbox");
        assertThat(facts.differing()).extracting(f -> f.value()).containsExactly("manual", "automatic");
    }

    @Test
    void whatIsDeniedOrHoldsForSomeVehiclesOnlyIsNoFactOfThisOne() {
        assertThat(facts("Saloon without keyless, no push start.\nUnlock blue (-) up to 2012\n")
                        .values())
                .containsExactly(Map.entry("body", "saloon"));
    }

    @Test
    void twelveVoltsAtAWireSayNothingOfTheVehicle() {
        assertThat(facts("constant 12V red\nhorn 24V plug black\n").values()).isEmpty();
        assertThat(facts("Old truck, 24 V electrics\n").values()).containsEntry("system-voltage", "24 V");
    }

    @Test
    void bothSidesOfTheWheelAreVariantsOfWiresAndNoFact() {
        assertThat(facts("Kick panel LHD\n\nKick panel RHD\n").values()).doesNotContainKey("steering");
        assertThat(facts("Imported, right hand drive\n").values()).containsEntry("steering", "right");
    }

    @Test
    void eachFactKnowsWhereItStands() {
        var fact = facts("first\nEstate, six speed, petrol\n").agreed().get(1);
        assertThat(fact.key() + " " + fact.origin() + " " + fact.written()).isEqualTo("gearbox 2:9-17 six speed");
    }
}
