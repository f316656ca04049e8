package org.loomproof.workshop.brief.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Names of one sort: where each is given, and where it is used. Uses may stand before what they name. */
public final class References {

    private final Map<String, Cursor> given = new LinkedHashMap<>();
    private final List<Cursor> uses = new ArrayList<>();

    /** A name is given here; a problem is noted when it was given before. */
    public void give(String name, Cursor at) {
        if (name.equals(Cursor.UNREADABLE)) {
            return;
        }
        Cursor before = given.putIfAbsent(name, at);
        if (before != null) {
            at.problem(
                    ProblemKind.DUPLICATE_ID,
                    Phrase.of("problem.wanted.other-id"),
                    Phrase.of(
                            "problem.hint.given-before",
                            Integer.toString(before.place().line())));
        }
    }

    /** True when the name was given. */
    public boolean isGiven(String name) {
        return given.containsKey(name);
    }

    /** A name is used here. */
    public void use(Cursor at) {
        uses.add(at);
    }

    /** Notes a problem for each use of a name that nobody gave. */
    public void close() {
        for (Cursor use : uses) {
            String name = use.found().strip();
            if (use.isText() && !given.containsKey(name)) {
                use.problem(
                        ProblemKind.UNKNOWN_REFERENCE,
                        given.isEmpty()
                                ? Phrase.of("problem.wanted.known-id")
                                : Phrase.of("problem.wanted.one-of", List.copyOf(given.keySet())),
                        Words.hint(name, given.keySet()));
            }
        }
    }
}
