package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.workshop.brief.Certainty;

/** The shapes that notes come in, and the dresses of colours, poles and names, one small text each. */
class LayoutsTest {

    private static List<String> shown(String text) {
        return Notes.read(text).entries().stream()
                .map(e -> String.join(";", Scores.fields(e)))
                .toList();
    }

    private static String shownFirst(String text) {
        return shown(text).getFirst();
    }

    @Test
    void severalTablesInOneFileHaveTheirOwnColumns() {
        assertThat(shown("""
                        Circuit | Colour | Pol | Where
                        Horn | grey | - | column
                        Brake | green | + | pedal

                        Wire,Function,Location,Polarity
                        pink,Ignition,switch harness,positive
                        yellow,Starter,switch harness,positive
                        """))
                .containsExactly(
                        "horn;GY;neg;column||",
                        "brake;GN;pos;pedal||",
                        "ignition;PK;pos;switch harness||",
                        "starter;YE;pos;switch harness||");
    }

    @Test
    void aTableNeedsNoHeaderAndACellMayGoOnInTheNextRow() {
        assertThat(shown("Horn\tgrey\t-\tcolumn\nBrake\tgreen with\t+\tbrake\n\tblack\t\tpedal\n"))
                .containsExactly("horn;GY;neg;column||", "brake;GN/BK;pos;brake pedal||");
    }

    @Test
    void anEmptyFirstCellBeforeAStrokeIsACellAndNoEdge() {
        assertThat(shown("""
                        Circuit   | Colour      | Pol | Place
                        Horn      | green with  | -   | steering column,
                                  | white       |     | top
                        Starter   | yellow/     | +   | ignition switch
                                  | black       |     | harness
                        """))
                .containsExactly(
                        "horn;GN/WH;neg;steering column, top||", "starter;YE/BK;pos;ignition switch harness||");
    }

    @Test
    void aWordSpeltByEarIsReadAndNeverSure() {
        for (String misspelt : List.of("ignishun", "akcesory")) {
            Entry entry = Notes.read("Circuit | Colour | Pol\n" + misspelt + " | red | +\nhorn | grey | -\n")
                    .entries()
                    .getFirst();
            assertThat(entry.role()).as(misspelt).isPresent();
            assertThat(entry.role().orElseThrow().sure()).as(misspelt).isLessThanOrEqualTo(0.6);
        }
        Entry colour = Notes.read("Circuit | Colour | Pol\nhorn | perpul | -\nbrake | grey | +\n")
                .entries()
                .getFirst();
        assertThat(colour.colour().orElseThrow().value().letters()).isEqualTo("VT");
        assertThat(colour.colour().orElseThrow().sure()).isLessThanOrEqualTo(0.6);
    }

    @Test
    void aSentenceGivesTheCircuitANameThatCanBeRead() {
        assertThat(Notes.read(
                                "So on this one you will find that the rear left door switch wire is green/black, negative, in the sill.")
                        .entries())
                .extracting(Entry::name)
                .containsExactly("rear left door switch wire");
        assertThat(Notes.read("-> horn ... grey\n-> lock ... green (-)").entries())
                .extracting(Entry::name)
                .containsExactly("horn", "lock");
    }

    @Test
    void aLineThatSaysNothingButAPlugAndWhereItIsStandsOverWhatFollows() {
        assertThat(shown("""
                        Driver kick panel:
                          door pins    dk blue     ground when open
                          pos. lights  brown       (+)  18 ga
                        BCM plug C3
                          lock         grey/red    neg. pulse   cav 4
                          unlock       grey/black  neg. pulse   cav 5
                        """))
                .containsExactly(
                        "door-trigger;BU;neg;Driver kick panel||",
                        "parking-lamp;BN;pos;Driver kick panel||",
                        "lock;GY/RD;neg;BCM|C3|4",
                        "unlock;GY/BK;neg;BCM|C3|5");
    }

    @Test
    void aSentenceAmongLinesWithLabelsTakesNothingOfThem() {
        assertThat(shown("""
                        Notes of a colleague, some of them
                        Horn = green/white, steering column, to ground
                        Ignition 1 = pink/blue, ignition switch (+)
                        Ignition 2: grey/red
                        The door switch is brown/green and goes to ground when open; the trunk switch is brown/blue.
                        mystery wire: champagne, -
                        No fuel pump wire on this one.
                        """))
                .startsWith(
                        "horn;GN/WH;neg;steering column||",
                        "ignition;PK/BU;pos;ignition switch||",
                        "second-ignition;GY/RD;;||");
    }

    @Test
    void anArrowIsNoMinus() {
        assertThat(shown("-> horn ...... grey\n-> lock ...... green (-)"))
                .containsExactly("horn;GY;;||", "lock;GN;neg;||");
        assertThat(shownFirst("rpm signal -> violet at the coil")).startsWith("tachometer;VT;;");
    }

