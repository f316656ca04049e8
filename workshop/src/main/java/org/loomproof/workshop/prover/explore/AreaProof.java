package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.explore.Finding.Found;
import org.loomproof.workshop.prover.explore.Finding.Unsettled;
import org.loomproof.workshop.prover.explore.Sensitivity.Effect;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.words.Phrase;

/** Decides the cases of one area: first with every figure at its typical value, then at the corner that is worst for each. */
final class AreaProof {

    private final ExplorerJob job;
    private final Area area;
    private final List<Case> cases;
    private final Space space;
    private final StepsTo stepsTo;
    private final Ends ends;
    private final Sweep typical;
    private long situations;
    private long solves;
    private long corners;

    AreaProof(ExplorerJob job, Area area, List<Case> cases) {
        this.job = job;
        this.area = area;
        this.cases = List.copyOf(cases);
        this.stepsTo = new StepsTo(job.brief().sheet(), job.brief().kit());
        this.ends = Ends.of(area, job.stock(), job.fitted());
        this.space = Sweep.space(job.brief(), job.stock(), job.fitted(), area, cases);
        this.typical = sweep(job.stock().restrictedTo(area), job.fitted().restrictedTo(area), cases, job.onlooker());
    }

    private Sweep sweep(Vehicle stock, Vehicle fitted, List<Case> asked, Onlooker onlooker) {
        Sweep sweep = new Sweep(job.brief().sheet(), space, stepsTo, stock, fitted, asked)
                .walk(onlooker.begins(space, fitted), job.isEnough())
                .between(job.isEnough());
        situations += sweep.situations();
        solves += sweep.solves();
        return sweep;
    }

    long situations() {
        return situations;
    }

    long solves() {
        return solves;
    }

    long corners() {
        return corners;
    }

    List<OperableId> leftAtRest() {
        return space.leftAtRest();
    }

    /**
     * The results, by the ids of the cases; a case that has nothing to say may have none. With more broken at typical values than
     * so many, or once it is enough, nothing further is looked at: what is decided alone is told.
     */
    Map<String, ClaimResult> results(int mostBroken) {
        Map<String, ClaimResult> lost = brokenAtTypical();
        if (lost.size() > mostBroken || job.isEnough().getAsBoolean()) {
            return lost;
        }
        Map<String, ClaimResult> results = new HashMap<>();
        Map<Integer, Sensitivity> sensitivities = sensitivities();
        List<Integer> holding = new ArrayList<>();
        for (int c = 0; c < cases.size(); c++) {
            Case each = cases.get(c);
            List<Assumption> restsOn = Optional.ofNullable(sensitivities.get(c))
                    .map(Words::assumptions)
                    .orElse(List.of());
            Optional<Verdict> early = beforeCorners(c);
            if (early.isPresent()) {
                results.put(each.id(), new ClaimResult(each.id(), each.statement(), early.get(), restsOn));
            } else if (typical.findings().get(c).worst().isPresent()) {
                results.put(each.id(), new ClaimResult(each.id(), each.statement(), holds(typical, c, c), restsOn));
                holding.add(c);
            }
        }
        ends.groups(sensitivities, holding).forEach((corner, again) -> {
            List<Case> asked = again.stream().map(cases::get).toList();
            for (Corner there : ends.of(corner)) {
                corners++;
                Sweep sweep = sweep(
                        Vehicle.stock(job.brief(), there).restrictedTo(area),
                        Vehicle.fitted(job.brief(), job.plan(), there).restrictedTo(area),
                        asked,
                        Onlooker.NONE);
                if (job.isEnough().getAsBoolean()) {
                    asked.forEach(each -> results.remove(each.id()));
                    return;
                }
                for (int k = 0; k < again.size(); k++) {
                    int c = again.get(k);
                    ClaimResult before =
                            Objects.requireNonNull(results.get(cases.get(c).id()));
                    Sensitivity sensitivity = Objects.requireNonNull(sensitivities.get(c));
                    results.put(before.id(), before.withWorse(atCorner(sweep, k, c, sensitivity, there)));
                }
            }
        });
        return results;
    }

