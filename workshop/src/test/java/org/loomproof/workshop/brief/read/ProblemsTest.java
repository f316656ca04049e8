package org.loomproof.workshop.brief.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One slip in a valid file is told in one line: place, what is the matter, found, wanted, hint. */
class ProblemsTest {

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "ground: negative | ground: negitive | 5:11 vehicle.ground: this word is not accepted here; found \"negitive\"; wanted one of: negative, positive; did you mean negative?",
                "drive: combustion | steps: 4 | 3:3 vehicle.drive: something is missing; wanted one of: combustion, hybrid, electric",
                "40 A | 40 | 32:32 circuits[battery-feed].path[1].fuse.rating: the unit is missing or does not fit; found \"40\"; wanted a number with its unit, such as 12 A; write 40 A, if that is meant",
                "40 A | 40 V | 32:32 circuits[battery-feed].path[1].fuse.rating: the unit is missing or does not fit; found \"40 V\"; wanted a number with its unit, such as 12 A; \"V\" is no unit of it",
                "1.8 m, | -1.8 m, | 33:24 circuits[battery-feed].path[2].wire.length: the value is out of range; found \"-1.8 m\"; wanted a value from 0.001 m to 1000 m",
                "0.3 ohm | -0.3 ohm | 52:66 circuits[starter].path[4].load.resistance: the value is out of range; found \"-0.3 ohm\"; wanted a value from 0.001 mΩ to 1000 MΩ",
                "1.8 m, | NaN m, | 33:24 circuits[battery-feed].path[2].wire.length: there is no number that can be read; found \"NaN m\"; wanted a number with its unit, such as 12 m",
                "1.8 m, | Infinity m, | 33:24 circuits[battery-feed].path[2].wire.length: there is no number that can be read; found \"Infinity m\"; wanted a number with its unit, such as 12 m",
                "1.8 m, | 1e300 m, | 33:24 circuits[battery-feed].path[2].wire.length: the value is out of range; found \"1e300 m\"; wanted a value from 0.001 m to 1000 m",
                "8 mohm | '\"8,5 mohm\"' | 49:95 circuits[starter].path[1].switch.closed-resistance: there is no number that can be read; found \"8,5 mohm\"; wanted a number with its unit, such as 12 ohm; write the decimal sign as a point: 8.5 mohm",
                "8..10..12 W | 12..8 W | 64:39 circuits[doors].path[2].lamp.power: the value is out of range; found \"12..8 W\"; wanted values that rise, such as 8..9..12 W",
                "- id: starter | - id: doors | 54:9 circuits[doors].id: the name is given twice; found \"doors\"; wanted another name; the other one is on line 36",
                "operated-by: key | operated-by: keys | 49:51 circuits[starter].path[1].switch.operated-by: nothing has this name; found \"keys\"; wanted one of: key, driver-door, cargo-door, hood, light-switch; did you mean key?",
                "closed-at: [start] | closed-at: [crank] | 49:68 circuits[starter].path[1].switch.closed-at[0]: nothing has this name; found \"crank\"; wanted one of: off, accessory, on, start",
                "follows: [driver-door, cargo-door] | follows: [driver-door, boot] | 59:28 circuits[doors].follows[1]: nothing has this name; found \"boot\"; wanted one of: key, driver-door, cargo-door, hood, light-switch",
                "- point: key-switch-feed | - point: other-feed | 48:16 circuits[starter].path[0].point: nothing has this name; found \"key-switch-feed\"; wanted a point that another path names too, or a path that goes on",
                "- here | - lamp | 31:7 circuits[battery-feed].path: something is missing; wanted the word here once, at the wire this entry describes; it says where a tap or a cut would be made",
                "rest: ground | rest: grounded | 41:11 circuits[starter].rest: this word is not accepted here; found \"grounded\"; wanted one of ground, supply, open, reversing, data, a resistance such as 820 ohm, or a voltage such as 5 V; did you mean ground?",
                "rest: supply | rest: open | 26:11 circuits[battery-feed].rest: two statements contradict each other; found \"open\"; wanted rest: supply, since the path joins the wire to supply at all times; change the one that the meter does not bear out",
                "colour: RD | colour: mud | 24:13 circuits[battery-feed].colour: the colour cannot be read; found \"mud\"; wanted a colour, such as GN/BK or green with a black stripe; base first, stripe second; letters of IEC 60757: BK BN RD OG YE GN BU VT GY WH PK TQ",
                "gearbox: manual | gearbox: [manual | 7:8: this is not YAML as we read it; found \"drive: combustion\"; wanted YAML; the YAML reader says: expected ',' or ']', but got :",
                "gearbox: manual | key: plain | 9:3: the key is given twice; found \"key\"; wanted each key once; take out one of the two",
                "sheet 1 | sheet 2 | 1:9 format: this is not a file of the expected format; found \"loomproof sheet 2\"; wanted the line \"format: loomproof sheet 1\"; the line says what the file is and by which edition of the format it was written",
                "load: {id: starter-solenoid | laod: {id: starter-solenoid | 52:9 circuits[starter].path[4]: this word is not accepted here; found \"laod\"; wanted one of: supply, ground, here, point, fuse, wire, switch, coil, contact, lamp, load, resistor, diode, input; did you mean load?",
                "lamp: {id: cabin-lamp, power: 8..10..12 W} | coil: {relay: cabin} | 64:23 circuits[doors].path[2].coil.relay: nothing has this name; found \"cabin\"; wanted the name of a relay that has a contact on the sheet",
                "lamp: {id: cabin-lamp, power: 8..10..12 W} | wire: {length: 2 m, resistance: 1 ohm} | 64:41 circuits[doors].path[2].wire.resistance: two statements contradict each other; found \"1 ohm\"; wanted either length and size, or the resistance",
                "lamp: {id: cabin-lamp, power: 8..10..12 W} | switch: {operated-by: hood, closed-at: [open]} | 67:9 circuits[doors].path[5]: two statements contradict each other; found \"ground\"; wanted a load, a lamp, a coil or a resistor between supply and ground; as written this blows a fuse",
                "age-years: 3 | age-years: three | 12:41 vehicle.battery.age-years: there is no number that can be read; found \"three\"; wanted years from 0 to 50, such as 3 or 2.5",
                "id: hood, kind: hood | id: key, kind: hood | 17:10 openings[key].id: the name is given twice; found \"key\"; wanted another name: key is the ignition key, which every vehicle has",
                "certainty: guessed | certainty: assumed | 76:16 circuits[side-lamps].certainty: this word is not accepted here; found \"assumed\"; wanted one of: verified, stated, guessed; a circuit that nobody has stated is left out; single figures may be marked assumed",
            })
    void ofASheet(String before, String after, String told) {
        assertThat(GivenTexts.valid().withSheet(before, after).problems())
                .anySatisfy(line -> assertThat(line).isEqualTo("sheet.yaml:" + told));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "kit 1 | order 1 | 1:9 format: this is not a file of the expected format; found \"loomproof order 1\"; wanted the line \"format: loomproof kit 1\"; the line says what the file is and by which edition of the format it was written",
                "standby: 12 mA} | standby: 12 mA, survives: {craking: 6 V}} | 2:71 kit.survives.craking: there is no such key here; found \"craking\"; wanted one of: cranking, load-dump, reversed; did you mean cranking?",
                "standby: 12 mA} | standby: 12 mA, survives: {reversed: 3 ohm}} | 2:81 kit.survives.reversed: the unit is missing or does not fit; found \"3 ohm\"; wanted a number with its unit, such as 12 V; \"ohm\" is no unit of it",
                "8..16 V | 12 V | 2:35 kit.supply: the entry has the wrong shape; found \"12 V\"; wanted the least and the most supply, such as 8..16 V",
                "extra: indicator | extra: indicateur | 23:88 leads[P2-1].port.extra: nothing has this name; found \"indicateur\"; wanted one of: indicator, siren; did you mean indicator?",
                "lead: P1-4 | lead: P1-3 | 34:14 behaviour.outputs[0].lead: two statements contradict each other; found \"P1-3\"; wanted a lead whose port is low-side or high-side, or goes to an extra",
                "triggers: [P1-3] | triggers: [P1-5] | 31:14 behaviour.triggers[0]: two statements contradict each other; found \"P1-5\"; wanted a lead whose port is an input or goes to an extra",
                "instant: [] | instant: [P2-1] | 32:13 behaviour.instant[0]: two statements contradict each other; found \"P2-1\"; wanted a lead that is among the triggers",
                "[{lead: P1-3, | [{lead: P9-3, | 25:110 options[0].settings[1].ports[0].lead: nothing has this name; found \"P9-3\"; wanted one of: P1-1, P1-2, P1-3, P1-4, P1-5, P2-1; did you mean P1-3?",
                "[{lead: P1-3, | [{lead: P1-5, | 25:110 options[0].settings[1].ports[0].lead: two statements contradict each other; found \"P1-5\"; wanted an input for a lead that is an input, an output for one that is an output; the others cannot be set",
                "[{lead: P1-3, | [{lead: P1-1, | 25:110 options[0].settings[1].ports[0].lead: two statements contradict each other; found \"P1-1\"; wanted an input for a lead that is an input, an output for one that is an output; the others cannot be set",
                "{name: ground when open}, {name: supply when open, | {name: supply when open, | 25:76 options[0].settings[0].ports: two statements contradict each other; found \"[…]\"; wanted no ports in the first setting: it is how the kit comes, which its leads state",
                "name: supply when open | name: ground when open | 25:77 options[0].settings[1].name: the name is given twice; found \"ground when open\"; wanted another name; the other one is on line 25",
                "low-below: 2 V | low-below: 5 V | 12:11 leads[P1-3].port: two statements contradict each other; found \"5 V, 4 V\"; wanted low-below at or under high-above",
                "position: \"2\" | position: \"1\" | 5:36 leads[P1-2].position: the name is given twice; found \"1\"; wanted another name; the other one is on line 4",
                "on-in: sounding | on-in: without-supply | 35:27 behaviour.outputs[1].on-in: this word is not accepted here; found \"without-supply\"; wanted one of: disarmed, arming, armed, warning, sounding, override",
                "role: ground, always-used: yes, port: {kind: ground} | role: ground, port: {kind: supply} | 5:72 leads[P1-2].role: two statements contradict each other; found \"ground\"; wanted a port of the same kind for a lead that feeds the controller: ground",
                "clamps: yes | clamps: true | 12:97 leads[P1-3].port.clamps: this word is not accepted here; found \"true\"; wanted one of: yes, no",
            })
    void ofAKit(String before, String after, String told) {
        assertThat(GivenTexts.valid().withKit(before, after).problems()).containsExactly("kit.yaml:" + told);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "watch: all | watch: [driver-dor] | 3:9 watch[0]: nothing has this name; found \"driver-dor\"; wanted one of: driver-door, cargo-door, hood; did you mean driver-door?",
                "{starter: 1.2 m} | {start: 1.2 m} | 8:91 shop.runs: nothing has this name; found \"start\"; wanted one of: battery-feed, starter, doors, side-lamps",
                "21 days | 3 weeks | 7:17 longest-unused: there is no number that can be read; found \"3 weeks\"; wanted days up to 3650, such as 21 days",
                "siren] | siren, basics] | 4:35 wants[2]: this word is not accepted here; found \"basics\"; wanted one of: watch-openings, starter-interrupt, siren, horn, second-sounder, lamps, interior-light, locks, lock-actuators, trunk-release, windows, shock-sensor, further-sensors, indicator, override-button, remote-start, engine-stop-while-moving, ignition-or-pump-cut, tracker",
                "coldest: -20 C | coldest: 70 C | 8:7 shop: two statements contradict each other; found \"70 °C, 60 °C\"; wanted coldest at or under hottest",
                "coldest: -20 C | coldest: -20 C, insulation: 59 C | 8:7 shop: two statements contradict each other; found \"59 °C, 60 °C\"; wanted insulation that bears 60 °C or more, and more than hottest",
                "coldest: -20 C | coldest: -20 C, insulation: 60 C | 8:7 shop: two statements contradict each other; found \"60 °C, 60 °C\"; wanted insulation that bears 60 °C or more, and more than hottest",
                "stock: [] | stock: [blue box] | 9:9 stock[0]: nothing has this name",
                "stock: [] | changes: [{of: cabin-lump, becomes: more, by: 20 %, told: t, because: b}] | 9:16 changes[0].of: nothing has this name; found \"cabin-lump\"; wanted one of: cabin-lamp",
                "stock: [] | changes: [{of: starter-solenoid, becomes: less, by: 20 %, told: t, because: b}] | 9:16 changes[0].of: nothing has this name; found \"starter-solenoid\"; wanted one of: cabin-lamp",
                "stock: [] | changes: [{of: cabin-lamp, becomes: low, told: t, because: b}] | 9:37 changes[0].becomes: this word is not accepted here; found \"low\"; wanted one of: more, less",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 5 %, told: t, because: b}] | 9:47 changes[0].by: the value is out of range; found \"5 %\"; wanted a share over 5 % and up to 100 %, such as 20 %",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, told: t, because: b}] | 9:11 changes[0].by: something is missing; wanted an entry by",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20 %, because: b}] | 9:11 changes[0].told: something is missing; wanted an entry told",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20 %, when: {hood: ajar}, told: t, because: b}] | 9:66 changes[0].when.hood: this word is not accepted here; found \"ajar\"; wanted one of: closed, open",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20 %, when: {controller: without-supply}, told: t, because: b}] | 9:72 changes[0].when.controller: this word is not accepted here; found \"without-supply\"; wanted one of: disarmed, arming, armed, warning, sounding, override",
                "stock: [] | changes: [{of: cabin-lamp, becomes: more, by: 20 %, told: t, because: b}, {of: cabin-lamp, becomes: less, by: 20 %, told: t, because: b}] | 9:80 changes[1].of: the name is given twice; found \"cabin-lamp\"; wanted another name; the other one is on line 9",
                "job: van 12 | jib: van 12 | 1:1 job: something is missing; wanted an entry job",
            })
    void ofAnOrder(String before, String after, String told) {
        assertThat(GivenTexts.valid().withOrder(before, after).problems())
                .anySatisfy(line -> assertThat(line).startsWith("order.yaml:" + told));
    }

    @Test
    void problemsOfAllThreeFilesAreToldAtOnceEachFileInTheOrderOfItsText() {
        assertThat(GivenTexts.valid()
                        .withSheet("steering: left", "steering: middle")
                        .withSheet("ground: negative", "ground: none")
                        .withKit("role: siren", "role: sirene")
                        .withOrder("joint: solder", "joint: glue")
                        .problems())
                .extracting(line -> line.substring(0, line.indexOf(' ')))
                .containsExactly("sheet.yaml:5:11", "sheet.yaml:10:13", "kit.yaml:21:11", "order.yaml:8:15");
    }

    @Test
    void aCarWithoutElectronicsSleepsWithoutCurrentAndNothingElseDrawsNone() {
        assertThat(GivenTexts.valid()
                        .withSheet("sleep-current: 18 mA", "sleep-current: 0 mA")
                        .problems())
                .isEmpty();
        assertThat(GivenTexts.valid().withKit("standby: 12 mA", "standby: 0 mA").problems())
                .anyMatch(line -> line.contains("out of range"));
    }

    @Test
    void aBlankBehindAKeyCountsAsLeftOut() {
        assertThat(GivenTexts.valid().withSheet("gearbox: manual", "gearbox:").problems())
                .isEmpty();
        assertThat(GivenTexts.valid().withSheet("drive: combustion", "drive: ~").problems())
                .containsExactly("sheet.yaml:7:10 vehicle.drive: something is missing; "
                        + "wanted one of: combustion, hybrid, electric");
    }

    @Test
    void aCommaForADecimalPointInsideBracesIsExplainedThoughItSplitsTheEntry() {
        assertThat(GivenTexts.valid().withSheet("1.8 m,", "1,8 m,").problems())
                .last()
                .asString()
                .endsWith("a comma ends an entry here; a decimal sign is written as a point");
    }
}