    @Test
    void aLampThatIsNamedAfterAMovementSwitchesAsIsSaid() {
        assertThat(shownFirst("Reverse lamp: red/blue, +, gear lever")).startsWith("other;RD/BU;pos;");
    }

    /** Each has one meaning more likely than others; none is so clear that nobody need look. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Lock: green. Straight to earth = lock, 680 ohm to earth = unlock. | POLARITY
                    Unlock leg: blue/orange, resting at ground                      | POLARITY
                    """)
    void whereTwoWaysAreToldOrOnlyTheRestNobodyIsSure(String text, Field field) {
        Entry entry = Notes.read(text).entries().getFirst();
        assertThat(entry.behaviour().map(Answer::sure).orElse(0.0))
                .as(field + " of " + text)
                .isLessThan(0.95);
    }

    @Test
    void twoColoursInATableOfOneCircuitAreNotSure() {
        Entry entry = Notes.read("""
                        Circuit, Colour, Pole
                        Lock / unlock: green/blue, green/red, -
                        Horn, grey/black, -
                        """).entries().getFirst();
        assertThat(entry.colour().map(Answer::sure).orElse(0.0)).isLessThan(0.95);
    }

    @Test
    void aStripeInAColourNobodyKnowsLeavesTheColourOpen() {
        assertThat(shownFirst("Lock: beige and copper dots, negative")).isEqualTo("lock;;neg;||");
        assertThat(shownFirst("Horn: RED/WHT/under the column, negative")).startsWith("horn;RD/WH;neg;");
    }

    @Test
    void whereEachColourStandsFirstWhatFollowsIsThatWires() {
        assertThat(shown("""
                        Dark green. That is the stop lamp.

                        Light green with white. Goes to the horn.

                        Black with red. Door switch, negative.
                        """)).containsExactly("brake;GN;;||", "horn;GN/WH;;||", "door-trigger;BK/RD;neg;||");
    }

    @Test
    void inColumnsOfPaperAColourGoesOnBelowItsStrokeAndAPlaceInItsColumn() {
        assertThat(shown("""
                          SUMMARY OF A HATCH                                     page 3

                          Circuit            Colour            Pol.   Location
                          12 volts           RED/              (+)    fuse box,
                          constant           YEL                      left
                          Ignition           PNK               (+)    ignition
                                                                      switch harness
                          Starter            YEL/BLK           (+)    same as ignition
                          Door trigger,      GRY/              (-)    BCM, plug C2
                          driver             BLU                      pin 14
                          Power lock         GRN               5 wire left kick panel
                          Trunk pin          BLK/WHT  \u2020        (-)    rear trim
                          \u2020 verify with a meter
                        """))
                .containsExactly(
                        "constant-supply;RD/YE;pos;fuse box, left||",
                        "ignition;PK;pos;ignition switch harness||",
                        "starter;YE/BK;pos;ignition switch harness||",
                        "door-trigger;GY/BU;neg;BCM|C2|14",
                        "lock;GN;rev;left kick panel||",
                        "trunk-trigger;BK/WH;neg;rear trim||");
    }

    @Test
    void whatStandsAboveTheRowsOrTellsOfTheCarIsNoCircuit() {
        assertThat(
                        shown(
                                "Datos del Brindle furg\u00f3n (2011)\n\ncable de ignition | rosa | 12v+ | clausor\nfreno | blanco | + al pisar | pedal\n"))
                .containsExactly("ignition;PK;pos;clausor||", "brake;WH;pos;pedal||");
        assertThat(
                        shown(
                                "Hi. I had the grey Brindle on the lift. The horn wire is black (-) at the column and the starter is yellow there too."))
                .containsExactly("horn;BK;neg;column||", "starter;YE;;column||");
        assertThat(shown("SUMMARY   page 3\n\n3. Front   4. Rear\n\nHorn   grey   (-)\nBrake   green   (+)\n"))
                .containsExactly("horn;GY;neg;||", "brake;GN;pos;||");
    }

    /** Typed as it comes: gaps here and there, a sign by itself, a column left out, two wires in a row, what there is none of. */
    @Test
    void aCellOfAHeadlessTableIsWhatItSaysWhereItsColumnSaysOtherwise() {
        List<String> read = shown("""
                Driver kick panel:
                12v constant ..... red/yel (thick)  30A   (+)
                Starter - blk/wht  (+)  at ign. sw. harness, 8-pin grey plug
                Ign 1  pink (+)   same plug
                acc   lt blu  + dies while cranking
                2nd ign?? brown  not sure, verify
                Power locks  5 wire rev. pol  lock= grn/org  unlk = grn/blk, rest at gnd, motor legs at driver door boot
                parking lights  brn/wht  (+) kick panel
                door trig   blu/wht (-) all doors, dome supervision same wire
                hatch pin  yel/blk (-)
                horn  dk grn/red  (-)
                tach - dont need
                hood pin none
                """);

        assertThat(read)
                .containsExactly(
                        "constant-supply;RD/YE;pos;Driver kick panel||",
                        "starter;BK/WH;pos;ign. sw. harness|8-pin grey plug|",
                        "ignition;PK;pos;ign. sw. harness|8-pin grey plug|",
                        "accessory;BU;pos;Driver kick panel||",
                        "second-ignition;BN;;Driver kick panel||",
                        "lock;GN/OG;rev;Driver kick panel||",
                        "unlock;GN/BK;pos;driver door boot||",
                        "parking-lamp;BN/WH;pos;kick panel||",
                        "door-trigger;BU/WH;neg;Driver kick panel||",
                        "trunk-trigger;YE/BK;neg;Driver kick panel||",
                        "horn;GN/RD;neg;Driver kick panel||",
                        "tachometer;;;Driver kick panel||",
                        "hood-trigger;;;Driver kick panel||");
    }