    private Map<String, ClaimResult> brokenAtTypical() {
        Map<String, ClaimResult> broken = new HashMap<>();
        for (int c = 0; c < cases.size(); c++) {
            Case each = cases.get(c);
            beforeCorners(c)
                    .filter(Verdict.Broken.class::isInstance)
                    .ifPresent(v -> broken.put(each.id(), new ClaimResult(each.id(), each.statement(), v, List.of())));
        }
        return broken;
    }

    /** What is decided at typical values already; empty for what holds there, or has nothing to say and falls away. */
    private Optional<Verdict> beforeCorners(int c) {
        Case each = cases.get(c);
        Finding finding = typical.findings().get(c);
        if (finding.soonestBroken().isPresent()) {
            Situation soonest =
                    typical.situation(c, finding.soonestBroken().get().key());
            if (isSupposed(soonest)) {
                return Optional.of(new Verdict.Open(
                        Phrase.of("open.pulse-left", stepsTo.list(soonest)),
                        soonest.still().stream()
                                .map(lead -> new Measurement("pulse-of " + lead, Phrase.of("measure.pulse-left", lead)))
                                .toList()));
            }
            return Optional.of(
                    each.mayBeSettledBy().isEmpty()
                            ? broken(c, finding)
                            : new Verdict.Open(
                                    Phrase.of(
                                            "open.on-hold",
                                            each.mayBeSettledBy().getFirst().lead(),
                                            each.mayBeSettledBy().getFirst().because()),
                                    each.mayBeSettledBy().stream()
                                            .map(h -> h.until())
                                            .toList()));
        }
        if (finding.unsettled().isPresent()) {
            return Optional.of(unsettled(c, finding.unsettled().get()));
        }
        Optional<Verdict> between = between(finding);
        if (between.isPresent()) {
            return between;
        }
        if (finding.worst().isEmpty()) {
            return each.fallsAwayUnasked()
                    ? Optional.empty()
                    : Optional.of(new Verdict.Open(Phrase.of("open.never-arises"), List.of()));
        }
        if (!space.leftAtRest().isEmpty()) {
            return Optional.of(new Verdict.Open(Phrase.of("open.too-many-positions", space.leftAtRest()), List.of()));
        }
        if (stepsTo.isCutShort()) {
            return Optional.of(new Verdict.Open(Phrase.of("open.too-many-modes"), List.of()));
        }
        return Optional.empty();
    }

    /** What is kept at the supply points and not where contacts move between them is open. */
    private static Optional<Verdict> between(Finding finding) {
        return finding.between()
                .filter(place -> place.found().slack() < 0)
                .map(place ->
                        new Verdict.Open(Phrase.of("open.between-supply-points", new Volts(place.volts())), List.of()));
    }

    private boolean isSupposed(Situation situation) {
        return stepsTo.isSupposed(Condition.Doing.in(situation));
    }

    private Verdict broken(int c, Finding finding) {
        Case each = cases.get(c);
        Found worst = finding.worst().orElseThrow();
        Found soonest = finding.soonestBroken().orElseThrow();
        Margin margin = each.margin(typical.deciding(each, worst.key()));
        Situation situation = typical.situation(c, soonest.key());
        return new Verdict.Broken(margin, typical.witness(each, soonest.key(), situation, stepsTo));
    }

    private Verdict unsettled(int c, Unsettled trouble) {
        return switch (trouble.trouble()) {
            case Answers.Chatters chatters
            when !trouble.inStock() -> {
                Situation situation = typical.situation(c, trouble.key());
                Margin margin = new Margin(-1, "", chatters.words(), Phrase.of("margin.contacts-rest"));
                yield new Verdict.Broken(margin, new Witness(stepsTo.list(situation), situation, List.of()));
            }
            case Answers.Chatters chatters ->
                new Verdict.Open(Phrase.of("open.stock-chatters", chatters.words()), List.of());
            case Answers.Lost lost -> new Verdict.Open(lost.words(), List.of());
            case Answers.AtRest atRest -> throw new IllegalStateException("at rest is no trouble");
        };
    }

    private Verdict.Holds holds(Sweep sweep, int inSweep, int c) {
        Found worst = sweep.findings().get(inSweep).worst().orElseThrow();
        Case each = cases.get(c);
        return new Verdict.Holds(each.margin(sweep.deciding(each, worst.key())), sweep.situation(inSweep, worst.key()));
    }

