package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Finding;
import org.loomproof.intake.check.ReadNotes;

/** What one line says of several circuits, what a line elsewhere says of many, and for which vehicles a line holds. */
class ManyInOneTest {

    private static List<String> shown(String text) {
        return Notes.read(text).entries().stream()
                .map(e -> String.join(";", Scores.fields(e))
                        + (e.steering().isEmpty() ? "" : " " + e.steering())
                        + (e.validity().isEmpty() ? "" : " [" + e.validity() + "]"))
                .toList();
    }

    @Test
    void twoNamesWithTwoColoursAreTwoCircuitsThatShareTheRest() {
        assertThat(shown("Lock / unlock: GRN, BLU (both -) at driver door boot"))
                .containsExactly("lock;GN;neg;driver door boot||", "unlock;BU;neg;driver door boot||");
        assertThat(
                        shown(
                                "Circuit | Colour | Polarity | Where\nHorn | grey | - | column\nCerrar/abrir | rojo y negro | - | kick\n"))
                .containsExactly("horn;GY;neg;column||", "lock;RD;neg;kick||", "unlock;BK;neg;kick||");
    }

    @Test
    void aTwoColouredWireIsNotTakenForTwoWires() {
        assertThat(shown("Lock / unlock: green/blue at kick panel")).hasSize(1);
    }

    @Test
    void twoLabelsInOneLineAreTwoCircuits() {
        assertThat(shown("Horn: black/red (-)    Brake: violet (+)\nIgnition: pink (+); Starter: yellow (+)"))
                .containsExactly("horn;BK/RD;neg;||", "brake;VT;pos;||", "ignition;PK;pos;||", "starter;YE;pos;||");
    }

    @Test
    void aLegendOfTheNotesGoesBeforeTheDictionaries() {
        assertThat(shown("""
                        Signs: (G) = makes ground, (P) = makes positive
                        V = violet, B = black, DKP = driver kick panel
                        Horn (G): V/B at DKP
                        Brake (P): B at DKP
                        """))
                .containsExactly("horn;VT/BK;neg;driver kick panel||", "brake;BK;pos;driver kick panel||");
        assertThat(shown("ne negro, ro rojo, ve verde\nbocina: ve/ne (-)\nfreno: ro (+)\n"))
                .containsExactly("horn;GN/BK;neg;||", "brake;RD;pos;||");
    }

    @Test
    void whoWritesGnForGreenMeansGreyByGr() {
        assertThat(shown("Horn | gr/sw | -\nBrake | gn/gr | +\n"))
                .containsExactly("horn;GY/BK;neg;||", "brake;GN/GY;pos;||");
        assertThat(shown("Horn | gr/sw | -\nBrake | ge/rt | +\n").getFirst()).startsWith("horn;;");
    }

    @Test
    void aListOfCircuitsIsNoLegend() {
        assertThat(shown("hrn = grey (-)\nbrake = green (+)\nhorn = black (-)\n"))
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(shown("IGN = pink\nACC = orange\n")).containsExactly("ignition;PK;;||", "accessory;OG;;||");
    }

    @Test
    void columnsForOneSideOfTheWheelGiveAnEntryEach() {
        assertThat(
                        shown(
                                "Circuit | Pole | LHD | RHD\nDoor pin | - | red, left kick | blue, right kick\nHorn | - | grey | black\n"))
                .containsExactly(
                        "door-trigger;RD;neg;left kick|| LHD",
                        "door-trigger;BU;neg;right kick|| RHD",
                        "horn;GY;neg;|| LHD",
                        "horn;BK;neg;|| RHD");
        assertThat(shown("Circuit | Colour LHD | Colour RHD\nHorn | grey | black\nBrake | red | red\n"))
                .containsExactly("horn;GY;;|| LHD", "horn;BK;;|| RHD", "brake;RD;;|| LHD", "brake;RD;;|| RHD");
    }

    @Test
    void whatHoldsForSomeVehiclesOnlyIsToldAndIsNoConflictWithTheOthers() {
        String text = """
                Circuit | Colour | Pol | Remarks
                Lock | green | - | only with factory alarm
                Lock | blue | - | base trim
                Horn | black | - | up to 2012
                Horn | white | - | from 2013
                """;
        assertThat(shown(text))
                .containsExactly(
                        "lock;GN;neg;|| [only with factory alarm]",
                        "lock;BU;neg;|| [base trim]",
                        "horn;BK;neg;|| [up to 2012]",
                        "horn;WH;neg;|| [from 2013]");
        assertThat(Notes.read(text).findings()).isEmpty();
        assertThat(Notes.read(text.replaceAll("(?m) \\| [^|]*$", "")).entriesWith(Finding.Kind.CONFLICT))
                .hasSize(4);
    }

    @Test
    void aHeadingMayBindWhatStandsBelowIt() {
        assertThat(shown("cars with keyless:\nLock green (-)\n\nfahrzeuge ohne keyless:\nLock violet (-)\n"))
                .containsExactly("lock;GN;neg;|| [cars with keyless]", "lock;VT;neg;|| [fahrzeuge ohne keyless]");
    }

