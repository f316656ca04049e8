package org.loomproof.workshop.planner.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CutWord.Drive;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * What is offered for a load with two legs is what a walk through all of it finds: every pair of ends, every chain of contacts in either
 * leg, every way to work coils, each looked at by what is joined to what and by nothing that the grammar says.
 */
class LegGrammarTest {

    private static final int BODY = 0;
    private static final int SUPPLY = 1;
    private static final int FIRST_LEG = 2;
    private static final int SECOND_LEG = 3;

    static Stream<List<Cuts.Output>> outputs() {
        List<Cuts.Output> all = Stream.of(Side.values())
                .flatMap(side -> Stream.of(false, true).map(leaks -> new Cuts.Output(side, leaks)))
                .toList();
        return all.stream().flatMap(one -> all.stream().map(other -> List.of(one, other)));
    }

    @ParameterizedTest
    @MethodSource("outputs")
    void whatIsOfferedIsWhatAWalkThroughAllOfItFinds(List<Cuts.Output> outputs) {
        Set<List<Object>> found = new HashSet<>();
        for (Set<String> circuit : FEWEST) {
            for (Drive first : follow(outputs.getFirst())) {
                for (Drive second : follow(outputs.getLast())) {
                    found.add(List.of(circuit, first, second));
                }
            }
        }

        Enumeration<LegWord> offered = LegGrammar.of(outputs, false);

        assertThat(offered.words().stream().map(LegGrammarTest::told).toList())
                .containsExactlyInAnyOrderElementsOf(found);
    }

    private static List<Object> told(LegWord word) {
        return List.of(
                circuit(word.rests(), word.word().wires()),
                word.word().drives().getFirst(),
                word.word().drives().getLast());
    }

    @ParameterizedTest
    @MethodSource("outputs")
    void everyWordIsCountedOnce(List<Cuts.Output> outputs) {
        for (boolean besideMotors : new boolean[] {false, true}) {
            Enumeration<LegWord> found = LegGrammar.of(outputs, besideMotors);
            long leftOut =
                    found.leftOut().values().stream().mapToLong(Long::longValue).sum();
            assertThat(leftOut + found.words().size()).isEqualTo(found.enumerated());
            // Each leg may lead to either pole, to nothing, or to a leg of the car's own motors.
            assertThat(found.enumerated()).isEqualTo((besideMotors ? 16L : 9L) * 6_380_676L);
        }
    }

    /** Legs at opposite poles turn the load for good, and one that leads nowhere wants more relays. */
    @Test
    void wholePairsOfEndsAreLeftOutForTheReasonThatAppliesToThem() {
        Enumeration<LegWord> found =
                LegGrammar.of(List.of(new Cuts.Output(Side.LOW, false), new Cuts.Output(Side.LOW, false)), false);

        assertThat(found.leftOut().get(LeftOut.SAME_WITH_FEWER)).isEqualTo(5 * 6_380_676L);
        assertThat(found.leftOut().get(LeftOut.WORKS_AT_REST)).isGreaterThanOrEqualTo(2 * 6_380_676L);
        assertThat(found.words())
                .extracting(LegWord::rests)
                .containsOnly(List.of(Given.LOW, Given.LOW), List.of(Given.HIGH, Given.HIGH));
    }

    /** The circuits with the fewest relays that turn a load one way by one lead and the other way by the other. */
    private static final Set<Set<String>> FEWEST = walk();

    private static Set<Set<String>> walk() {
        TreeMap<Integer, Set<Set<String>>> byRelays = new TreeMap<>();
        List<List<Throw>> chains = CutGrammar.chains(2);
        long right = 0;
        for (Given first : Given.values()) {
            for (Given second : Given.values()) {
                List<Given> ends = List.of(first, second);
                for (List<Throw> one : chains) {
                    for (List<Throw> other : chains) {
                        List<List<Throw>> wires = List.of(one, other);
                        if (turns(ends, wires)) {
                            right++;
                            byRelays.computeIfAbsent(one.size() + other.size(), n -> new HashSet<>())
                                    .add(circuit(ends, wires));
                        }
                    }
                }
            }
        }
        Note.that("of " + 9L * chains.size() * chains.size() + " ways to lay contacts in two legs " + right
                + " turn the load as they should, "
                + byRelays.firstEntry().getValue().size() + " circuits of them with "
                + byRelays.firstKey() + " relays");
        return byRelays.firstEntry().getValue();
    }

