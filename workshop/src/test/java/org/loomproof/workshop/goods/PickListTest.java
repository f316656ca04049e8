package org.loomproof.workshop.goods;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.Work;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Article.Kind;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.goods.shelf.Tool;
import org.loomproof.workshop.plan.Plan;

/** What is counted for small plans, worked by hand from the plan's text. */
class PickListTest {

    private static final Jobs.Job SIMPLE = Jobs.simple();

    private static PickList list(Jobs.Job job) {
        return PickList.of(job.brief(), job.plan());
    }

    private static Optional<Item> find(PickList list, Kind kind, String size) {
        return list.items().stream()
                .filter(i -> i.article().equals(new Article(kind, size)))
                .findFirst();
    }

    private static BigDecimal amount(PickList list, Kind kind, String size) {
        return find(list, kind, size).map(Item::amount).orElse(BigDecimal.ZERO);
    }

    @Test
    void partsAreCountedAsThePlanHasThem() {
        PickList list = list(SIMPLE);
        assertThat(amount(list, Kind.RELAY, "40 A/30 A")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.RELAY_SOCKET, "")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.FUSE, "5 A")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.FUSE, "2 A")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.FUSE_HOLDER, "")).isEqualByComparingTo("2");
        assertThat(amount(list, Kind.DIODE, "1N4004")).isEqualByComparingTo("1");
        assertThat(find(list, Kind.FUSE_HOLDER, "").orElseThrow().uses()).containsExactly("F1", "F2");
    }

    /** Seven runs of 0.5 m, two of 0.2 m and two of 0.1 m in 1 mm²; two of 1 m in 6 mm²; each with a tenth more. */
    @Test
    void wireIsMeasuredBySizeWithATenthMore() {
        PickList list = list(SIMPLE);
        assertThat(amount(list, Kind.WIRE, "1 mm²")).isEqualByComparingTo("4.6"); // 4.1 m · 1.1 = 4.51 m
        assertThat(amount(list, Kind.WIRE, "6 mm²")).isEqualByComparingTo("2.2");
    }

    /** The siren comes in the box; so its screws and the grommet are the shop's, and itself is not taken from the shelf. */
    @Test
    void whatCameInTheBoxIsNotTakenFromTheShelf() {
        PickList list = list(SIMPLE);
        assertThat(find(list, Kind.EXTRA, "sounder").orElseThrow().from()).isEqualTo(Item.From.BOX);
        assertThat(amount(list, Kind.GROMMET, "")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.SCREW, "")).isEqualByComparingTo("5"); // relay 1, sounder 2, two wires on the body
    }

    /** An indicator hangs on its output as a siren does, but nothing of it goes through the bulkhead or is screwed down. */
    @Test
    void anIndicatorIsMountedLikeAPartAndNotLikeASiren() {
        Kit kit = AKit.named("kit with an indicator")
                .lowSide("indicator", LeadRole.INDICATOR, 0.1, AKit.GUARDING)
                .extra(new Extra(
                        "lamp",
                        Extra.Kind.INDICATOR,
                        Optional.of(Figured.amps(0.02)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .kit();
        Brief brief = new Brief(SIMPLE.brief().sheet(), kit, SIMPLE.brief().order());
        Plan plan = APlan.byHand()
                .load("L1", "lamp", 0.02)
                .wire("W1", "lead indicator", "L1 -")
                .connect("indicator", Wish.INDICATOR, "", "L1", "W1")
                .forKit(kit);
        PickList list = PickList.of(brief, plan);
        assertThat(amount(list, Kind.EXTRA, "lamp")).isEqualByComparingTo("1");
        assertThat(amount(list, Kind.GROMMET, "")).isEqualByComparingTo("0");
        assertThat(amount(list, Kind.SCREW, "")).isEqualByComparingTo("0");
        assertThat(Labour.of(brief, plan, Map.of()).lines())
                .extracting(Labour.Line::work)
                .contains(Work.ADDED_PART)
                .doesNotContain(Work.SOUNDER, Work.ACTUATOR);
    }

    @Test
    void aRelayFromTheBoxServesOnceAndOnlyWhereItsRatingsAllow() {
        assertThat(fromShelf(withRelayInBox(40, 30))).isEqualByComparingTo("1");
        assertThat(fromShelf(withRelayInBox(40, 20))).isEqualByComparingTo("2");
    }

    private static BigDecimal fromShelf(PickList list) {
        return list.items().stream()
                .filter(i -> i.article().equals(new Article(Kind.RELAY, "40 A/30 A")) && i.from() == Item.From.SHELF)
                .map(Item::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Two relays of 40 A and 30 A are wanted. */
    private static PickList withRelayInBox(double makes, double breaks) {
        Kit kit = AKit.simple()
                .extra(new Extra(
                        "relay",
                        Extra.Kind.INTERRUPT_RELAY,
                        Optional.empty(),
                        Optional.of(Figured.ohms(85)),
                        Optional.of(Figured.amps(makes)),
                        Optional.of(Figured.amps(breaks))))
                .kit();
        Brief brief = new Brief(SIMPLE.brief().sheet(), kit, SIMPLE.brief().order());
        return PickList.of(brief, Jobs.simplePlan().relay("K2").forKit(kit));
    }

    @Test
    void aLeadThatIsNotConnectedGetsAnEndCap() {
        PickList list = list(SIMPLE.with(Jobs.fedPlan()
                .hold("trigger", Wish.WATCH_OPENINGS, "levels-of dome")
                .forKit(SIMPLE.brief().kit())));
        assertThat(find(list, Kind.END_CAP, "").orElseThrow().uses()).containsExactly("trigger");
    }

    @Test
    void aJointWhoseWireNobodyMeasuredIsToldAndNotForgotten() {
        assertThat(list(SIMPLE).unsized())
                .extracting(j -> j.place().toString())
                .anyMatch(place -> place.contains("dome"));
    }

    @Test
    void toolsFollowTheWork() {
        PickList list = list(SIMPLE);
        assertThat(list.tools()).contains(Tool.METER, Tool.CRIMP_TOOL, Tool.DRILL);
        PickList bare = PickList.of(
                SIMPLE.brief(),
                SIMPLE.plan().withParts(List.of()).withWires(List.of()).withHookups(List.of()));
        assertThat(bare.tools())
                .isEqualTo(Set.of(Tool.METER, Tool.PANEL_LEVERS, Tool.STRIPPER, Tool.SIDE_CUTTER, Tool.MARKER));
    }
}
