package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.words.Phrase;

/**
 * One way to answer a question.
 *
 * @param decisions one for each lead of the question
 * @param refusals wishes that this way turns down
 * @param cautions what to beware of, where this work is
 * @param searches what was looked through to find it
 */
public record Option(List<Decision> decisions, List<Refusal> refusals, List<Phrase> cautions, List<Searched> searches) {

    public Option {
        searches = List.copyOf(searches);
        decisions = List.copyOf(decisions);
        refusals = List.copyOf(refusals);
        cautions = List.copyOf(cautions);
    }

    /** A way that nothing was looked through for. */
    public Option(List<Decision> decisions, List<Refusal> refusals, List<Phrase> cautions) {
        this(decisions, refusals, cautions, List.of());
    }

    /** The same, found by those searches as well. */
    public Option searched(List<Searched> found) {
        return new Option(
                decisions,
                refusals,
                cautions,
                Stream.concat(searches.stream(), found.stream()).toList());
    }

    /** Decisions alone. */
    public static Option of(List<? extends Decision> decisions) {
        return new Option(List.copyOf(decisions), List.of(), List.of());
    }

    /** The same with other drafts of its couplings. */
    public Option redrafted(UnaryOperator<Draft> drawn) {
        return deciding(decision -> decision instanceof Decision.Join join
                ? new Decision.Join(
                        join.of(),
                        join.serves(),
                        join.circuits(),
                        drawn.apply(join.draft()),
                        join.because(),
                        join.insteadOf())
                : decision);
    }

    /** The same with other decisions in their places. */
    Option deciding(UnaryOperator<Decision> decided) {
        return new Option(decisions.stream().map(decided).toList(), refusals, cautions, searches);
    }

    /** A refusal and what becomes of the leads. */
    public static Option refused(Refusal refusal, List<? extends Decision> decisions) {
        return new Option(List.copyOf(decisions), List.of(refusal), List.of());
    }

    /** Both together. */
    public Option and(Option more) {
        List<Decision> all = new ArrayList<>(decisions);
        all.addAll(more.decisions());
        List<Refusal> allRefusals = new ArrayList<>(refusals);
        allRefusals.addAll(more.refusals());
        return new Option(
                        all,
                        allRefusals,
                        cautions,
                        Stream.concat(searches.stream(), more.searches().stream())
                                .toList())
                .beware(more.cautions());
    }

    /** The same with further cautions. */
    public Option beware(List<Phrase> more) {
        List<Phrase> all = new ArrayList<>(cautions);
        more.stream().filter(caution -> !all.contains(caution)).forEach(all::add);
        return new Option(decisions, refusals, all, searches);
    }
}
