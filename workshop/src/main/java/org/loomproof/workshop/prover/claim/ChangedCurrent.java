package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.explore.CurrentPath;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Phrase;

/** A factory load draws what it draws in the stock vehicle, but for a small share; where it does not, by which way is told. */
abstract class ChangedCurrent extends LoadCase {

    /** A load's current may change by this share of what it draws; common practice, no published source. */
    static final double ALLOWED_PERCENT = 5;

    private final Limit limit;
    private final boolean moves;

    ChangedCurrent(String claim, ElementId load, Fitting fitting, Limit limit) {
        super(claim, load, fitting);
        this.limit = limit;
        this.moves = moves(fitting.brief().sheet(), load);
    }

    private static boolean moves(Sheet sheet, ElementId load) {
        return sheet.circuits().stream()
                .flatMap(circuit -> circuit.paths().stream())
                .flatMap(List::stream)
                .anyMatch(step -> step instanceof PathStep.Load part
                        && part.id().equals(load)
                        && (part.kind() == PathStep.LoadKind.MOTOR || part.kind() == PathStep.LoadKind.SOLENOID));
    }

    /** A motor or a solenoid that works unbidden, and goes on: it moves something, stalls and burns. */
    @Override
    public Severity severity(Pair pair) {
        boolean unbidden = amps(pair.fitted()) > WORKS_SHARE * pair.working().amps(pair.supply(), load);
        return moves && !worksInStock(pair) && unbidden ? Severity.FIRE_OR_LOSS_OF_CONTROL : Severity.NUISANCE;
    }

    @Override
    public final List<OperableId> asksAbout() {
        return limit.asksAbout();
    }

    @Override
    public double slack(Pair pair) {
        return allowedPercent(pair) - changePercent(pair);
    }

    /** What is declared of a current that rises does not hold for one that falls or turns round. */
    private double allowedPercent(Pair pair) {
        double before = signedAmps(pair.stock());
        double now = signedAmps(pair.fitted());
        boolean turnedRound = before * now < 0 && Math.min(Math.abs(before), Math.abs(now)) > NEGLIGIBLE_AMPS;
        return turnedRound
                ? ALLOWED_PERCENT
                : Math.max(ALLOWED_PERCENT, limit.percent(pair, Math.abs(now) > Math.abs(before)));
    }

    @Override
    public final Margin margin(Pair pair) {
        double change = changePercent(pair);
        return new Margin(
                slack(pair),
                "%",
                Phrase.of(
                        "margin.draws-instead-of",
                        Shown.amps(amps(pair.fitted())),
                        Shown.amps(amps(pair.stock())),
                        Figures.plain(change)),
                Phrase.of("margin.at-most-percent", Figures.plain(allowedPercent(pair))));
    }

    /** Of its current here where it works, of the most it ever draws at this supply point where it rests. */
    private double changePercent(Pair pair) {
        double working = pair.working().amps(pair.supply(), load);
        double reference = worksInStock(pair) ? amps(pair.stock()) : working;
        double change = Math.abs(signedAmps(pair.fitted()) - signedAmps(pair.stock()));
        return change <= NEGLIGIBLE_AMPS ? 0 : 100 * change / Math.max(reference, NEGLIGIBLE_AMPS);
    }

    @Override
    public final List<Observation> observations(Pair pair) {
        List<Observation> seen = new ArrayList<>(super.observations(pair));
        if (amps(pair.fitted()) > NEGLIGIBLE_AMPS) {
            seen.add(CurrentPath.observed(pair.fitted(), about()));
        }
        return seen;
    }
}
