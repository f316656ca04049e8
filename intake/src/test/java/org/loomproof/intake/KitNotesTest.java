package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.kit.KitText;
import org.loomproof.intake.kit.LeadNotes;
import org.loomproof.intake.kit.LeadReading;
import org.loomproof.workshop.words.Messages;

/** Lists of leads. */
class KitNotesTest {

    private static final String LEADS = """
            Pin | Colour | Function
            1 | red | +12V battery supply, fused 15A
            2 | black | ground
            3 | green | door trigger input (-)
            4 | white/blue | (-) 200 mA starter interrupt output
            5 | brown | siren output (+) 2A, 30 sec
            6 | yellow | ignition input
            7 | pink/black | lock output negative
            8 | blue | status LED
            9 | grey | wuzzle
            """;

    private static LeadNotes read(String text) {
        return LeadNotes.of(Notes.lines("leads.txt", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static LeadReading lead(int number) {
        return read(LEADS).leads().get(number - 1);
    }

    @Test
    void leadsAreReadWithWhatTheyAreMeantForAndWhatTheyAreElectrically() {
        assertThat(read(LEADS).leads())
                .extracting(l -> l.role().map(a -> a.value().word()).orElse("-") + " "
                        + l.port().map(Enum::name).orElse("-"))
                .containsExactly(
                        "supply SUPPLY",
                        "ground GROUND",
                        "door-input LOW_INPUT",
                        "starter-interrupt LOW_SIDE",
                        "siren HIGH_SIDE",
                        "ignition-sense HIGH_INPUT",
                        "lock LOW_SIDE",
                        "indicator TO_EXTRA",
                        "- -");
    }

    @Test
    void statedRatingsAreTakenAndOthersAskedForNeverAssumed() {
        assertThat(lead(4).rating())
                .hasValueSatisfying(a -> assertThat(a.value()).isEqualTo(0.2));
        assertThat(lead(5).pulse())
                .hasValueSatisfying(s -> assertThat(s.value()).isEqualTo(30));
        assertThat(lead(7).rating()).isEmpty();
        assertThat(lead(7).asks()).extracting(p -> p.key()).containsExactly("intake.ask.rating");
        assertThat(lead(3).asks()).isEmpty();
        String text = new KitText(Messages.english()).write(read(LEADS), "leads.txt", "box");
        assertThat(text).contains("rating: 200 mA", "# ", "L7: how many amps");
        assertThat(text.lines().filter(l -> l.startsWith("#")))
                .anyMatch(l -> l.contains("survives, with cranking, load-dump and reversed"));
        assertThat(text.lines().filter(l -> l.contains("rating:"))).hasSize(2);
    }

    @Test
    void aLeadOfUnknownMeaningIsKeptAndAskedAbout() {
        assertThat(lead(9).asks()).hasSize(3);
        assertThat(new KitText(Messages.english()).write(read(LEADS), "leads.txt", "box"))
                .contains("wuzzle");
    }

    @Test
    void twoCurrentsInOneLineAreAskedAbout() {
        LeadReading lead = read("5 | brown | siren output (+) 2A or 3A\n6 | green | horn output (-) 1 A\n")
                .leads()
                .getFirst();
        assertThat(lead.rating()).isEmpty();
        assertThat(lead.asks()).isNotEmpty();
    }

    @Test
    void plugsComeFromTheirHeadingsAndNameTheLeads() {
        List<LeadReading> leads = read("""
                        Connector P1:
                        Pin | Colour | Function
                        1 | red | battery supply
                        2 | black | ground
                        """).leads();
        assertThat(leads).extracting(LeadReading::id).containsExactly("P1-1", "P1-2");
    }

    /** 87 and 87a: DIN 72552, as printed on cube relays. */
    @Test
    void contactsOfRelaysInTheBoxAreToldAndAskedForTheirFeed() {
        List<LeadReading> leads = read("""
                        Lock relays inside, five leads
                        violet : lock common
                        white : lock normally closed
                        green : lock normally open
                        brown : unlock 87a
                        grey : unlock 87
                        red : +12V, 15A fuse
                        """).leads();
        assertThat(leads)
                .extracting(l -> l.role().map(a -> a.value().word()).orElse("-") + " "
                        + l.contact().map(Enum::name).orElse("-"))
                .containsExactly("lock COMMON", "lock CLOSED", "lock OPEN", "unlock CLOSED", "unlock OPEN", "supply -");
        assertThat(leads.getFirst().port()).isEmpty();
        assertThat(leads.getFirst().asks())
                .extracting(ask -> ask.key())
                .containsExactly("intake.ask.contact", "intake.ask.rating");
        // Without relays "n/c" is a pin that is not connected.
        assertThat(read("1 | red | +12V\n2 | grey | n/c\n").leads().getLast().contact())
                .isEmpty();
    }

    @Test
    void aMinusWithACurrentIsAnOutputAndAPlusMayBeAFeed() {
        assertThat(read("1 | red | +12V\n2 | orange | wuzzle (-) 500 mA\n3 | white | wuzzle (+) 5 A\n")
                        .leads())
                .extracting(l -> l.port().map(Enum::name).orElse("-"))
                .containsExactly("SUPPLY", "LOW_SIDE", "-");
    }

    @Test
    void aPlugsNumberOfPolesIsNoPoleOfItsLeads() {
        List<LeadReading> leads = read("""
                        Connector A, 6-pole
                        1 white lamp output
                        2 grey horn output (-)
                        """).leads();
        assertThat(leads).extracting(l -> l.port().map(Enum::name).orElse("-")).containsExactly("-", "LOW_SIDE");
    }

    @Test
    void aListWithoutColumnsIsReadByItsPlugsItsNumbersAndTheSignBeforeTheAmps() {
        LeadNotes notes = read("""
                Six  lead list
                PLUG A (6 way)
                 1 red  - main 12v fused 15A
                 3 white  parking light output +10A max
                 5 orange (-) 500mA ground when armed, starter kill
                 6 brown siren out +2A
                PLUG B
                 1 green  neg door trig in
                 5 white/black  - horn 200mA
                LED two pin, service button two pin
                """);
        assertThat(notes.leads())
                .extracting(
                        l -> l.id() + " " + l.role().map(a -> a.value().word()).orElse("-") + " "
                                + l.port().map(Enum::name).orElse("-"))
                .containsExactly(
                        "A-1 supply SUPPLY",
                        "A-3 lamps HIGH_SIDE",
                        "A-5 starter-interrupt LOW_SIDE",
                        "A-6 siren HIGH_SIDE",
                        "B-1 door-input LOW_INPUT",
                        "B-5 horn -",
                        "L7 indicator TO_EXTRA",
                        "L8 override-button TO_EXTRA");
    }
}
