package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.intake.sheet.HeldBack;
import org.loomproof.intake.sheet.Needs;
import org.loomproof.intake.sheet.SheetFacts;
import org.loomproof.intake.sheet.SheetText;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.write.SheetWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.words.Messages;

/** What of wiring notes goes on a sheet, and what waits for a meter. */
class SheetDraftTest {

    private static final VehicleFacts NOTHING_SAID = new VehicleFacts(List.of(), List.of());

    private static final String NOTES = """
            Circuit\tColour\tPol.\tWhere found
            12V constant\tred\t+\tignition switch harness
            Ignition\tpink\t+\tcolumn
            Door trigger\tgray/black\t-\tdriver kick panel ??
            Hood pin\tchampagne\tneg\tfender
            Lock\tgreen\t5 wire\tdriver door boot
            Horn\tblack\t\tcolumn
            Wuzzle gadget\tred\t+\tdash
            CAN high\torange\tdata\tbehind radio
            """;

    private static final Map<String, String> FACTS = facts();

    private static Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("name", "the miller's cart");
        facts.put("system-voltage", "12 V");
        facts.put("ground", "negative");
        facts.put("drive", "combustion");
        facts.put("start", "key");
        facts.put("key", "plain");
        facts.put("steering", "left");
        return facts;
    }

    private static DraftSheet draft(String notes) {
        return DraftSheet.of(Notes.read(notes), "notes.txt", Map.of(), Set.of());
    }

    private static Checked<Sheet> readBack(String text) {
        TradeDefaults usual = TradeDefaults.read();
        return new BriefReader(usual, new SheetCompletion(usual)).readSheet(new SourceText("sheet.yaml", text));
    }

    private static Circuit circuit(DraftSheet draft, CircuitRole role) {
        return draft.circuits().stream()
                .filter(c -> c.role() == role)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withTheVehiclesFactsTheFileIsAValidSheetAndSaysTheSame() {
        DraftSheet draft = draft(NOTES);
        String text = new SheetText(Messages.english()).write(draft, FACTS, NOTHING_SAID);
        assertThat(readBack(text)).isInstanceOfSatisfying(Checked.Good.class, good -> {
            Sheet sheet = (Sheet) good.value();
            assertThat(sheet.circuits()).hasSameSizeAs(draft.circuits());
            for (int i = 0; i < sheet.circuits().size(); i++) {
                Circuit read = sheet.circuits().get(i);
                Circuit drafted = draft.circuits().get(i);
                assertThat(List.of(read.id(), read.role(), read.where(), read.colour(), read.switching()))
                        .isEqualTo(List.of(
                                drafted.id(), drafted.role(), drafted.where(), drafted.colour(), drafted.switching()));
                assertThat(List.of(read.follows(), read.access(), read.origin(), read.note()))
                        .isEqualTo(List.of(drafted.follows(), drafted.access(), drafted.origin(), drafted.note()));
                assertThat(read.basis().certainty()).isEqualTo(drafted.basis().certainty());
            }
        });
    }

    @Test
    void withoutFactsNothingIsInventedAndTheFileSaysWhatIsToBeFilledIn() {
        String text = new SheetText(Messages.english()).write(draft(NOTES), Map.of(), NOTHING_SAID);
        assertThat(readBack(text)).isInstanceOf(Checked.Bad.class);
        assertThat(text).doesNotContain("\nvehicle:");
        SheetFacts.listMissing(Map.of())
                .keySet()
                .forEach(key -> assertThat(text).contains("#   " + key + ": "));
        assertThat(SheetFacts.listMissing(FACTS)).isEmpty();
    }

    @Test
    void everyCircuitNamesTheLineAndColumnsItComesFrom() {
        assertThat(draft(NOTES).circuits())
                .extracting(Circuit::origin)
                .startsWith("notes.txt 2:1-42", "notes.txt 3:1-22")
                .allSatisfy(origin -> assertThat(origin).matches("notes\\.txt \\d+:\\d+-\\d+"));
    }

    @Test
    void whatIsNotSaidAtRestOrDoubtedIsAGuessAndWhatFollowsFromTheRoleIsStated() {
        DraftSheet draft = draft(NOTES);
        assertThat(circuit(draft, CircuitRole.CONSTANT_SUPPLY).basis().certainty())
                .isEqualTo(Certainty.STATED);
        assertThat(circuit(draft, CircuitRole.HOOD_TRIGGER).basis().certainty()).isEqualTo(Certainty.GUESSED);
        assertThat(circuit(draft, CircuitRole.HOOD_TRIGGER).note()).contains("champagne");
    }

    @Test
    void whatNoSheetCanHoldYetWaitsWithItsReason() {
        assertThat(draft(NOTES).heldBack())
                .extracting(h -> h.entry().name() + ": " + h.reason())
                .containsExactly(
                        "Door trigger: " + HeldBack.Reason.REST_NOT_SAID,
                        "Lock: " + HeldBack.Reason.REST_NOT_SAID,
                        "Horn: " + HeldBack.Reason.SWITCHING_NOT_SAID,
                        "Wuzzle gadget: " + HeldBack.Reason.ROLE_UNKNOWN);
        assertThat(new SheetText(Messages.english()).write(draft(NOTES), FACTS, NOTHING_SAID))
                .contains("Wuzzle gadget");
    }

    @Test
    void whatTheNotesSayIsNotThereIsNotPutOnTheSheet() {
        DraftSheet draft = draft("""
                IGN 1 = blk/wht (+) ign harn
                ign2: none
                bonnet pin: add one
                no trunk release
                tacho - no
                No 2 starter: yel/red (+) column
                zweite Zündung: nicht vorhanden
                Sin disparador de maletero
                """);
        assertThat(draft.circuits())
                .extracting(Circuit::role)
                .containsExactly(CircuitRole.IGNITION, CircuitRole.SECOND_STARTER);
        assertThat(draft.heldBack()).extracting(HeldBack::reason).containsOnly(HeldBack.Reason.ABSENT);
        assertThat(draft.heldBack()).hasSize(6);
    }

    @Test
    void anOrdinaryWordALetterOffIsNoWordOfTheTrade() {
        ReadNotes notes = Notes.read("Quill 5dr truck - looked at it tuesday\n\nHorn: blk/blu (-) column\n");
        assertThat(notes.entries())
                .extracting(e -> e.role().orElseThrow().value().role())
                .containsExactly(CircuitRole.HORN);
        assertThat(notes.loose()).extracting(l -> l.text().strip()).contains("Quill 5dr truck - looked at it tuesday");
    }

    @Test
    void ofATwoColouredWireOfWhichHalfIsUnknownNothingIsSaid() {
        assertThat(Notes.read(
                                "circuit\tcolour\tpolarity\tplace\nHorn\tzorp/red\t-\tcolumn\nBrake\tred/blurple\t+\tpedal\nTach\tred\t\tcoil\n")
                        .entries())
                .extracting(e -> e.colour().map(c -> c.value().letters()).orElse(e.colourAsWritten()))
                .containsExactly("zorp/red", "red/blurple", "RD");
    }

    @Test
    void aDoorWireOnlySaidToBeNegativeWaitsForAMeterSinceItMayRestAtFewVolts() {
        HeldBack held = draft(NOTES).heldBack().getFirst();
        assertThat(Messages.english().text(held.ask())).contains("doors closed", "each door open");
        Circuit told = circuit(
                draft("Door trigger\tgrey\trests at 5 V, ground when open\tkick panel\nHorn\tblack\t-\tcolumn\n"),
                CircuitRole.DOOR_TRIGGER);
        assertThat(SheetWriter.level(told.switching().rest())).isEqualTo("5 V");
    }

    @Test
    void aWireOfMessagesIsNeverToBeTouched() {
        Circuit data = circuit(draft(NOTES), CircuitRole.DATA);
        assertThat(data.access().name()).isEqualTo("NOT_TO_BE_TOUCHED");
    }

    @Test
    void aRowForTheOtherSideOfTheWheelStaysOffTheSheetOfAVehicleWhoseSideIsKnown() {
        String notes = """
                Circuit,Colour,Polarity,Place
                Door trigger,green,+,driver kick panel (LHD)
                Door trigger,blue,+,driver kick panel (RHD)
                """;
        DraftSheet left = DraftSheet.of(Notes.read(notes), "notes.txt", Map.of("steering", "left"), Set.of());
        assertThat(left.circuits())
                .extracting(c -> c.colour().orElseThrow().letters())
                .containsExactly("GN");
        assertThat(left.heldBack()).extracting(HeldBack::reason).containsExactly(HeldBack.Reason.OTHER_STEERING);
        assertThat(draft(notes).circuits()).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    only with automatic gearbox  | gearbox=automatic | THIS
                    only with automatic gearbox  | gearbox=manual    | OTHERS
                    only with automatic gearbox  | start=key         | NOT_KNOWN
                    without push start           | start=key         | THIS
                    without push start           | start=button      | OTHERS
                    only with push start and tow hitch | start=button | NOT_KNOWN
                    only with push start and tow hitch | start=key    | OTHERS
                    nur mit Automatikgetriebe    | gearbox=manual    | OTHERS
                    LX/EX only                   | trim=EX           | THIS
                    LX/EX only                   | trim=GT           | OTHERS
                    LX only                      | start=key         | NOT_KNOWN
                    only with power locks        | start=key         | NOT_KNOWN
                    only with power locks        | locks=power       | THIS
                    only with power locks        | locks=manual      | OTHERS
                    ohne Zentralverriegelung     | locks=manual      | THIS
                    only with automatic gearbox  | gearbox=other     | OTHERS
                    LX only                      | trim=other        | OTHERS
                    2010-2012                    | gearbox=manual    | NOT_KNOWN
                    LX only; only with automatic gearbox | gearbox=manual | OTHERS
                    """)
    void aFactOfTheVehicleDecidesWhomALineHoldsFor(String bound, String fact, HoldsFor holds) {
        String[] known = fact.split("=", -1);
        assertThat(HoldsFor.of(bound, Map.of(known[0], known[1]))).isEqualTo(holds);
    }

    @Test
    void whatLinesForSomeVehiclesAskIsTold() {
        assertThat(HoldsFor.asks(
                        List.of("", "LX/EX only; 2010-2012", "only with automatic gearbox", "manual gearbox only")))
                .isEqualTo(Map.of("trim", Set.of("EX", "LX"), "gearbox", Set.of("automatic", "manual")));
        assertThat(SheetFacts.isOfNotesOnly("gearbox", "manual")).isFalse();
        assertThat(SheetFacts.isOfNotesOnly("gearbox", "other")).isTrue();
        assertThat(SheetFacts.isOfNotesOnly("locks", "power")).isTrue();
        assertThat(SheetFacts.isOfNotesOnly("trim", "LX")).isTrue();
    }

    @Test
    void aRowForOtherVehiclesStaysOffTheSheetAndOneForThisIsNoGuess() {
        String notes = """
                Circuit,Colour,Polarity,Place,Remarks
                Ignition,yellow,+,ignition switch,only with automatic gearbox
                Ignition,white,+,ignition switch,only with manual gearbox
                """;
        DraftSheet manual = DraftSheet.of(Notes.read(notes), "notes.txt", Map.of("gearbox", "manual"), Set.of());
        assertThat(manual.circuits())
                .extracting(
                        c -> c.colour().orElseThrow().letters(), c -> c.basis().certainty())
                .containsExactly(tuple("WH", Certainty.STATED));
        assertThat(manual.heldBack()).extracting(HeldBack::reason).containsExactly(HeldBack.Reason.OTHER_VEHICLE);
        assertThat(draft(notes).circuits())
                .extracting(c -> c.basis().certainty())
                .containsExactly(Certainty.GUESSED, Certainty.GUESSED);
    }

    @Test
    void whatAnOrderNeedsAndNobodySpeaksOfIsListed() {
        TradeDefaults usual = TradeDefaults.read();
        String text =
                "format: loomproof order 1\njob: cart\nwants: [starter-interrupt, horn]\nrule-set: none\nlongest-unused: 3 days\n";
        Checked<Order> order = new BriefReader(usual, new SheetCompletion(usual))
                .readOrder(new SourceText("order.yaml", text), Optional.empty());
        assertThat(order).isInstanceOfSatisfying(Checked.Good.class, good -> {
            List<CircuitRole> there =
                    draft(NOTES).circuits().stream().map(Circuit::role).toList();
            assertThat(Needs.listMissing((Order) good.value(), there))
                    .extracting(Needs.Missing::role)
                    .containsExactly(CircuitRole.STARTER, CircuitRole.HORN);
        });
    }
}
