package org.loomproof.workshop.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.Work;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.JointChoice;
import org.loomproof.workshop.trade.connector.Plugs;

/** A connector stands where added wires cross a hinge or go to a panel that comes off, and nowhere else. */
class ConnectorsTest {

    private static Brief brief(Wish... wishes) {
        AKit kit = AKit.simple().lowSide("lamps", LeadRole.LAMPS, 0.25, Set.of(ControllerState.SOUNDING));
        return new Brief(
                Jobs.van().sheet(), kit.kit(), AnOrder.forWishes(wishes).order());
    }

    private static List<AddedPart.Pole> poles(Plan plan) {
        return plan.parts().stream()
                .filter(AddedPart.Pole.class::isInstance)
                .map(AddedPart.Pole.class::cast)
                .toList();
    }

    private static Plan plan(Brief brief) {
        return Planned.of(brief).plan();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"driver's door", "left front door trim", "Boot lid", "tailgate trim", "puerta del conductor"})
    void aWireInADoorIsReachedThroughAConnector(String panel) {
        List<AddedPart.Pole> poles = poles(plan(Changed.place(brief(Wish.LAMPS), "parking", panel, "", "")));

        assertThat(poles).extracting(AddedPart.Pole::to).containsOnly(panel).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "left kick panel",
                "driver's door sill",
                "driver door boot",
                "door pillar",
                "by the tailgate",
                "boot",
                ""
            })
    void aWireOnTheBodyIsReachedWithoutOne(String panel) {
        assertThat(poles(plan(Changed.place(brief(Wish.LAMPS), "parking", panel, "", ""))))
                .isEmpty();
    }

    @Test
    void whatTheSheetSaysOfTheWireComesBeforeTheWordsOfItsPlace() {
        assertThat(poles(plan(Changed.carried(brief(Wish.LAMPS), "parking", "driver's door", Where.Carrier.BODY))))
                .isEmpty();
        assertThat(poles(plan(Changed.carried(brief(Wish.LAMPS), "parking", "light switch", Where.Carrier.PANEL))))
                .isNotEmpty();
    }

    /** The fixed half is on the controller's side: the lead ends there, and 0.7 m more go to the factory wire. */
    @Test
    void theLeadEndsAtTheFixedHalfAndAnotherWireGoesOn() {
        Plan plan = plan(Changed.place(brief(Wish.STARTER_INTERRUPT), "starter", "driver's door", "", ""));

        for (AddedPart.Pole pole : poles(plan)) {
            AddedWire beyond = only(plan, new End.OfPart(pole.id(), "2"));
            assertThat(beyond.length().value()).isEqualTo(0.7);
            assertThat(List.of(beyond.from(), beyond.to()))
                    .anyMatch(end -> end instanceof End.CutBefore || end instanceof End.CutAfter);
            assertThat(only(plan, new End.OfPart(pole.id(), "1"))).isNotEqualTo(beyond);
        }
        assertThat(poles(plan)).hasSize(2).extracting(AddedPart.Pole::connector).containsOnly("X1");
        assertThat(plan.wires())
                .filteredOn(wire -> wire.from() instanceof End.Body || wire.to() instanceof End.Body)
                .noneMatch(wire -> isAtPole(wire, plan));
    }

    private static boolean isAtPole(AddedWire wire, Plan plan) {
        return plan.findAcrossPole(wire.from()).isPresent()
                || plan.findAcrossPole(wire.to()).isPresent();
    }

    private static AddedWire only(Plan plan, End end) {
        List<AddedWire> there = plan.wires().stream()
                .filter(wire -> wire.from().equals(end) || wire.to().equals(end))
                .toList();
        assertThat(there).as(end.toString()).hasSize(1);
        return there.getFirst();
    }

    /** A fuse keeps near its take-off, in the panel that comes off: what crosses is behind it. */
    @Test
    void aFuseStaysAtItsTakeOff() {
        Plan plan = plan(Changed.carried(brief(), "constant", "fuse panel", Where.Carrier.PANEL));

        assertThat(poles(plan)).isNotEmpty();
        assertThat(plan.wires())
                .filteredOn(wire -> wire.from() instanceof End.Tap)
                .isNotEmpty()
                .allMatch(wire -> wire.to() instanceof End.OfPart(var part, var terminal)
                        && plan.findPart(part).orElseThrow() instanceof AddedPart.Fuse
                        && wire.length().value() <= 0.15);
    }

    /** Contacts bear what the fuse before them lets pass: 12 A each behind 7.5 A, 25 A behind 15 A. */
    @Test
    void contactsBearWhatTheirFuseLetsPass() {
        assertThat(Plugs.contactFor(amps(7.5), mm2(1))).isEqualTo(amps(12));
        assertThat(Plugs.contactFor(amps(15), mm2(2.5))).isEqualTo(amps(25));
        assertThat(Plugs.contactFor(amps(1), mm2(4))).isEqualTo(amps(25));
    }

    private static Amps amps(double value) {
        return new Amps(value);
    }

    private static SquareMillimetres mm2(double value) {
        return new SquareMillimetres(value);
    }

    @Test
    void theConnectorIsPickedAndItsTimeCounted() {
        Brief brief = Changed.place(brief(Wish.STARTER_INTERRUPT), "starter", "driver's door", "", "");
        Plan plan = plan(brief);

        assertThat(PickList.of(brief, plan).items())
                .filteredOn(item -> item.article().kind() == Article.Kind.CONNECTOR)
                .extracting(item -> item.article().size(), Item::uses)
                .singleElement()
                .satisfies(
                        told -> assertThat(told.toList().getFirst().toString()).startsWith("2 x "));
        assertThat(Labour.of(brief, plan, Map.of()).lines())
                .filteredOn(line -> line.work() == Work.CONNECTOR)
                .extracting(Labour.Line::times)
                .containsExactly(1);
        assertThat(new Joints(brief, plan).list())
                .filteredOn(joint -> plan.findAcrossPole(joint.place()).isPresent())
                .hasSize(4)
                .extracting(PlacedJoint::choice)
                .allMatch(choice -> choice.orElseThrow().method() == JointChoice.Method.PLUG_CONTACT);
    }

    /** Each contact carries at most what it is for: a weak one is found. */
    @Test
    void aContactThatIsTooWeakIsBroken() {
        Brief brief = Changed.place(brief(Wish.STARTER_INTERRUPT), "starter", "driver's door", "", "");
        Plan plan = plan(brief);
        Plan weak = plan.withParts(plan.parts().stream()
                .map(part -> part instanceof AddedPart.Pole pole
                        ? new AddedPart.Pole(pole.id(), pole.connector(), pole.to(), amps(0.01))
                        : part)
                .toList());

        assertThat(objections(brief, plan)).noneMatch(id -> id.startsWith("within-rating X1"));
        assertThat(objections(brief, weak)).contains("within-rating X1-1", "within-rating X1-2");
    }

    private static List<String> objections(Brief brief, Plan plan) {
        return Prover.listObjections(brief, plan).stream()
                .map(result -> result.id())
                .toList();
    }
}
