package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.prover.claim.CoilKick;
import org.loomproof.workshop.prover.damage.AsPlanned;
import org.loomproof.workshop.prover.damage.ColdLoom;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.DamageLook;
import org.loomproof.workshop.prover.damage.DamageSearch;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * Goes through the tests that notice a mishap again with every second mishap there as well. Nothing is hidden where one sign of
 * each is still to be seen, which mostly the first test shows.
 */
final class PairSearch {

    private final AsPlanned job;
    private final DamageSearch search;
    private final ColdLoom cold;
    private final Consequences consequences;
    private final TestChoice.Chosen chosen;
    private final List<Integer> numbers;
    private final List<Integer> results;

    /**
     * @param chosen the test order, with what each result shows in it
     * @param numbers of the damage of each result; of results with one damage the first stands for all
     */
    PairSearch(
            AsPlanned job,
            DamageSearch search,
            ColdLoom cold,
            Consequences consequences,
            TestChoice.Chosen chosen,
            List<Integer> numbers) {
        this.job = job;
        this.search = search;
        this.cold = cold;
        this.consequences = consequences;
        this.chosen = chosen;
        this.numbers = numbers;
        this.results = IntStream.range(0, numbers.size())
                .filter(r -> numbers.indexOf(numbers.get(r)) == r)
                .boxed()
                .toList();
    }

    private record Two(int one, int other) {}

    /** What two at once come to: whether one hides the other, and the pair where nothing at all is seen. */
    private record Looked(boolean isHidden, Optional<MaskedPairs.Masked> masked) {
        private static final Looked PLAIN = new Looked(false, Optional.empty());
        private static final Looked HIDDEN = new Looked(true, Optional.empty());
    }

    MaskedPairs pairs(FaultWatch watch) {
        List<Two> all = worthLooking();
        List<Two> near = all.stream()
                .filter(two -> !search.areApart(numbers.get(two.one()), numbers.get(two.other())))
                .toList();
        AtomicInteger done = new AtomicInteger();
        List<Optional<Looked>> looked = near.stream()
                .parallel()
                .map(two -> {
                    if (watch.isEnough()) {
                        return Optional.<Looked>empty();
                    }
                    Looked here = look(two);
                    watch.lookedAt(done.incrementAndGet(), near.size());
                    return Optional.of(here);
                })
                .toList();
        List<Looked> known = looked.stream().flatMap(Optional::stream).toList();
        List<MaskedPairs.Masked> passing = known.stream()
                .flatMap(each -> each.masked().stream())
                .sorted(Comparator.comparing(MaskedPairs.Masked::severity))
                .toList();
        return new MaskedPairs(
                passing,
                (int) known.stream().filter(Looked::isHidden).count(),
                all.size() - near.size(),
                known.size(),
                near.size() - known.size());
    }

    /** Pairs of which some test notices at least one, and that one matters. */
    private List<Two> worthLooking() {
        List<Two> all = new ArrayList<>();
        for (int k = 0; k < results.size(); k++) {
            for (int j = k + 1; j < results.size(); j++) {
                Two two = new Two(results.get(k), results.get(j));
                if (matters(two.one()) || matters(two.other())) {
                    all.add(two);
                }
            }
        }
        return all;
    }

    private boolean matters(int result) {
        return chosen.proof().isNoticed(result)
                && chosen.proof().results().get(result).severity() != Severity.NONE;
    }

    private Looked look(Two two) {
        List<MishapResult> singles = chosen.proof().results();
        Optional<Damage> damage = Damage.both(
                singles.get(two.one()).mishap(),
                singles.get(two.other()).mishap(),
                job.brief(),
                job.plan(),
                job.fitted().wired());
        if (damage.isEmpty()) {
            return Looked.PLAIN;
        }
        Tests tests = new Tests(damage.get());
        if (!tests.hide(two.one()) && !tests.hide(two.other())) {
            return Looked.PLAIN;
        }
        if (tests.showAnything()) {
            return Looked.HIDDEN;
        }
        Consequences.All both = consequences.of(tests.outcome());
        int seen = matters(two.one()) ? two.one() : two.other();
        int hiding = seen == two.one() ? two.other() : two.one();
        return new Looked(
                false,
                Optional.of(new MaskedPairs.Masked(
                        singles.get(seen).mishap(),
                        singles.get(hiding).mishap(),
                        both.severity(),
                        both.breaks(),
                        tests.look.isRestless())));
    }

    /** The test order at a car with one damage, each test done when it is first asked for. */
    private final class Tests {
        private final Damage damage;
        private final DamageLook look;
        private @Nullable BitSet measuredDead;
        private @Nullable Outcome outcome;

        Tests(Damage damage) {
            this.damage = damage;
            this.look = search.look(damage);
        }

        Outcome outcome() {
            Outcome known = outcome == null ? search.outcome(damage) : outcome;
            outcome = known;
            return known;
        }

        /** Whether a result that is noticed when it is alone shows no sign of itself. */
        boolean hide(int result) {
            List<Integer> by = chosen.proof().testOrder().noticedBy().get(result);
            return !by.isEmpty()
                    && by.stream()
                            .noneMatch(t -> shown(t).intersects(
                                            chosen.shown().get(result).get(t)));
        }

        /** Whether anything at all differs in the whole order. */
        boolean showAnything() {
            return IntStream.range(0, chosen.proof().testOrder().tests().size()).anyMatch(t -> !shown(t).isEmpty());
        }

        private BitSet shown(int place) {
            HandTest test = chosen.proof().testOrder().tests().get(place);
            BitSet differing = new BitSet();
            switch (test.metered().orElse(null)) {
                case Sign.Cold sign -> differing.set(chosen.signs().indexOf(sign), isColdDiffering(sign));
                case Sign.Kick kick ->
                    differing.set(
                            chosen.signs().indexOf(kick),
                            outcome().breaks().stream().anyMatch(b -> CoilKick.isCaseOf(kick.lead(), b.claim())));
                case null, default -> {
                    test.situations().forEach(situation -> differing.or(look.at(situation)));
                    for (int k = differing.nextSetBit(0); k >= 0; k = differing.nextSetBit(k + 1)) {
                        differing.set(k, test.looksAt(chosen.signs().get(k)));
                    }
                }
            }
            return differing;
        }

        private boolean isColdDiffering(Sign.Cold sign) {
            BitSet known = measuredDead == null ? cold.differing(damage) : measuredDead;
            measuredDead = known;
            return known.get(cold.signs().indexOf(sign));
        }
    }
}