    /** One wire for both with a resistance for one, a second wire below the first, a plug by its look, the supply by its volts. */
    @Test
    void whatALineLeavesToTheOneAboveIsTakenFromThere() {
        assertThat(shown("""
                        2012 Tessalby Bittern (auto, push to start) for the shop's own use

                        lock  brn/yel  (-)  thru 1.2k resistor to gnd
                        unlock  same wire, straight ground
                        door  lt blue  neg  BCM gry 20p, 4
                              lt blue/red  pin 5  passenger
                        starter  data only
                        12v+   red   col harness, blk plug pin 3
                        """))
                .containsExactly(
                        "lock;BN/YE;1200;||",
                        "unlock;BN/YE;neg;||",
                        "door-trigger;BU;neg;BCM|gry 20p|",
                        "door-trigger;BU/RD;;||5",
                        "starter;;data;||",
                        "constant-supply;RD;pos;|blk plug|3");
    }

    @Test
    void whatThereIsNotIsSaidBeforeOrBehindTheThing() {
        assertThat(Notes.read(
                                "horn  grey  (-)\nbrake  green  (+)\nhood pin none\nno trunk pin\ntachometer needs cleaning\n")
                        .entries())
                .filteredOn(Entry::absent)
                .extracting(Entry::name)
                .containsExactly("hood pin", "trunk pin");
    }

    @Test
    void theNumberOfASectionIsNoPartOfItsPlace() {
        assertThat(shown("3. Driver kick panel\nHorn: grey (-)\n\n4.1) Steering column:\nBrake: green (+)\n"))
                .containsExactly("horn;GY;neg;Driver kick panel||", "brake;GN;pos;Steering column||");
    }

