package org.loomproof.workshop.planner.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomproof.workshop.planner.cut.Given.HIGH;
import static org.loomproof.workshop.planner.cut.Given.LOW;
import static org.loomproof.workshop.planner.cut.Given.NOTHING;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CutWire.Hand;
import org.loomproof.workshop.planner.cut.Throw.Lie;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;

/** Relays in cut wires are walked whole, and what is left out is left out rightly: the engine says the same on a bench. */
class CutGrammarTest {

    private static final CutWire STARTER = new CutWire(NOTHING, Hand.STAYS, List.of(NOTHING));

    static Stream<CutWire> wires() {
        return Stream.of(
                STARTER,
                leg(LOW, HIGH, LOW),
                leg(LOW, LOW, HIGH),
                leg(HIGH, LOW, HIGH),
                leg(NOTHING, HIGH, LOW),
                new CutWire(NOTHING, Hand.STAYS, List.of(LOW, HIGH)),
                new CutWire(NOTHING, Hand.STAYS, List.of(LOW, NOTHING)),
                new CutWire(LOW, Hand.NONE, List.of(HIGH, LOW)),
                new CutWire(LOW, Hand.COMES_BACK, List.of(HIGH)));
    }

    private static CutWire leg(Given rest, Given first, Given second) {
        return new CutWire(rest, Hand.COMES_BACK, List.of(first, second));
    }

    static Stream<Cuts> shapes() {
        return Stream.of(false, true)
                .flatMap(leaks -> Stream.of(Side.values())
                        .flatMap(side -> Stream.of(
                                cuts(side, leaks, 1, STARTER),
                                cuts(side, leaks, 1, STARTER, STARTER),
                                cuts(side, leaks, 2, leg(LOW, HIGH, LOW), leg(LOW, LOW, HIGH)),
                                cuts(side, leaks, 2, leg(NOTHING, HIGH, LOW), leg(NOTHING, LOW, HIGH)),
                                cuts(side, leaks, 2, new CutWire(NOTHING, Hand.STAYS, List.of(LOW, HIGH))))));
    }

    private static Cuts cuts(Side side, boolean leaks, int leads, CutWire... wires) {
        return new Cuts(
                List.of(wires),
                IntStream.range(0, leads)
                        .mapToObj(i -> new Cuts.Output(side, leaks))
                        .toList());
    }

    @Test
    void everyWordIsWalkedOnceAndWithinTheBound() {
        Set<CutWord> seen = new HashSet<>();
        for (int leads = 1; leads <= 2; leads++) {
            int most = leads;
            for (int wires = 1; wires <= 3 - leads; wires++) {
                CutGrammar.each(wires, leads, word -> {
                    assertThat(seen.add(word)).as("%s", word).isTrue();
                    for (int lead = 0; lead < most; lead++) {
                        assertThat(word.relays(lead)).isLessThanOrEqualTo(CutGrammar.MOST_RELAYS);
                    }
                });
            }
        }
        long both = CutGrammar.of(cuts(Side.LOW, false, 2, leg(LOW, HIGH, LOW), leg(LOW, LOW, HIGH)))
                .enumerated();
        Note.that("the grammar of cut wires has " + seen.size() + " words for one wire or one lead, and " + both
                + " for two leads on two wires");
    }

    @Test
    void whatTheTradeDoesIsFoundWhereItFits() {
        Throw starts = new Throw(0, Lie.BREAK, NOTHING);
        Throw locks = new Throw(0, Lie.BREAK, HIGH);
        Throw unlocks = new Throw(1, Lie.BREAK, HIGH);
        Throw locksOther = new Throw(0, Lie.BREAK, LOW);
        Throw unlocksOther = new Throw(1, Lie.BREAK, LOW);

        assertThat(chains(cuts(Side.LOW, false, 1, STARTER))).containsExactly(List.of(List.of(starts)));
        assertThat(chains(cuts(Side.LOW, false, 2, leg(LOW, HIGH, LOW), leg(LOW, LOW, HIGH))))
                .containsExactly(List.of(List.of(locks), List.of(unlocks)));
        assertThat(chains(cuts(Side.LOW, false, 2, leg(NOTHING, HIGH, LOW), leg(NOTHING, LOW, HIGH))))
                .contains(List.of(List.of(locks, unlocksOther), List.of(locksOther, unlocks)))
                .hasSize(4);
        assertThat(chains(cuts(Side.LOW, false, 2, new CutWire(NOTHING, Hand.STAYS, List.of(LOW, HIGH)))))
                .containsExactlyInAnyOrder(
                        List.of(List.of(locksOther, unlocks)), List.of(List.of(unlocks, locksOther)));
    }

    private static Set<List<List<Throw>>> chains(Cuts cuts) {
        Set<List<List<Throw>>> chains = new HashSet<>();
        CutGrammar.of(cuts).words().forEach(word -> chains.add(word.wires()));
        return chains;
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyWordIsCountedOnce(Cuts cuts) {
        Enumeration<CutWord> found = CutGrammar.of(cuts);

        long leftOut =
                found.leftOut().values().stream().mapToLong(Long::longValue).sum();
        assertThat(leftOut + found.words().size()).isEqualTo(found.enumerated());
        assertThat(found.words()).isNotEmpty().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("wires")
    void theEngineSaysTheSameOfContactsOnABench(CutWire wire) {
        Set<Optional<LeftOut>> met = new HashSet<>();
        for (List<Throw> chain : CutGrammar.chains(wire.wanted().size())) {
            Optional<LeftOut> reason = CutJudge.leaveOut(wire, chain);
            Set<LeftOut> faults = faults(wire, chain);
            met.add(reason);
            if (reason.filter(r -> r != LeftOut.IDLE_PART).isPresent()) {
                assertThat(faults).as("%s", chain).contains(reason.get());
            } else {
                assertThat(faults).as("%s", chain).isEmpty();
            }
        }
        assertThat(met).contains(Optional.empty(), Optional.of(LeftOut.SHORT), Optional.of(LeftOut.OPENS_WIRE));
    }

    private static Set<LeftOut> faults(CutWire wire, List<Throw> chain) {
        int leads = wire.wanted().size();
        CutBench bench = new CutBench(chain, leads);
        Set<LeftOut> faults = EnumSet.noneOf(LeftOut.class);
        for (int on = 0; on < 1 << leads; on++) {
            for (Given feed : wire.ever()) {
                if (bench.see(on, feed).isShort()) {
                    faults.add(LeftOut.SHORT);
                }
            }
        }
        for (Given feed : List.of(LOW, HIGH)) {
            if (bench.see(0, feed).load() != feed) {
                faults.add(LeftOut.OPENS_WIRE);
            }
        }
        if (bench.see(0, NOTHING).load() != NOTHING) {
            faults.add(LeftOut.WORKS_AT_REST);
        }
        for (int lead = 0; lead < leads; lead++) {
            for (Given feed : wire.atWork()) {
                if (bench.see(1 << lead, feed).load() != wire.wanted().get(lead)) {
                    faults.add(LeftOut.NEVER_WORKS);
                }
            }
        }
        return faults;
    }
}