    /** At rest nothing moves, each lead by itself turns its way, and in no state do the poles meet. */
    private static boolean turns(List<Given> ends, List<List<Throw>> wires) {
        for (int on = 0; on < 4; on++) {
            int[] joined = joined(ends, wires, on);
            int plus = pole(joined, FIRST_LEG);
            int minus = pole(joined, SECOND_LEG);
            boolean asItShould = switch (on) {
                case 0 -> plus < 0 || minus < 0 || plus == minus;
                case 1 -> plus == SUPPLY && minus == BODY;
                case 2 -> plus == BODY && minus == SUPPLY;
                default -> true;
            };
            if (find(joined, BODY) == find(joined, SUPPLY) || !asItShould) {
                return false;
            }
        }
        return true;
    }

    private static int pole(int[] joined, int node) {
        return find(joined, node) == find(joined, BODY)
                ? BODY
                : find(joined, node) == find(joined, SUPPLY) ? SUPPLY : -1;
    }

    /** What is one node in that state. */
    private static int[] joined(List<Given> ends, List<List<Throw>> wires, int on) {
        int[] joined = new int[16];
        for (int i = 0; i < joined.length; i++) {
            joined[i] = i;
        }
        int fresh = SECOND_LEG + 1;
        for (int leg = 0; leg < 2; leg++) {
            int here = FIRST_LEG + leg;
            for (Throw each : wires.get(leg)) {
                int gives = each.gives() == Given.NOTHING ? fresh++ : each.gives() == Given.LOW ? BODY : SUPPLY;
                int next = each.isThrough() ? fresh++ : here;
                int[] contact = contact(each, here, next, gives);
                boolean worked = (on & 1 << each.lead()) != 0;
                join(joined, contact[0], worked ? contact[1] : contact[2]);
                here = next;
            }
            switch (ends.get(leg)) {
                case LOW -> join(joined, here, BODY);
                case HIGH -> join(joined, here, SUPPLY);
                case NOTHING -> {}
            }
        }
        return joined;
    }

    /** What 30, 87 and 87a lie on; an empty terminal lies on 30 itself. */
    private static int[] contact(Throw each, int load, int feed, int gives) {
        return switch (each.lie()) {
            case BREAK -> new int[] {load, gives, feed};
            case BREAK_TURNED -> new int[] {feed, gives, load};
            case MAKE -> new int[] {load, feed, gives};
            case MAKE_TURNED -> new int[] {feed, load, gives};
            case BESIDE -> new int[] {load, gives, load};
            case BESIDE_AT_REST -> new int[] {load, load, gives};
        };
    }

    private static void join(int[] joined, int one, int other) {
        joined[find(joined, one)] = find(joined, other);
    }

    private static int find(int[] joined, int node) {
        int root = node;
        while (joined[root] != root) {
            root = joined[root];
        }
        return root;
    }

    /** The circuit by what each relay's terminals lie on: a leg that ends at a pole and a contact that gives it are one and the same. */
    private static Set<String> circuit(List<Given> ends, List<List<Throw>> wires) {
        List<String> relays = new ArrayList<>();
        for (int leg = 0; leg < 2; leg++) {
            String end = ends.get(leg).toString();
            for (Throw each : wires.get(leg)) {
                String load = wires.get(leg).size() == 1 ? "load" : "row " + wires.get(leg);
                List<String> lies = switch (each.lie()) {
                    case BREAK -> List.of(load, each.gives().toString(), end);
                    case BREAK_TURNED -> List.of(end, each.gives().toString(), load);
                    case MAKE -> List.of(load, end, each.gives().toString());
                    case MAKE_TURNED -> List.of(end, load, each.gives().toString());
                    case BESIDE -> List.of(load + " " + end, each.gives().toString(), "");
                    case BESIDE_AT_REST ->
                        List.of(load + " " + end, "", each.gives().toString());
                };
                relays.add("leg " + leg + ", lead " + each.lead() + ": " + lies);
            }
        }
        return relays.stream().collect(Collectors.toUnmodifiableSet());
    }

    /** What works a coil while the output is on and not while it is open, with a diode only where current would come back. */
    private static List<Drive> follow(Cuts.Output output) {
        return CutGrammar.drives().stream()
                .filter(drive -> drive.buffer() == Buffering.NONE
                        ? drive.coil().pole() != output.gives()
                        : (drive.buffer() == Buffering.ON_SUPPLY) == (output.gives() == Side.HIGH))
                .filter(drive -> output.leaks() || !drive.isolated())
                .toList();
    }
}
