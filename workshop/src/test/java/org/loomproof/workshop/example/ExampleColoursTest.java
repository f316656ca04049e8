package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.trade.colour.ColourReader;

/** The colours and plug positions of the examples are those that the seed deals. */
class ExampleColoursTest {
    private static final Pattern COLOUR = Pattern.compile("colour: ([^,\\n]+)");
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
        List<String> sit = new ArrayList<>();
        Matcher lead = LEAD.matcher(ExampleFiles.text(ExampleFiles.root().resolve(folder), "kit.yaml"));
        while (lead.find()) {
            if (lead.group(1).equals(plug)) {
                sit.add(lead.group(2));
            }
        }
        assertThat(sit).isEqualTo(ExampleColours.dealt(seed, List.of(roles.split(",", -1))));
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
