package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/** Where wires go on on another sheet of a schematic. */
final class GoingOn {

    private GoingOn() {}

    /**
     * A wire that is on two sheets says on each what it goes to on the other and that one's number.
     *
     * @return how many wires are on two sheets
     */
    static int assertBothSidesSayWhere(Plan plan, List<PlacedDrawing> sheets, Wording words) {
        List<List<String>> texts = sheets.stream()
                .map(sheet ->
                        sheet.listLettering().stream().map(Ink.Lettering::text).toList())
                .toList();
        int count = 0;
        for (AddedWire wire : plan.wires()) {
            List<Integer> on = IntStream.range(0, sheets.size())
                    .filter(i -> texts.get(i).stream()
                            .anyMatch(text ->
                                    List.of(text.split(" ")).contains(wire.id().value())))
                    .boxed()
                    .toList();
            assertThat(on).as("sheets of %s", wire.id().value()).hasSizeBetween(1, 2);
            if (on.size() == 2) {
                count++;
                int one = on.getFirst();
                int other = on.getLast();
                boolean isAsListed = texts.get(one).contains(flag(wire.to(), other, words))
                        && texts.get(other).contains(flag(wire.from(), one, words));
                boolean isReversed = texts.get(one).contains(flag(wire.from(), other, words))
                        && texts.get(other).contains(flag(wire.to(), one, words));
                assertThat(isAsListed || isReversed)
                        .as("flags of %s on sheets %d and %d", wire.id().value(), one + 1, other + 1)
                        .isTrue();
            }
        }
        return count;
    }

    private static String flag(End end, int sheet, Wording words) {
        return words.of("schematic.goes-on", words.end(end), String.valueOf(sheet + 1));
    }
}
