package org.loomproof.workshop.plan.file;

import org.loomproof.workshop.plan.End;

/** Where a wire ends, as written: {@code lead P1-3}, {@code K1 85}, {@code circuit starter tap}, {@code body}. */
final class EndText {

    static final String LEAD = "lead";
    static final String CIRCUIT = "circuit";
    static final String BODY = "body";
    static final String TAP = "tap";
    static final String BEFORE = "before";
    static final String AFTER = "after";

    private EndText() {}

    static String write(End end) {
        return switch (end) {
            case End.OfLead(var lead) -> LEAD + " " + lead;
            case End.OfPart(var part, var terminal) -> part + " " + terminal;
            case End.Tap(var circuit) -> CIRCUIT + " " + circuit + " " + TAP;
            case End.CutBefore(var circuit) -> CIRCUIT + " " + circuit + " " + BEFORE;
            case End.CutAfter(var circuit) -> CIRCUIT + " " + circuit + " " + AFTER;
            case End.Body body -> BODY;
        };
    }
}
