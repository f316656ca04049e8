package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.goods.loom.LeadMark;
import org.loomproof.workshop.goods.loom.LoomMarks;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.trade.colour.Colour;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Phrase;

/** A plug of four: two leads go to the driver's door, one is kept for later, one is trimmed. */
class LoomMarksTest {

    private static final WireColour BLUE_ORANGE = new WireColour(Colour.BLUE, Optional.of(Colour.ORANGE), "");
    private static final WireColour ORANGE_BLUE = new WireColour(Colour.ORANGE, Optional.of(Colour.BLUE), "");
    private static final WireColour VIOLET_ORANGE = new WireColour(Colour.VIOLET, Optional.of(Colour.ORANGE), "");
    private static final WireColour GREEN = new WireColour(Colour.GREEN, Optional.empty(), "");
    private static final WireColour GREY = new WireColour(Colour.GREY, Optional.empty(), "");

    private static LeadMark mark(String lead, Map<String, WireColour> colours) {
        Brief given = ExamplesAreReadTest.brief(ExampleFiles.root().resolve("bakery-van"));
        Kit kit = given.kit();
        List<Lead> leads = kit.leads().stream()
                .map(each -> Optional.ofNullable(colours.get(each.id().value()))
                        .map(colour -> in(each, colour))
                        .orElse(each))
                .toList();
        Kit recoloured = kit.withLeads(leads);
        Brief brief = new Brief(given.sheet(), recoloured, given.order());
        return LoomMarks.of(
                        brief,
                        APlan.byHand()
                                .connect("P3-3", Wish.LOCKS, "unlock-command", "", "")
                                .connect("P3-4", Wish.LOCKS, "lock-command", "", "")
                                .hookup(new Hookup.Trim(new LeadId("P3-2"), Phrase.of("fixture.by-hand"), List.of()))
                                .forKit(recoloured))
                .find(new LeadId(lead))
                .orElseThrow();
    }

    private static Lead in(Lead lead, WireColour colour) {
        return new Lead(
                lead.id(),
                lead.plug(),
                lead.position(),
                Optional.of(colour),
                lead.size(),
                lead.role(),
                lead.port(),
                lead.alwaysUsed(),
                lead.note(),
                lead.basis());
    }

    private static List<LeadId> leads(String... names) {
        return Arrays.stream(names).map(LeadId::new).toList();
    }

    private static final Map<String, WireColour> ONE_OF_THE_TWO =
            Map.of("P3-1", BLUE_ORANGE, "P3-2", VIOLET_ORANGE, "P3-3", ORANGE_BLUE, "P3-4", GREEN);

    @Test
    void whatGoesTheSameWayAndLooksOtherwiseTellsWhichItIs() {
        assertThat(mark("P3-3", ONE_OF_THE_TWO))
                .isEqualTo(new LeadMark.Twist(leads("P3-1"), leads("P3-4"), "driver door boot"));
    }

    @Test
    void aLeadThatGoesAloneIsLabelled() {
        assertThat(mark("P3-1", ONE_OF_THE_TWO)).isEqualTo(new LeadMark.Label(leads("P3-3")));
    }

    @Test
    void whatStaysIsMarkedBeforeItsDoubleIsTrimmed() {
        assertThat(mark("P3-2", ONE_OF_THE_TWO)).isEqualTo(new LeadMark.TrimAfter(leads("P3-1", "P3-3")));
    }

    /** The company tells nothing when it looks the same. */
    @Test
    void twoThatGoTheSameWayAndLookAlikeAreLabelled() {
        Map<String, WireColour> both = Map.of("P3-1", GREEN, "P3-2", GREY, "P3-3", ORANGE_BLUE, "P3-4", BLUE_ORANGE);
        assertThat(mark("P3-3", both)).isEqualTo(new LeadMark.Label(leads("P3-4")));
        assertThat(mark("P3-4", both)).isEqualTo(new LeadMark.Label(leads("P3-3")));
    }

    @Test
    void coloursThatAreTakenForEachOtherLookAlikeAndOthersDoNot() {
        assertThat(BLUE_ORANGE.looksLike(ORANGE_BLUE)).isTrue();
        assertThat(BLUE_ORANGE.looksLike(VIOLET_ORANGE)).isTrue();
        assertThat(new WireColour(Colour.GREEN, Optional.empty(), "light").looksLike(GREEN))
                .isTrue();
        assertThat(GREEN.looksLike(GREY)).isFalse();
        assertThat(GREEN.looksLike(new WireColour(Colour.GREEN, Optional.of(Colour.BLACK), "")))
                .isFalse();
        assertThat(BLUE_ORANGE.looksLike(new WireColour(Colour.BLUE, Optional.of(Colour.GREEN), "")))
                .isFalse();
    }
}
