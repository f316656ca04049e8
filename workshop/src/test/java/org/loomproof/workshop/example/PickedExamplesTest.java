package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
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

    private static Map<Article.Kind, Integer> count(Plan plan) {
        Map<Article.Kind, Integer> counts = new EnumMap<>(Article.Kind.class);
        plan.parts().forEach(part -> kind(part).ifPresent(kind -> counts.merge(kind, 1, Integer::sum)));
        return counts;
    }

    private static Optional<Article.Kind> kind(AddedPart part) {
        return switch (part) {
            case AddedPart.Relay p -> Optional.of(Article.Kind.RELAY);
            case AddedPart.Buffer p -> Optional.of(Article.Kind.BUFFER);
            case AddedPart.Diode p -> Optional.of(Article.Kind.DIODE);
            case AddedPart.Resistor p -> Optional.of(Article.Kind.RESISTOR);
            case AddedPart.Fuse p -> Optional.of(Article.Kind.FUSE);
            case AddedPart.Load p -> Optional.of(Article.Kind.EXTRA);
            case AddedPart.StandbyBattery p -> Optional.empty(); // inside the sounder
            case AddedPart.PinSwitch p -> Optional.of(Article.Kind.PIN_SWITCH);
        };
    }

    static List<Path> examples() {
        return ExampleFiles.list();
    }
}
