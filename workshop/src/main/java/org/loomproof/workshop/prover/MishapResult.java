package org.loomproof.workshop.prover;

import java.util.List;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Phrase;

/**
 * What one mishap comes to.
 *
 * @param mishap what is wrong
 * @param severity how bad that is, fuses that open because of it counted in
 * @param breaks the claims that no longer hold, the worst first
 * @param opens the fuses that open in some situation, in words
 * @param undecided what could not be decided, in words; then it may be worse than it is said to be
 */
public record MishapResult(
        Mishap mishap, Severity severity, List<Break> breaks, List<Phrase> opens, List<Phrase> undecided) {

    public MishapResult {
        breaks = List.copyOf(breaks);
        opens = List.copyOf(opens);
        undecided = List.copyOf(undecided);
    }

    /** What comes of it, in plain words: each claim's own sentence for being broken. */
    public List<Phrase> effects() {
        return breaks.stream().map(MishapResult::effect).distinct().toList();
    }

    private static Phrase effect(Break broken) {
        Phrase said = broken.statement();
        Phrase effect = new Phrase(said.key().replaceFirst("^claim\\.", "effect."), said.arguments());
        return broken.takesEnds() ? Phrase.of("effect.at-ends", effect) : effect;
    }
}
