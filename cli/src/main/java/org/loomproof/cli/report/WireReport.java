package org.loomproof.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomproof.workshop.meter.advice.Advisor.Standing;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.advice.Foresight;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.finding.StepValues;
import org.loomproof.workshop.meter.finding.WireFinding;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What was found of each wire, for a person beside the car. */
public final class WireReport {

    private static final String INDENT = "           ";
    private static final int MOST_RIVALS = 3;
    private static final double WORTH_TELLING = 0.02;

    private final Messages messages;

    /** Words come from these messages. */
    public WireReport(Messages messages) {
        this.messages = messages;
    }

    /** All wires, then by what costs was reckoned. */
    public List<String> lines(List<WireFinding> findings, Costs costs) {
        Lines lines = new Lines();
        for (WireFinding finding : findings) {
            add(lines, finding);
            lines.gap();
        }
        lines.wrap(
                messages.text("identify.costs", costs.wrongTap(), costs.wrongCut(), costs.connectAt(), costs.cutAt()),
                "  ");
        if (findings.size() > 1) {
            lines.wrap(messages.text("identify.on-one-starter"), "  ");
        }
        return lines.all();
    }

    private void add(Lines lines, WireFinding finding) {
        WireRole best = finding.best();
        lines.wrap(
                messages.text(
                        "identify.title",
                        finding.wire(),
                        name(best),
                        Phrase.of("identify.readings", finding.readings())),
                "  ");
        finding.cautions().forEach(caution -> lines.wrap("  ! " + messages.text(caution), "    "));
        lines.cut("  " + percent(finding.chances().getOrDefault(best, 0.0)) + "  " + rivals(finding));
        for (Phrase because : finding.because()) {
            lines.wrap("  " + messages.text("identify.because") + "  " + messages.text(because), INDENT);
        }
        finding.not().forEach(out -> lines.wrap("  " + messages.text(out.by()), INDENT));
        lines.wrap("  " + standing("identify.connect", finding.connect()), INDENT);
        lines.wrap("  " + standing("identify.cut", finding.cut()), INDENT);
        finding.steps().ifPresent(steps -> lines.wrap("  " + steps(steps), INDENT));
        finding.split().ifPresent(split -> lines.wrap("  " + split(split), INDENT));
        lines.wrap("  " + finding.next().map(this::next).orElseGet(() -> messages.text("identify.next.none")), INDENT);
    }

    private String rivals(WireFinding finding) {
        StringBuilder text = new StringBuilder();
        finding.chances().entrySet().stream()
                .skip(1)
                .filter(e -> e.getValue() >= WORTH_TELLING)
                .limit(MOST_RIVALS)
                .forEach(e -> text.append(text.isEmpty() ? "" : ", ").append(rival(e)));
        return text.toString();
    }

    private String rival(Map.Entry<WireRole, Double> entry) {
        return messages.text("identify.or", name(entry.getKey()), percent(entry.getValue()));
    }

    private String standing(String key, Standing standing) {
        return standing.allowed()
                ? messages.text(key + ".yes", standing.lacks())
                : messages.text(key + ".no", standing.lacks());
    }

    private String steps(StepValues steps) {
        String pullUp = range(steps.pullUp());
        if (steps.switches().isEmpty()) {
            return messages.text("identify.steps.none", pullUp);
        }
        List<Phrase> buttons = steps.switches().stream()
                .map(b -> Phrase.of("identify.step", b.step().word(), range(b.ohms())))
                .toList();
        return messages.text("identify.steps", pullUp, buttons);
    }

    private String range(Range<Ohms> range) {
        String low = Figures.withPrefix(range.low());
        String high = Figures.withPrefix(range.high());
        return low.equals(high) ? low : messages.text("meter.shows.range", low, high);
    }

    private String next(Foresight.Choice next) {
        return messages.text(
                "identify.next", test(next.test()), next.bits(), next.test().seconds());
    }

    private String split(WireFinding.Split split) {
        List<Phrase> roles = split.roles().stream().map(WireReport::name).toList();
        return messages.text("identify.split", roles, test(split.test()));
    }

    private static Phrase test(MeterTest test) {
        return Phrase.of("meter.test." + test.kind().word(), test.step().word());
    }

    private static Phrase name(WireRole role) {
        return Phrase.of("meter.role." + role.word());
    }

    private static String percent(double chance) {
        double percent = 100 * chance;
        return percent > 99.9
                ? ">99.9 %"
                : percent >= 99 || percent < 1
                        ? String.format(Locale.ROOT, "%.1f %%", percent)
                        : Math.round(percent) + " %";
    }
}