    private Verdict atCorner(Sweep sweep, int inSweep, int c, Sensitivity sensitivity, Corner corner) {
        Finding finding = sweep.findings().get(inSweep);
        if (finding.soonestBroken().isPresent()) {
            Key key = finding.soonestBroken().get().key();
            return flipped(
                    cases.get(c),
                    sweep.situation(inSweep, key),
                    key,
                    sensitivity.atAnyWarmth(),
                    corner.only(Warmth.KEY));
        }
        if (finding.unsettled().isPresent()) {
            return new Verdict.Open(Phrase.of("open.unsettled-in-range"), List.of());
        }
        Optional<Verdict> between = between(finding);
        if (between.isPresent()) {
            return between.get();
        }
        double slackThere = finding.worst().map(Found::slack).orElse(Double.POSITIVE_INFINITY);
        double slackTypical = typical.findings().get(c).worst().orElseThrow().slack();
        return slackThere < slackTypical ? holds(sweep, inSweep, c) : holds(typical, c, c);
    }

    /**
     * What is said of a case that some corner flips at that situation: how warm the car may be is no question of a reading, so
     * that a case which warmth alone flips is broken; else it is open for the strongest figures that together do.
     */
    private Verdict flipped(Case each, Situation situation, Key key, Sensitivity sensitivity, Corner warmth) {
        Beside warm = at(key, warmth);
        if (warm.slack(each) < 0) {
            Pair pair = Beside.deciding(each, warm.solve().orElseThrow());
            List<Phrase> steps = new ArrayList<>(stepsTo.list(situation));
            steps.add(Phrase.of("step.warmth", warm.fitted().wired().warmth()));
            return new Verdict.Broken(each.margin(pair), new Witness(steps, situation, each.observations(pair)));
        }
        List<Effect> flipping = flipping(each, key, sensitivity.harmful(), warmth);
        List<Phrase> told = new ArrayList<>(
                flipping.stream().map(e -> Words.range(e.figure())).toList());
        if (at(key, Sensitivity.corner(flipping)).slack(each) >= 0) {
            told.add(Words.range(Warmth.range(job.brief().order().shop())));
        }
        return new Verdict.Open(
                Phrase.of("open.flips", told),
                flipping.stream().map(e -> Words.reading(e.figure())).toList());
    }

    /** The strongest figures that together flip the case at that situation, in a car as warm as that. */
    private List<Effect> flipping(Case each, Key key, List<Effect> harmful, Corner warmth) {
        for (int count = 1; count < harmful.size(); count++) {
            if (at(key, warmth.and(Sensitivity.corner(harmful.subList(0, count))))
                            .slack(each)
                    < 0) {
                return harmful.subList(0, count);
            }
        }
        return harmful;
    }

    private Beside at(Key key, Corner corner) {
        return new Beside(
                space,
                key,
                Vehicle.stock(job.brief(), corner).restrictedTo(area),
                Vehicle.fitted(job.brief(), job.plan(), corner).restrictedTo(area),
                typical.working(),
                new Workbench());
    }

    /** How each case moves with the ranged figures at the situation that decides it. */
    private Map<Integer, Sensitivity> sensitivities() {
        List<Variations.Variation> variations = job.variations().within(area);
        Map<Integer, List<Double>> slacks = new HashMap<>();
        for (Variations.Variation variation : variations) {
            corners++;
            Workbench bench = new Workbench();
            Map<Key, Optional<List<List<Pair>>>> solved = new HashMap<>();
            for (int c = 0; c < cases.size(); c++) {
                Optional<Found> worst = typical.findings().get(c).worst();
                if (worst.isPresent()) {
                    Optional<List<List<Pair>>> pairs = solved.computeIfAbsent(
                            worst.get().key(),
                            key -> new Beside(
                                            space, key, variation.stock(), variation.fitted(), typical.working(), bench)
                                    .solve());
                    Case each = cases.get(c);
                    slacks.computeIfAbsent(c, k -> new ArrayList<>())
                            .add(pairs.map(p -> Beside.slack(each, p)).orElse(Double.NaN));
                }
            }
            solves += bench.solves();
        }
        Map<Integer, Sensitivity> sensitivities = new HashMap<>();
        slacks.forEach((c, each) -> {
            Found worst = typical.findings().get(c).worst().orElseThrow();
            sensitivities.put(c, Sensitivity.of(worst.key(), worst.slack(), variations, each));
        });
        return sensitivities;
    }
}
