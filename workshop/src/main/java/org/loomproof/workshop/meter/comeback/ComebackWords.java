package org.loomproof.workshop.meter.comeback;

import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/** Suspects and looks in words. */
public final class ComebackWords {

    /** Of mishaps that nothing tells apart so many are named; how to look for each is told when it comes to looking. */
    private static final int MOST_NAMED = 4;

    private final StepsTo steps;

    /** Words for one job. */
    public ComebackWords(Brief brief) {
        this.steps = new StepsTo(brief.sheet(), brief.kit());
    }

    /** What is wrong, if it is that. */
    public static Phrase of(Suspect suspect) {
        List<Phrase> causes = suspect.causes().stream().map(ComebackWords::of).toList();
        return causes.size() == 1 ? causes.getFirst() : Phrase.of("comeback.both", causes.getFirst(), causes.getLast());
    }

    private static Phrase of(Cause cause) {
        if (cause.isElsewhere()) {
            return Phrase.of("comeback.elsewhere");
        }
        int more = cause.mishaps().size() - MOST_NAMED;
        Phrase named = cause.mishaps().stream()
                .limit(MOST_NAMED)
                .map(Mishap::words)
                .reduce((one, other) -> Phrase.of("comeback.or", one, other))
                .orElseThrow();
        return more > 0 ? Phrase.of("comeback.or-more", named, more) : named;
    }

    /** How to find it by looking. */
    public static List<Phrase> inspections(Suspect suspect) {
        return suspect.causes().stream()
                .flatMap(cause -> cause.mishaps().stream())
                .map(Mishap::inspection)
                .distinct()
                .toList();
    }

    /** Where the red lead goes. */
    public static Phrase at(Probe probe) {
        return switch (probe) {
            case Probe.AtPlug(var lead) -> Phrase.of("comeback.at-plug", lead);
            case Probe.AtTerminal(var part, var terminal) -> Phrase.of("comeback.at-terminal", terminal, part);
            case Probe.AtCircuit(var circuit) -> Phrase.of("comeback.at-circuit", circuit);
            case Probe.BehindCut(var circuit) -> Phrase.of("comeback.behind-cut", circuit);
        };
    }

    /** What to do first, from a car at rest with the system disarmed. */
    public Phrase when(Look look) {
        List<Phrase> moves = steps.list(look.when());
        Phrase done = moves.isEmpty() ? Phrase.of("expected.at-rest") : Phrase.of("expected.steps", moves);
        return look.when().feed() == ControllerFeed.WHOLE && Looks.isShort(look.when())
                ? Phrase.of("comeback.pulse", done)
                : done;
    }
}
