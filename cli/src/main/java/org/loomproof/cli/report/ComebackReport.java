package org.loomproof.cli.report;

import java.util.List;
import java.util.Locale;
import org.loomproof.shop.job.Diagnosis;
import org.loomproof.workshop.meter.comeback.Comeback;
import org.loomproof.workshop.meter.comeback.ComebackWords;
import org.loomproof.workshop.meter.comeback.Finding;
import org.loomproof.workshop.meter.comeback.NextLook;
import org.loomproof.workshop.meter.comeback.Suspect;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What is behind a comeback, as lines for a terminal. */
public final class ComebackReport {

    private static final int MOST_SUSPECTS = 6;

    /** Suspects less likely than this are counted, not told. */
    private static final double LEAST_TOLD = 0.02;

    private static final int MOST_ANSWERS = 4;

    private final Messages messages;

    /** Words come from these messages. */
    public ComebackReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(Diagnosis diagnosis) {
        Lines lines = new Lines();
        lines.wrap(
                messages.text(
                        "report.title",
                        diagnosis.brief().sheet().vehicle().name(),
                        diagnosis.brief().kit().name()),
                "  ");
        List<Phrase> said = diagnosis.said().stream()
                .sorted()
                .map(symptom -> Phrase.of("symptom." + symptom.word()))
                .toList();
        lines.wrap(messages.text("comeback.said", said), "  ");
        if (diagnosis.nowAndThen()) {
            lines.wrap("  " + messages.text("comeback.now-and-then"), "  ");
        }
        lines.wrap(messages.text("comeback.taken", diagnosis.measured()), "  ");
        Finding finding = diagnosis.finding();
        addSuspects(lines, finding.suspects());
        lines.gap();
        finding.next().ifPresent(next -> addNext(lines, next, diagnosis));
        if (finding.next().isEmpty()) {
            addInspections(lines, finding);
        }
        if (diagnosis.measured() == 0) {
            lines.wrap(messages.text("comeback.first"), "  ");
        }
        lines.gap().wrap(messages.text("comeback.bound", Comeback.MOST_PAIRS), "  ");
        lines.gap().wrap(messages.text("report.caution"), "  ");
        return lines.all();
    }

    private static List<Suspect> told(List<Suspect> suspects) {
        List<Suspect> likely = suspects.stream()
                .filter(s -> s.probability() >= LEAST_TOLD)
                .limit(MOST_SUSPECTS)
                .toList();
        return likely.isEmpty() ? suspects.subList(0, 1) : likely;
    }

    private void addSuspects(Lines lines, List<Suspect> suspects) {
        lines.gap().wrap(messages.text("comeback.likeliest"), "  ");
        List<Suspect> told = told(suspects);
        told.forEach(suspect -> lines.wrap(
                "  " + messages.text("comeback.suspect", suspect.probability(), ComebackWords.of(suspect)), "       "));
        if (told.size() < suspects.size()) {
            lines.wrap(
                    "  "
                            + messages.text(
                                    "comeback.more",
                                    suspects.size() - told.size(),
                                    suspects.get(told.size()).probability()),
                    "       ");
        }
    }

    private void addNext(Lines lines, NextLook next, Diagnosis diagnosis) {
        ComebackWords said = new ComebackWords(diagnosis.brief());
        lines.wrap(messages.text("comeback.next", ComebackWords.at(next.look().at()), said.when(next.look())), "  ");
        lines.wrap(
                "  "
                        + messages.text(
                                "comeback.next-line",
                                next.look().at().name(),
                                diagnosis.words().word(next.look().when())),
                "    ");
        next.answers().stream()
                .limit(MOST_ANSWERS)
                .forEach(answer -> lines.wrap(
                        "  " + messages.text("comeback.answer", volts(answer), ComebackWords.of(answer.likeliest())),
                        "      "));
    }

    private static String volts(NextLook.Answer answer) {
        String low = tenths(answer.low());
        String high = tenths(answer.high());
        return low.equals(high) ? low + " V" : low + "..." + high + " V";
    }

    private static String tenths(double volts) {
        return String.format(Locale.ROOT, "%.1f", Math.rint(volts * 10) / 10 + 0.0);
    }

    private void addInspections(Lines lines, Finding finding) {
        lines.wrap(messages.text(finding.isSettled() ? "comeback.settled" : "comeback.untold"), "  ");
        List<Suspect> look = finding.isSettled() ? finding.suspects().subList(0, 1) : told(finding.suspects());
        look.stream()
                .flatMap(suspect -> ComebackWords.inspections(suspect).stream())
                .distinct()
                .forEach(inspection -> lines.wrap("  " + messages.text(inspection), "    "));
    }
}