    @Test
    void proseThatTellsSeveralCircuitsTellsEachItsOwn() {
        assertThat(shown("""
                        The lock wire is green/white and unlock is green/black, both in the driver kick panel, both neg. pulse. The trunk release is a brown wire
                        while the hood pin is grey with a red stripe, whereas the starter is yellow. Only with power locks the door trigger is violet (-) in the bcm.
                        LX only: trunk pin white/red (-) rear left quarter.
                        """))
                .containsExactly(
                        "lock;GN/WH;neg;driver kick panel||",
                        "unlock;GN/BK;neg;driver kick panel||",
                        "trunk-release;BN;;||",
                        "hood-trigger;GY/RD;;||",
                        "starter;YE;;||",
                        "door-trigger;VT;neg;bcm||",
                        "trunk-trigger;WH/RD;neg;rear left quarter||");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
                    only with power locks the door trigger is violet = only with power locks
                    LX/EX only: violet = LX/EX only
                    ACC only = ''
                    violet, nur mit Automatikgetriebe = nur mit Automatikgetriebe
                    """)
    void whatALineIsBoundToEndsWhereTheSentenceGoesOn(String text, String bound) {
        assertThat(Validity.read(new Claims(Passage.line(text, 1, 1))).stream()
                        .map(Passage::text)
                        .findFirst()
                        .orElse(""))
                .isEqualTo(bound);
    }

    @Test
    void aFootnoteGoesToEveryRowThatBearsItsMarkAndMayDoubtOrBindIt() {
        List<Entry> entries = Notes.read("""
                        Circuit | Colour | Pol
                        Horn* | grey | -
                        Brake | green | +
                        Lock* | blue | -
                        Unlock(1) | white | -
                        * not sure, verify
                        (1) only with factory alarm
                        """).entries();
        assertThat(entries).hasSize(4);
        assertThat(entries).extracting(Entry::doubted).containsExactly(true, false, true, false);
        assertThat(entries.get(0).notes()).extracting(Passage::text).containsExactly("not sure, verify");
        assertThat(entries.get(3).validity()).isEqualTo("only with factory alarm");
    }

    @Test
    void aNoteUnderARowIsThatRowsAndTheSameAsAboveIsFollowed() {
        List<Entry> entries = Notes.read("""
                        Circuit | Colour | Pol | Where
                        Horn | grey | - | column
                          the thick one, taped
                        Brake | green | + | same as above
                        """).entries();
        assertThat(entries.get(0).notes()).extracting(Passage::text).containsExactly("the thick one, taped");
        assertThat(entries.get(1).spot().orElseThrow().value().panel()).isEqualTo("column");
        assertThat(entries.get(1).spot().orElseThrow().sure()).isLessThan(0.95);
    }

    @Test
    void aHeadingCarriesThePlaceUntilTheNext() {
        assertThat(shown("driver kick panel:\nLock: green (-)\nUnlock: blue (-)\n\nsteering column:\nHorn: grey (-)\n"))
                .containsExactly(
                        "lock;GN;neg;driver kick panel||",
                        "unlock;BU;neg;driver kick panel||",
                        "horn;GY;neg;steering column||");
    }

    @Test
    void aLineOverATableSaysWhereAllOfItIsAndATitleThatTellsTheSideBindsNothing() {
        List<Entry> entries = Notes.read("""
                        Torvo, 2014, manual, LHD

                        all at the steering column unless said
                        Constant ....... red
                        Ignition ....... pink, plus
                        Horn ........... grey, -, left kick panel
                        """).entries();
        assertThat(entries).extracting(Entry::steering).containsOnly("");
        assertThat(entries)
                .extracting(e -> e.spot().orElseThrow().value().panel())
                .containsExactly("steering column", "steering column", "left kick panel");
    }

    @Test
    void aColourOfWhichHalfIsAskedIsNotReadAndWhoDoesNotKnowThePlaceNamesNone() {
        Entry entry = Notes.read(
                        "Circuit | Colour | Pol | Where\nHorn | tan/??? | - | no idea\nBrake | red | + | pedal\n")
                .entries()
                .getFirst();
        assertThat(entry.colour()).isEmpty();
        assertThat(entry.colourAsWritten()).isEqualTo("tan/???");
        assertThat(entry.spot()).isEmpty();
        assertThat(entry.doubted()).isTrue();
    }

    @Test
    void aRowForOneTrimIsOnTheSheetAsAGuess() {
        DraftSheet draft = DraftSheet.of(
                Notes.read(
                        "Circuit | Colour | Pol | Where | Remarks\nConstant | red | + | column | base trim\nIgnition | pink | + | column | \n"),
                "n",
                Map.of(),
                Set.of());
        assertThat(draft.circuits())
                .extracting(c -> c.basis().certainty())
                .containsExactly(Certainty.GUESSED, Certainty.STATED);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
                    LT GRN/blk = GN/BK
                    grün-weiß = GN/WH
                    PNK w/ BLU tracer = PK/BU
                    dk blue (thin) = BU
                    black with white stripe = BK/WH
                    rojo con raya negra = RD/BK
                    vert filet jaune = GN/YE
                    GRY.ORG = GY/OG
                    """)
    void coloursComeInAnyDress(String written, String letters) {
        assertThat(shownFirst("Circuit | Colour | Pol\nHorn | " + written + " | -\nBrake | red | +\n"))
                .isEqualTo("horn;" + letters + ";neg;||");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
                    lock, (+) = pos
                    lock, neg. pulse = neg
                    lock legs, 5 wire = rev
                    lock legs, reverse pol. = rev
                    lock, multiplex 820 ohm = 820
                    lock, 1k ohm to gnd = 1000
                    door pin, ground when open = neg
                    CAN high, data = data
                    door pin, BCM 5v = 5
                    lock, + at rest, - to lock = neg
                    """)
    void polesComeInAnyDress(String written, String pole) {
        List<String> cells = List.of(written.split(", ", 2));
        assertThat(shownFirst("Circuit | Colour | Pol\n" + cells.get(0) + " | grey | " + cells.get(1)
                                + "\nBrake | red | +\n")
                        .split(";", -1)[2])
                .isEqualTo(pole);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '=', textBlock = """
                    ignition 1 = ignition
                    ignition 2 = second-ignition
                    accessory = accessory
                    starter = starter
                    second starter = second-starter
                    parking lamp = parking-lamp
                    side marker = other
                    trunk pin = trunk-trigger
                    trunk release = trunk-release
                    lock = lock
                    unlock = unlock
                    lock motor leg = lock-motor-leg
                    door lock switch = lock
                    wuzzle = unknown
                    """)
    void whatIsCloseIsToldApart(String written, String role) {
        assertThat(shownFirst("Circuit | Colour | Pol\n" + written + " | grey | \nBrake | red | +\n"))
                .startsWith(role + ";");
    }
}
