package org.loomproof.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.shock.Knock;
import org.loomproof.workshop.meter.shock.ShockFinding;
import org.loomproof.workshop.meter.shock.ShockSetting.Judged;
import org.loomproof.workshop.meter.shock.UpAndDown.Estimate;
import org.loomproof.workshop.meter.shock.Wanted;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** How the setting of a shock sensor stands, as lines for a terminal. */
public final class ShockReport {

    private final Messages messages;

    /** Words come from these messages. */
    public ShockReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(ShockFinding finding, Wanted wanted) {
        Lines lines = new Lines();
        finding.settings().forEach(each -> add(lines, each));
        lines.gap();
        lines.wrap(
                messages.text(
                        "shock.advice-" + Words.of(finding.advice()),
                        finding.setting().map(Figures::plain).orElse("")),
                "  ");
        finding.next().ifPresent(next -> lines.wrap("  " + messages.text("shock.next", blow(next)), "    "));
        lines.gap();
        lines.wrap(
                messages.text(
                        "shock.ladder",
                        mass(finding.ladder().getFirst()),
                        finding.ladder().stream().map(ShockReport::height).toList()),
                "  ");
        lines.wrap(messages.text("shock.method"), "  ");
        lines.wrap(
                messages.text("shock.wanted", wanted.harmlessADay(), wanted.falseAMonth(), wanted.noticedShare()),
                "  ");
        return lines.all();
    }

    private void add(Lines lines, Judged judged) {
        lines.wrap(messages.text("shock.setting", Figures.plain(judged.setting())), "  ");
        if (judged.estimate().isEmpty()) {
            lines.wrap("  " + messages.text("shock.too-few"), "    ");
            return;
        }
        Estimate estimate = judged.estimate().get();
        List<Phrase> said = new ArrayList<>();
        said.add(Phrase.of(
                "shock.half",
                joules(Math.pow(10, estimate.mean())),
                joules(Math.pow(10, estimate.mean() - estimate.deviation())),
                joules(Math.pow(10, estimate.mean() + estimate.deviation()))));
        if (!estimate.isSpreadSure()) {
            said.add(Phrase.of("shock.spread-least"));
        }
        said.add(Phrase.of("shock.false-a-month", Figures.plain(judged.falseAMonth())));
        said.add(Phrase.of("shock.noticed", judged.noticedShare()));
        said.add(Phrase.of(judged.doesIt() ? "shock.does-it" : "shock.does-not"));
        said.forEach(phrase -> lines.wrap("  " + messages.text(phrase), "    "));
    }

    private static String joules(double value) {
        return Figures.withUnit(value, "J");
    }

    private static String mass(Knock knock) {
        return Figures.withUnit(knock.kilograms() * 1000, "g");
    }

    private static String height(Knock knock) {
        return String.format(Locale.ROOT, "%.1f cm", knock.height().value() * 100);
    }

    private Phrase blow(Knock knock) {
        return Phrase.of("shock.blow", mass(knock), height(knock), joules(knock.joules()));
    }
}
