package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.trade.colour.ColourReader;

/** The colours and plug positions of the examples are those that the seed deals. */
class ExampleColoursTest {
    private static final Pattern COLOUR = Pattern.compile("colour: ([^,\\n]+)");
    private static final Pattern SEED = Pattern.compile("^dealt-by: (\\d+)", Pattern.MULTILINE);
    private static final Pattern LEAD = Pattern.compile("plug: (P\\d),.*?role: ([a-z-]+)");

    @ParameterizedTest
    @CsvSource({
        "bakery-van, 4101",
        "small-hatchback, 5210",
        "coupe-without-electric-locks, 6303",
        "refused/remote-start-on-manual, 7450",
    })
    void sheetAndKitWearTheColoursThatTheSeedDeals(String folder, long seed) {
        Path example = ExampleFiles.root().resolve(folder);
        List<String> worn = colours(ExampleFiles.text(example, "sheet.yaml"));
        worn.addAll(colours(ExampleFiles.text(example, "kit.yaml")));
        assertThat(worn).hasSizeGreaterThan(15).isEqualTo(ExampleColours.colours(seed, worn.size()));
    }

    @Test
    void theWaitingEstateWearsItsOwnColoursAndTheKitOfTheVan() {
        Path estate = ExampleFiles.root().resolve("estate-waiting-for-readings");
        List<String> worn = colours(ExampleFiles.text(estate, "sheet.yaml"));
        assertThat(worn).hasSize(5).isEqualTo(ExampleColours.colours(8117, worn.size()));
        assertThat(ExampleFiles.text(estate, "kit.yaml"))
                .isEqualTo(ExampleFiles.text(ExampleFiles.root().resolve("bakery-van"), "kit.yaml"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "bakery-van; 4102; P1; supply,ground,ignition-sense,starter-interrupt,siren,lamps,horn",
                "bakery-van; 4104; P3; lock,unlock,trunk-release,window",
                "small-hatchback; 5211; P1; supply,ground,starter-interrupt,lamps,lamps,horn,ignition-sense",
                "small-hatchback; 5214; P4; lock,unlock,trunk-release",
                "coupe-without-electric-locks; 6304; P1; supply,ground,starter-interrupt,lamps,siren,ignition-sense",
                "coupe-without-electric-locks; 6305; P2; door-input,hood-input,trunk-input,lock,unlock",
                "refused/remote-start-on-manual; 7451; P1;"
                        + " supply,ground,starter-interrupt,siren,lamps,ignition-sense,remote-start",
            })
    void leadsSitWhereTheSeedPutsThem(String folder, long seed, String plug, String roles) {
        assertThat(roles(ExampleFiles.root().resolve(folder), plug))
                .isEqualTo(ExampleColours.dealt(seed, List.of(roles.split(",", -1))));
    }

    @ParameterizedTest
    @MethodSource("dealtByTheirOwnSeed")
    void aCircuitsColoursAndPlugPositionsAreThoseOfItsSeed(Path folder) {
        long seed = seed(folder).orElseThrow();
        List<String> worn = colours(ExampleFiles.text(folder, "sheet.yaml"));
        worn.addAll(colours(ExampleFiles.text(folder, "kit.yaml")));
        List<String> roles = roles(folder, "P1");
        assertThat(worn).isEqualTo(ExampleColours.colours(seed, worn.size()));
        assertThat(roles)
                .isEqualTo(
                        ExampleColours.dealt(seed + 1, roles.stream().sorted().toList()));
    }

    static List<Path> dealtByTheirOwnSeed() {
        return ExampleFiles.list().stream()
                .filter(folder -> seed(folder).isPresent())
                .toList();
    }

    private static OptionalLong seed(Path folder) {
        Matcher line = SEED.matcher(ExampleFiles.text(folder, "expected.yaml"));
        return line.find() ? OptionalLong.of(Long.parseLong(line.group(1))) : OptionalLong.empty();
    }

    private static List<String> roles(Path folder, String plug) {
        List<String> sit = new ArrayList<>();
        Matcher lead = LEAD.matcher(ExampleFiles.text(folder, "kit.yaml"));
        while (lead.find()) {
            if (lead.group(1).equals(plug)) {
                sit.add(lead.group(2));
            }
        }
        return sit;
    }

    private static List<String> colours(String yaml) {
        List<String> letters = new ArrayList<>();
        Matcher colour = COLOUR.matcher(yaml);
        while (colour.find()) {
            letters.add(ColourReader.read(colour.group(1)).orElseThrow().letters());
        }
        return letters;
    }
}
