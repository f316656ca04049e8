package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.card.BenchCard;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;
import org.w3c.dom.Element;

class BenchCardTest {

    private static final Reading CARD =
            Reading.of(BenchCard.page(SampleJob.brief(), SampleJob.plan(), SampleJob.words())
                    .html());

    private static Element row(String lead) {
        return CARD.elements("tr", "lead").stream()
                .filter(r ->
                        r.getElementsByTagName("small").item(0).getTextContent().equals(lead))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyLeadHasOneRowWithOneBoxToTickInTheKitsOrder() {
        List<String> leads = CARD.elements("tr", "lead").stream()
                .map(r -> r.getElementsByTagName("small").item(0).getTextContent())
                .toList();
        assertThat(leads)
                .containsExactlyElementsOf(SampleJob.brief().kit().leads().stream()
                        .map(Lead::id)
                        .map(Object::toString)
                        .toList());
        assertThat(CARD.elements("input")).hasSize(leads.size());
    }

    @Test
    void eachColourIsDrawnAndLettered() {
        Element row = row("P1-5");
        assertThat(row.getTextContent()).contains("PK/BK");
        Element swatch = (Element) row.getElementsByTagName("svg").item(0);
        assertThat(((Element) swatch.getElementsByTagName("rect").item(0)).getAttribute("fill"))
                .isEqualTo("#f291b2");
        assertThat(((Element) swatch.getElementsByTagName("path").item(0)).getAttribute("fill"))
                .isEqualTo("#1c1c1c");
    }

    @Test
    void theStarterLeadSaysWhereToCutAndWhereToTap() {
        assertThat(row("P1-5").getTextContent())
                .contains("4 mm², column shroud, connector C21, cavity 5. Cut here, join both sides.")
                .contains("2.5 mm², column shroud, connector C21, cavity 3. Tap, do not cut.")
                .contains("starter, cut, side before the cut → K1 terminal 30")
                .contains("Not chosen: A make contact (87)");
    }

    /**
     * A coil's terminal takes the lead of 0.5 mm² and the diode's wire of 0.5 mm²: 1 mm², red. The one towards the fuse takes 0.75
     * and 0.5 mm²: 1.25 mm², blue. The cut wire of 4 mm² is too thick to solder: yellow, 12 AWG, 70 lbf.
     */
    @Test
    void everyJointSaysWhatToUseWhereTheWorkIs() {
        assertThat(row("P1-5").getTextContent())
                .contains("tap on ignition: bare 12.7 mm without cutting, wrap, solder, support, sleeve")
                .contains("K1 terminal 85: red push-on terminal, for 1 mm²; holds 36 N (8 lbf)")
                .contains("K1 terminal 86: blue push-on terminal, for 1.25 mm²; holds 36 N (8 lbf)")
                .contains("starter, cut, side before the cut: yellow crimp splice, for 4 mm²; holds 312 N (70 lbf)");
        assertThat(row("P1-2").getTextContent())
                .contains("own screw on bare metal: red ring terminal, for 1 mm²; holds 89 N (20 lbf)");
        assertThat(CARD.text()).contains("between insulation and barrel 0.25 mm to 0.75 mm");
    }

    @Test
    void aWireThatTwoLeadsShareIsListedAsNewOnlyOnce() {
        Hookup.Connect second = new Hookup.Connect(
                new LeadId("P1-6"),
                Wish.LAMPS,
                List.of(),
                "coupling.straight",
                List.of(),
                List.of(new WireId("W8"), new WireId("W15")),
                SampleJob.written("because"),
                List.of());
        Plan plan = new Plan(
                SampleJob.plan().hookups().stream()
                        .map(h -> h.lead().equals(second.lead()) ? second : h)
                        .toList(),
                SampleJob.plan().parts(),
                SampleJob.plan().wires(),
                List.of(),
                List.of());
        String card = Reading.of(BenchCard.page(SampleJob.brief(), plan, SampleJob.words())
                        .html())
                .text();
        assertThat(card.split("W8: tap on ignition → F2A terminal 1", -1)).hasSize(3);
        assertThat(card.split("the one of lead P1-5", -1)).hasSize(2);
    }

    @Test
    void wireBoughtByGaugeIsGivenByGauge() {
        assertThat(SampleJob.words().size(new SquareMillimetres(0.5176))).isEqualTo("20\u00A0AWG");
        assertThat(SampleJob.words().size(new SquareMillimetres(2.5))).isEqualTo("2.5\u00A0mm²");
    }

    @Test
    void settingsOfTheKitStandAtTheLeadThatNeedsThem() {
        assertThat(row("P3-1").getTextContent()).contains("lock pulse: 3.5 s");
        assertThat(row("P1-4").getTextContent()).doesNotContain("lock pulse");
    }

    @Test
    void leadsThatLookAlikeInOnePlugWarnOfEachOther() {
        assertThat(row("P2-3").getTextContent()).contains("Looks like P2-4");
        assertThat(row("P2-4").getTextContent()).contains("Looks like P2-3");
    }

    @Test
    void leadsThatLookAlikeInTwoPlugsAreLabelledBeforeThePlugIsOff() {
        assertThat(CARD.elements("p", "alike-elsewhere")).isEmpty();
        Kit kit = SampleJob.brief().kit();
        Lead first = kit.lead(new LeadId("P1-1"));
        List<Lead> leads = kit.leads().stream()
                .map(lead -> lead.id().value().equals("P2-1") ? inColour(lead, first.colour()) : lead)
                .toList();
        Kit alike = kit.withLeads(leads);
        Brief brief =
                new Brief(SampleJob.brief().sheet(), alike, SampleJob.brief().order());
        String card = Reading.of(BenchCard.page(brief, SampleJob.plan(), SampleJob.words())
                        .html())
                .text();
        assertThat(card).contains("Same colour as P2-1 of another plug", "Same colour as P1-1 of another plug");
    }

    private static Lead inColour(Lead lead, Optional<WireColour> colour) {
        return new Lead(
                lead.id(),
                lead.plug(),
                lead.position(),
                colour,
                lead.size(),
                lead.role(),
                lead.port(),
                lead.alwaysUsed(),
                lead.note(),
                lead.basis());
    }

    @Test
    void aLeadOnHoldHasRoomForTheReading() {
        assertThat(row("P3-3").getTextContent())
                .contains(
                        "Hold",
                        "Measure: the interior light's wire at the lamp",
                        "Reading (levels-of interior-light):");
    }

    @Test
    void aLeadThePlanForgetsIsShownAsNotDecided() {
        List<Hookup> allButOne = SampleJob.plan().hookups().subList(1, 21);
        Plan plan =
                new Plan(allButOne, SampleJob.plan().parts(), SampleJob.plan().wires(), List.of(), List.of());
        Reading card = Reading.of(
                BenchCard.page(SampleJob.brief(), plan, SampleJob.words()).html());
        assertThat(card.elements("tr", "do-undecided")).hasSize(1);
        assertThat(card.elements("tr", "lead")).hasSize(21);
    }

    @Test
    void cautionsStandAboveTheFirstPlug() {
        String text = CARD.text();
        assertThat(text.indexOf("Yellow loom along the left sill")).isPositive().isLessThan(text.indexOf("Plug P1"));
        assertThat(text.indexOf("The vehicle maker's instructions, the law"))
                .isPositive()
                .isLessThan(text.indexOf("Plug P1"));
    }

    @Test
    void everyPartAndEveryWireHasOneRowWithBothEnds() {
        List<String> heads = CARD.elements("tbody").stream()
                .flatMap(b -> rowHeads(b).stream())
                .toList();
        for (AddedPart part : SampleJob.plan().parts()) {
            assertThat(heads).containsOnlyOnce(part.id().value());
        }
        for (AddedWire wire : SampleJob.plan().wires()) {
            assertThat(heads).containsOnlyOnce(wire.id().value());
        }
        assertThat(CARD.text()).contains("free, insulate");
    }

    private static List<String> rowHeads(Element body) {
        var found = body.getElementsByTagName("th");
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            heads.add(found.item(i).getTextContent());
        }
        return heads;
    }
}
