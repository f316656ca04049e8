package org.loomproof.cli.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.drain.Behind;
import org.loomproof.workshop.meter.drain.Branch;
import org.loomproof.workshop.meter.drain.DrainFinding;
import org.loomproof.workshop.meter.drain.DrainFinding.Band;
import org.loomproof.workshop.meter.drain.Hunt;
import org.loomproof.workshop.meter.drain.Plateau;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.trade.battery.StandbyDrain;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What a log of the current after locking says, as lines for a terminal. */
public final class DrainReport {

    private static final int MOST_PLATEAUS = 12;
    private static final int MOST_BRANCHES = 6;
    private static final double WORTH_TELLING = 0.02;

    private final Messages messages;

    /** Words come from these messages. */
    public DrainReport(Messages messages) {
        this.messages = messages;
    }

    /** The report. */
    public List<String> lines(DrainFinding finding) {
        Lines lines = new Lines();
        addPlateaus(lines, finding.plateaus());
        lines.wrap(say("drain.expected", amps(finding.expected())), "  ");
        lines.wrap(say("drain.drawn", amps(finding.drawn())), "  ");
        finding.waking()
                .ifPresent(waking -> lines.wrap(
                        say(
                                waking.isRegular() ? "drain.wakes-by-the-clock" : "drain.wakes",
                                waking.times(),
                                Figures.plain(waking.everyMinutes().orElse(0)),
                                new Amps(waking.amps())),
                        "  "));
        lines.gap();
        addVerdict(lines, finding);
        finding.mild()
                .ifPresent(mild -> lines.wrap(
                        say(
                                "drain.days",
                                days(mild),
                                days(finding.cold().orElse(mild)),
                                StandbyDrain.MILD.signed(),
                                StandbyDrain.COLD.signed()),
                        "  "));
        finding.hunt()
                .ifPresent(hunt -> addHunt(lines.gap(), hunt, finding.settled().isPresent()));
        lines.gap();
        lines.wrap(say("drain.never-pull"), "  ");
        return lines.all();
    }

    private void addPlateaus(Lines lines, List<Plateau> plateaus) {
        lines.wrap(say("drain.plateaus", plateaus.size()), "  ");
        plateaus.stream()
                .skip(Math.max(0, plateaus.size() - MOST_PLATEAUS))
                .forEach(p -> lines.wrap(
                        "  "
                                + say(
                                        "drain.plateau",
                                        Figures.plain(p.fromMinutes()),
                                        Figures.plain(p.toMinutes()),
                                        new Amps(p.amps())),
                        "    "));
    }

    private void addVerdict(Lines lines, DrainFinding finding) {
        Optional<Behind> settled = finding.settled();
        lines.wrap(
                settled.map(behind -> say("drain.settled-" + Words.of(behind))).orElseGet(() -> say("drain.open")),
                "  ");
        finding.chances().entrySet().stream()
                .filter(e -> e.getValue() >= WORTH_TELLING)
                .sorted(Map.Entry.<Behind, Double>comparingByValue().reversed())
                .forEach(e -> lines.wrap(
                        "  " + say("drain.chance", e.getValue(), Phrase.of("drain.behind-" + Words.of(e.getKey()))),
                        "       "));
        if (!finding.isLongEnough()) {
            lines.wrap(say("drain.too-short"), "  ");
        } else if (!finding.isWatched() && settled.isEmpty()) {
            lines.wrap(say("drain.too-sparse"), "  ");
        }
    }

    private void addHunt(Lines lines, Hunt hunt, boolean isSettled) {
        if (isSettled) {
            hunt.found().ifPresent(found -> lines.wrap(say("drain.found", found.name()), "  "));
            if (hunt.elsewhere() >= Hunt.FOUND) {
                lines.wrap(say("drain.found-elsewhere"), "  ");
            }
        }
        lines.wrap(say("drain.branches"), "  ");
        hunt.chances().stream()
                .limit(MOST_BRANCHES)
                .forEach(chance -> lines.wrap(
                        "  "
                                + say(
                                        "drain.chance",
                                        chance.probability(),
                                        chance.branch().name()),
                        "       "));
        lines.wrap("  " + say("drain.chance", hunt.elsewhere(), Phrase.of("drain.elsewhere")), "       ");
        if (hunt.found().isEmpty() && hunt.elsewhere() < Hunt.FOUND) {
            hunt.next().ifPresent(next -> addNext(lines, next));
        }
    }

    private void addNext(Lines lines, Branch next) {
        String way = Words.of(next.way());
        lines.wrap(say("drain.next-" + way, next.name()), "  ");
        lines.wrap("  " + say("drain.next-line-" + way, next.name()), "    ");
    }

    private String say(String key, Object... arguments) {
        return messages.text(key, arguments);
    }

    private static Phrase amps(Band band) {
        return Phrase.of("drain.band", new Amps(band.low()), new Amps(band.high()), new Amps(band.typical()));
    }

    private static Phrase days(Band band) {
        return Phrase.of("drain.band", rounded(band.low()), rounded(band.high()), rounded(band.typical()));
    }

    private static String rounded(double days) {
        return days < 10 ? Figures.plain(Math.floor(days * 10) / 10) : String.valueOf((long) Math.floor(days));
    }
}
