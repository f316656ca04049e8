package org.loomproof.workshop.prover.explore;

import java.util.List;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.words.Phrase;

/** What is said of ranged figures. */
final class Words {

    private Words() {}

    /** The figures that nobody stated, each with the reading that would replace it. */
    static List<Assumption> assumptions(Sensitivity sensitivity) {
        return sensitivity.effects().stream()
                .map(Sensitivity.Effect::figure)
                .filter(f -> f.figure().isAssumed())
                .map(f -> new Assumption(
                        f.figure().basis().place().path(),
                        f.figure().low().toString(),
                        f.figure().high().toString(),
                        reading(f)))
                .toList();
    }

    /** The reading that replaces a range by a value. */
    static Measurement reading(RangedFigure figure) {
        String how = TradeDefaults.read()
                .findReading(figure.figure().basis().place().path())
                .orElse("as-it-stands");
        return new Measurement(
                "reading-of " + figure.key(),
                Phrase.of(
                        "measure.figure",
                        figure.key(),
                        figure.figure().low(),
                        figure.figure().high(),
                        Phrase.of("reading." + how)));
    }

    /** A figure with its range. */
    static Phrase range(RangedFigure figure) {
        return Phrase.of(
                "measure.range",
                figure.key(),
                figure.figure().low(),
                figure.figure().high());
    }
}
