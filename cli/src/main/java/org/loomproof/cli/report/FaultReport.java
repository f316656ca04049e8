package org.loomproof.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loomproof.shop.job.TriedFaults;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MaskedPairs;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What faults and slips come to, and the order of the tests, as lines for a terminal. */
public final class FaultReport {

    /** Effects told of one mishap; the JSON holds them all. */
    private static final int MOST_EFFECTS = 2;

    private final Messages messages;

    /** Words come from these messages. */
    public FaultReport(Messages messages) {
        this.messages = messages;
    }

    /**
     * The report.
     *
     * @param all whether nuisances and what touches nothing are told one by one as well
     */
    public List<String> lines(TriedFaults tried, boolean all) {
        Brief brief = tried.brief();
        FaultProof faults = tried.faults();
        Lines lines = new Lines();
        lines.wrap(
                messages.text(
                        "report.title",
                        brief.sheet().vehicle().name(),
                        brief.kit().name()),
                "  ");
        for (Severity severity : Severity.values()) {
            boolean inFull = all || severity.compareTo(Severity.NUISANCE) < 0;
            addSeverity(lines, faults, severity, inFull);
        }
        addTests(lines, faults);
        addUnnoticed(lines, faults);
        tried.pairs().ifPresent(pairs -> addPairs(lines, pairs));
        lines.gap();
        FaultProof.Coverage coverage = faults.coverage();
        lines.wrap(messages.text("faults.coverage", coverage.noticed(), coverage.all(), coverage.percent()), "  ");
        lines.wrap(
                messages.text(
                        "faults.effort",
                        faults.effort().situations(),
                        faults.effort().walked(),
                        faults.effort().solves()),
                "  ");
        if (faults.testOrder().gap() > 0) {
            lines.wrap(messages.text("faults.gap", faults.testOrder().gap()), "  ");
        }
        faults.bounds().forEach(bound -> lines.wrap(messages.text("faults.bound", bound), "  "));
        lines.gap().wrap(messages.text("report.caution"), "  ");
        return lines.all();
    }

    private void addSeverity(Lines lines, FaultProof faults, Severity severity, boolean inFull) {
        FaultProof.Coverage coverage = faults.coverage(severity);
        if (coverage.all() == 0) {
            return;
        }
        lines.gap()
                .wrap(
                        messages.text(
                                "faults.severity",
                                messages.text("severity." + severity.word()),
                                coverage.all(),
                                coverage.noticed()),
                        "  ");
        for (int k = 0; inFull && k < faults.results().size(); k++) {
            if (faults.results().get(k).severity() == severity) {
                addMishap(lines, faults, k);
            }
        }
    }

    private void addMishap(Lines lines, FaultProof faults, int place) {
        MishapResult result = faults.results().get(place);
        lines.wrap("  " + messages.text(result.mishap().words()), "    ");
        result.opens().forEach(fuse -> lines.wrap("    " + messages.text("faults.opens", fuse), "      "));
        List<Phrase> effects = result.effects();
        effects.stream().limit(MOST_EFFECTS).forEach(effect -> lines.wrap("    " + messages.text(effect), "      "));
        if (effects.size() > MOST_EFFECTS) {
            lines.wrap("    " + messages.text("faults.more", effects.size() - MOST_EFFECTS), "      ");
        }
        result.breaks().stream().findFirst().ifPresent(worst -> lines.wrap("    " + steps(worst), "      "));
        result.undecided().forEach(open -> lines.wrap("    " + messages.text("faults.undecided", open), "      "));
        lines.wrap("    " + noticed(faults, place), "      ");
    }

    private String steps(Break worst) {
        List<String> steps =
                worst.witness().steps().stream().map(messages::text).toList();
        return steps.isEmpty()
                ? messages.text("faults.at-once")
                : messages.text("faults.to-see-it", String.join("; ", steps));
    }

    private String noticed(FaultProof faults, int place) {
        List<Integer> by = faults.testOrder().noticedBy().get(place);
        return by.isEmpty()
                ? messages.text("faults.unnoticed", faults.inspection(place))
                : messages.text("faults.noticed", by.getFirst() + 1);
    }

    private void addTests(Lines lines, FaultProof faults) {
        lines.gap().wrap(messages.text("faults.tests", faults.testOrder().seconds() / 60.0), "  ");
        lines.wrap("  " + messages.text("test.windows-down"), "    ");
        for (int t = 0; t < faults.testOrder().tests().size(); t++) {
            HandTest test = faults.testOrder().tests().get(t);
            List<String> steps = new ArrayList<>();
            steps.add(messages.text("faults.from." + test.from().word()));
            test.steps().forEach(step -> steps.add(messages.text(step)));
            List<String> watch = watch(faults, t);
            lines.wrap("  " + (t + 1) + ". " + String.join("; ", steps), "     ");
            if (!watch.isEmpty()) {
                lines.wrap("     " + messages.text("faults.watch", String.join(", ", watch)), "     ");
            }
        }
    }

    /** What the meter must show, or what there is to see. */
    private List<String> watch(FaultProof faults, int test) {
        Stream<Phrase> shown = faults.expected().get(test).stream()
                .flatMap(showing -> faults.testOrder()
                        .tests()
                        .get(test)
                        .metered()
                        .map(sign -> showing.there().contains(sign)
                                ? Stream.of(sign.words(true))
                                : showing.absent().contains(sign)
                                        ? Stream.of(sign.words(false))
                                        : Stream.<Phrase>empty())
                        .orElseGet(Stream::empty));
        List<String> metered = shown.map(messages::text).distinct().toList();
        return metered.isEmpty()
                ? faults.watch().get(test).stream()
                        .map(Sign::words)
                        .map(messages::text)
                        .toList()
                : metered;
    }

    private void addPairs(Lines lines, MaskedPairs pairs) {
        lines.gap().wrap(messages.text("faults.pairs", pairs.lookedAt(), pairs.apart()), "  ");
        lines.wrap("  " + messages.text("faults.pairs-hidden", pairs.hidden()), "    ");
        List<MaskedPairs.Masked> harmful = pairs.harmful();
        lines.wrap("  " + messages.text("faults.pairs-harmless", pairs.passing().size() - harmful.size()), "    ");
        lines.wrap("  " + messages.text("faults.pairs-passing", harmful.size()), "    ");
        for (MaskedPairs.Masked pair : harmful) {
            lines.wrap(
                    "  - "
                            + messages.text(
                                    "faults.pair",
                                    messages.text("severity." + pair.severity().word()),
                                    pair.one().words(),
                                    pair.other().words()),
                    "    ");
            if (pair.isRestless()) {
                lines.wrap("    " + messages.text("faults.pair-restless"), "      ");
            }
        }
        if (pairs.left() > 0) {
            lines.wrap("  " + messages.text("faults.pairs-left", pairs.left()), "    ");
        }
    }

    private void addUnnoticed(Lines lines, FaultProof faults) {
        List<String> unnoticed = new ArrayList<>();
        for (int k = 0; k < faults.results().size(); k++) {
            MishapResult result = faults.results().get(k);
            if (!faults.isNoticed(k) && result.severity() != Severity.NONE) {
                unnoticed.add(messages.text(faults.inspection(k)));
            }
        }
        if (!unnoticed.isEmpty()) {
            lines.gap().wrap(messages.text("faults.inspect"), "  ");
            unnoticed.stream().distinct().forEach(each -> lines.wrap("  - " + each, "    "));
        }
    }
}
