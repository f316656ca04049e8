package org.loomproof.workshop.brief.path;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** The names that the circuits of one sheet share: what is operated, parts, relays, and places where circuits meet. */
public final class SheetNames {

    private final Map<String, Operable> operables = new LinkedHashMap<>();
    private final References elements = new References();
    private final Map<String, Cursor> coils = new LinkedHashMap<>();
    private final Map<String, Cursor> contacts = new LinkedHashMap<>();
    private final Map<String, Integer> mentions = new LinkedHashMap<>();
    private final List<Cursor> ends = new ArrayList<>();

    public SheetNames(List<Operable> operables) {
        operables.forEach(operable -> this.operables.put(operable.id().value(), operable));
    }

    /** What is operated under the name at the cursor; empty, with a problem noted, when there is no such thing. */
    public Optional<Operable> operable(Cursor at) {
        return at.reference(operables);
    }

    void element(String id, Cursor at) {
        elements.give(id, at);
    }

    void coil(String relay, Cursor at) {
        Cursor before = coils.putIfAbsent(relay, at);
        if (before != null && !relay.equals(Cursor.UNREADABLE)) {
            at.problem(
                    ProblemKind.DUPLICATE_ID,
                    Phrase.of("problem.wanted.one-coil"),
                    Phrase.of(
                            "problem.hint.given-before",
                            Integer.toString(before.place().line())));
        }
    }

    void contact(String relay, Cursor at) {
        contacts.putIfAbsent(relay, at);
    }

    void point(Cursor at) {
        mentions.merge(at.found().strip(), 1, Integer::sum);
    }

    /** A path starts or ends at this point. */
    void end(Cursor at) {
        ends.add(at);
    }

    /** Notes what the circuits together leave undone: coils and contacts without each other, paths that end in the air. */
    public void close() {
        for (Map.Entry<String, Cursor> coil : coils.entrySet()) {
            if (!contacts.containsKey(coil.getKey())) {
                coil.getValue()
                        .problem(
                                ProblemKind.UNKNOWN_REFERENCE,
                                Phrase.of("problem.wanted.contact-of-relay"),
                                Words.hint(coil.getKey(), contacts.keySet()));
            }
        }
        for (Map.Entry<String, Cursor> contact : contacts.entrySet()) {
            if (!coils.containsKey(contact.getKey())) {
                contact.getValue()
                        .problem(
                                ProblemKind.UNKNOWN_REFERENCE,
                                Phrase.of("problem.wanted.coil-of-relay"),
                                Words.hint(contact.getKey(), coils.keySet()));
            }
        }
        for (Cursor end : ends) {
            String name = end.found().strip();
            if (mentions.getOrDefault(name, 0) < 2) {
                List<String> others = mentions.keySet().stream()
                        .filter(other -> !other.equals(name))
                        .toList();
                end.problem(
                        ProblemKind.UNKNOWN_REFERENCE,
                        Phrase.of("problem.wanted.joined-point"),
                        Words.hint(name, others));
            }
        }
    }
}
