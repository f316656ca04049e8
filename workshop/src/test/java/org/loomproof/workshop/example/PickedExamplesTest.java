package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.sizing.JointChoice;
import org.loomproof.workshop.weigh.PlannedJob;

class PickedExamplesTest {

    /** Kit extras that no part of the plan stands for are only ticked off: they count under no part. */
    @ParameterizedTest
    @MethodSource("examples")
    void pickListsHoldExactlyThePartsOfTheirPlans(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        PickList list = PickList.of(ExamplesAreReadTest.brief(folder), job.plan());
        Map<Article.Kind, Integer> wanted = count(job.plan());
        for (Map.Entry<Article.Kind, Integer> entry : wanted.entrySet()) {
            BigDecimal picked = list.items().stream()
                    .filter(item -> item.article().kind() == entry.getKey()
                            && !item.uses().isEmpty())
                    .map(Item::amount)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(picked).as("%s", entry.getKey()).isEqualByComparingTo(BigDecimal.valueOf(entry.getValue()));
        }
        assertThat(wanted.values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(job.plan().parts().stream()
                        .filter(part -> kind(part).isPresent())
                        .count());
    }

    /** Each part is picked once, under a size that says its own figure; wire is a tenth more than the runs of its size. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyPartIsPickedOnceInItsOwnSizeAndWireByItsRuns(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        PickList list = PickList.of(ExamplesAreReadTest.brief(folder), plan);
        for (AddedPart part : plan.parts()) {
            kind(part)
                    .ifPresent(kind -> assertThat(usedBy(list, kind, part.id().value()))
                            .as(part.id().value())
                            .singleElement()
                            .satisfies(item -> assertThat(item.article().size()).contains(figure(part)))
                            .satisfies(item -> assertThat(item.amount())
                                    .isEqualByComparingTo(
                                            BigDecimal.valueOf(item.uses().size()))));
        }
        for (AddedWire wire : plan.wires()) {
            assertThat(usedBy(list, Article.Kind.WIRE, wire.id().value()))
                    .as(wire.id().value())
                    .singleElement()
                    .satisfies(item -> {
                        double runs = plan.wires().stream()
                                .filter(w -> w.size().equals(wire.size()))
                                .mapToDouble(w -> w.length().value())
                                .sum();
                        assertThat(item.amount().doubleValue()).isBetween(1.1 * runs - 1e-9, 1.1 * runs + 0.1);
                    });
        }
    }

    /** What makes a joint, by the sizes of which it is counted. */
    private static final Set<Article.Kind> JOINTS = EnumSet.of(
            Article.Kind.TAP, Article.Kind.SPLICE, Article.Kind.TERMINAL, Article.Kind.RING, Article.Kind.SLEEVE);

    private static final Set<JointChoice.Method> SOLDERED =
            EnumSet.of(JointChoice.Method.WRAP_AND_SOLDER, JointChoice.Method.SOLDER_SPLICE);

    /** A tie holds each joint and each 0.9 m of the runs; common practice, no published source. */
    private static final double RUN_A_TIE_METRES = 0.9;

    @ParameterizedTest
    @MethodSource("examples")
    void everyJointIsPickedOnceOrToldToBeMeasuredAndEveryOneIsHeld(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        Brief brief = ExamplesAreReadTest.brief(folder);
        PickList list = PickList.of(brief, plan);
        List<PlacedJoint> all = new Joints(brief, plan).list();
        // Contacts come with their connector, which ConnectorsTest counts; they are held like other joints.
        List<PlacedJoint> joints = all.stream()
                .filter(joint -> plan.findAcrossPole(joint.place()).isEmpty())
                .toList();
        for (PlacedJoint joint : joints) {
            assertThat(list.items().stream()
                            .filter(item -> JOINTS.contains(item.article().kind())
                                    && item.uses().contains(joint.name()))
                            .count())
                    .as(joint.name())
                    .isEqualTo(joint.choice().isPresent() ? 1 : 0);
        }
        assertThat(list.unsized())
                .isEqualTo(joints.stream()
                        .filter(joint -> joint.choice().isEmpty())
                        .toList());
        BigDecimal crimped = list.items().stream()
                .filter(item ->
                        JOINTS.contains(item.article().kind()) && item.article().kind() != Article.Kind.SLEEVE)
                .map(Item::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(crimped)
                .isEqualByComparingTo(BigDecimal.valueOf(joints.stream()
                        .flatMap(joint -> joint.choice().stream())
                        .filter(choice -> !SOLDERED.contains(choice.method()))
                        .count()));
        double metres =
                plan.wires().stream().mapToDouble(wire -> wire.length().value()).sum();
        assertThat(list.items().stream()
                        .filter(item -> item.article().kind() == Article.Kind.TIE)
                        .map(Item::amount)
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(BigDecimal.valueOf(
                        plan.wires().isEmpty() ? 0 : all.size() + (long) Math.ceil(metres / RUN_A_TIE_METRES)));
    }

    private static List<Item> usedBy(PickList list, Article.Kind kind, String name) {
        return list.items().stream()
                .filter(item -> item.article().kind() == kind && item.uses().contains(name))
                .toList();
    }

    /** What of a part's size can be read off without our own tables of types; empty where the size is a type's name. */
    private static String figure(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p -> Figures.plain(p.makeRating().value());
            case AddedPart.Buffer p -> Figures.plain(p.rating().value());
            case AddedPart.Junction p -> "";
            case AddedPart.Resistor p -> Figures.withPrefix(p.resistance());
            case AddedPart.Fuse p -> Figures.plain(p.rating().value());
            case AddedPart.Pole p -> "";
            case AddedPart.Load p -> p.extra();
            case AddedPart.Sender p -> p.extra();
            case AddedPart.StandbyBattery p -> "";
            case AddedPart.PinSwitch p -> "";
        };
    }

    private static Map<Article.Kind, Integer> count(Plan plan) {
        Map<Article.Kind, Integer> counts = new EnumMap<>(Article.Kind.class);
        plan.parts().forEach(part -> kind(part).ifPresent(kind -> counts.merge(kind, 1, Integer::sum)));
        return counts;
    }

    private static Optional<Article.Kind> kind(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p -> Optional.of(Article.Kind.RELAY);
            case AddedPart.Buffer p -> Optional.of(Article.Kind.BUFFER);
            case AddedPart.Junction p -> Optional.of(Article.Kind.DIODE);
            case AddedPart.Resistor p -> Optional.of(Article.Kind.RESISTOR);
            case AddedPart.Fuse p -> Optional.of(Article.Kind.FUSE);
            case AddedPart.Pole p -> Optional.empty(); // several make a connector
            case AddedPart.Load p -> Optional.of(Article.Kind.EXTRA);
            case AddedPart.Sender p -> Optional.of(Article.Kind.EXTRA);
            case AddedPart.StandbyBattery p -> Optional.empty(); // inside the sounder
            case AddedPart.PinSwitch p -> Optional.of(Article.Kind.PIN_SWITCH);
        };
    }

    static List<Path> examples() {
        return ExampleFiles.list();
    }
}