    @Test
    void sameAsAnotherCircuitIsFollowedAlsoOverTwoRows() {
        ReadNotes notes = Notes.read("""
                Circuit | Colour | Pol | Where
                Ignition | pink | + | key barrel plug
                Horn | same as lock | - | same as ignition
                Lock | green | - | see horn
                Brake | red | + | same as the wuzzle
                """);
        assertThat(notes.entries().stream().map(e -> String.join(";", Scores.fields(e))))
                .containsExactly(
                        "ignition;PK;pos;key barrel plug||",
                        "horn;GN;neg;key barrel plug||",
                        "lock;GN;neg;key barrel plug||",
                        "brake;RD;pos;same as the wuzzle||");
        Entry horn = notes.entries().get(1);
        assertThat(horn.spot().orElseThrow().origin().line()).isEqualTo(3);
        assertThat(horn.spot().orElseThrow().sure()).isLessThan(0.95);
    }

    @Test
    void theSamePlaceIsThatOfTheCircuitBefore() {
        assertThat(shown(
                        "Lock: green (-), left kick panel\nUnlock: blue (-), same plug\nHorn: grey (-), mismo lugar\n"))
                .containsExactly(
                        "lock;GN;neg;left kick panel||",
                        "unlock;BU;neg;left kick panel||",
                        "horn;GY;neg;left kick panel||");
    }

    @Test
    void aLineAboveAListSaysHowAllOfItSwitchWhereItIsAndWhatItIsFor() {
        assertThat(
                        shown(
                                "Windows (all reverse polarity, driver door harness)\nLF up: red\nLF down: blue\nRF up: grey\n"))
                .containsExactly(
                        "window;RD;rev;driver door harness||",
                        "window;BU;rev;driver door harness||",
                        "window;GY;rev;driver door harness||");
        // The next list is another one.
        assertThat(shown("Locks, all reverse polarity\nLock: red\nUnlock: blue\n\nHorn: grey\nBrake: green\n"))
                .endsWith("horn;GY;;||", "brake;GN;;||");
    }

    @Test
    void aPlaceSaidOnceHoldsForTheListUnlessALineHasItsOwn() {
        assertThat(shown("Horn: grey (-)\nBrake: green (+), brake pedal\nLock: blue (-)\nLocation: left kick panel\n"))
                .containsExactly(
                        "horn;GY;neg;left kick panel||", "brake;GN;pos;brake pedal||", "lock;BU;neg;left kick panel||");
        assertThat(shown("Horn: grey (-)\nBrake: green (+)\nLock: blue (-)\neverything at the steering column\n"))
                .allMatch(entry -> entry.endsWith("steering column||"));
        // Two such lines: nobody knows which holds for which.
        assertThat(shown("Horn: grey\nBrake: green\nLocation: dash\nLock: blue\nLocation: left kick panel\n"))
                .noneMatch(entry -> entry.startsWith("horn") && entry.contains("dash"));
    }

    @Test
    void aSentenceThatBeginsWithAPlaceSpeaksOfItThroughout() {
        assertThat(shown("At the ignition switch the constant is red, the starter is yellow, the accessory is orange. "
                        + "The horn is grey."))
                .startsWith(
                        "constant-supply;RD;;ignition switch||",
                        "starter;YE;;ignition switch||",
                        "accessory;OG;;ignition switch||")
                .endsWith("horn;GY;;||");
    }

    @Test
    void arrowsBracketsAndIndentedFieldsAreColumnsToo() {
        assertThat(shown("HORN => red => column\nBRAKE => green/white => pedal\n"))
                .containsExactly("horn;RD;;column||", "brake;GN/WH;;pedal||");
        assertThat(shown("[ ][horn][grey][-][column]\n[x][brake][green][+][pedal]\n[ ][lock][blue][-][kick panel]\n"))
                .containsExactly("horn;GY;neg;column||", "brake;GN;pos;pedal||", "lock;BU;neg;kick panel||");
        assertThat(shown("Horn\n  grey\n  -\n  column\nBrake\n  green with white\n  +\n  above the pedal\n"))
                .containsExactly("horn;GY;neg;column||", "brake;GN/WH;pos;above the pedal||");
    }

    @Test
    void bothSidesOfTheWheelInOneLineAreTwoEntries() {
        assertThat(shown("Ignition LHD black/red, RHD black/blue, both + at column\nHorn: grey (-)\n"))
                .startsWith("ignition;BK/RD;pos;column|| LHD", "ignition;BK/BU;pos;column|| RHD");
    }

    @Test
    void twoTwoColouredWiresInOneSentenceAreTwoCircuits() {
        assertThat(shown("There are two starter wires, black/yellow and black/green, both at the ignition switch."))
                .containsExactly("starter;BK/YE;;ignition switch||", "second-starter;BK/GN;;ignition switch||");
        assertThat(shown("The horn is red and black at the column. The brake is green."))
                .hasSize(2);
    }

    @Test
    void aPlusThatStandsByItselfBehindTheColourIsAPole() {
        assertThat(shown("Ignition black/red + column\nHorn black - column\n").getFirst())
                .isEqualTo("ignition;BK/RD;pos;column||");
    }

    @Test
    void whatStandsBehindTheColourOfAnUnknownNameIsNoName() {
        Entry entry = Notes.read("Wuzzle feedback: green/red, negative, door lock\nHorn: grey, -, column\n")
                .entries()
                .getFirst();
        assertThat(entry.name()).isEqualTo("Wuzzle feedback");
        assertThat(entry.role().filter(role -> role.sure() > 0.9)).isEmpty();
    }
}
