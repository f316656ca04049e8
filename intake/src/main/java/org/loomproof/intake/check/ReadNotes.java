package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.layout.LaidOut;
import org.loomproof.intake.layout.LayoutReader;

/**
 * Wiring notes as they were understood.
 *
 * @param entries one a circuit, in the order of the text
 * @param loose lines that belong to no circuit: titles, headings, and what nobody could place
 * @param findings what a person has to settle: contradictions, conflicts, and what is said twice
 */
public record ReadNotes(List<Entry> entries, List<Passage> loose, List<Finding> findings) {

    public ReadNotes {
        entries = List.copyOf(entries);
        loose = List.copyOf(loose);
        findings = List.copyOf(findings);
    }

    /** Understands the lines as far as they can be; what is not understood is kept and can be shown. */
    public static ReadNotes of(SourceLines source) {
        LaidOut laidOut = LayoutReader.read(source);
        List<Entry> entries = laidOut.entries().stream().map(EntryReader::read).toList();
        return checked(SamePlace.followed(entries), laidOut.loose());
    }

    /** Entries from anywhere, with what a person has to settle about them; those that something speaks against are less sure. */
    public static ReadNotes checked(List<Entry> entries, List<Passage> loose) {
        List<Finding> findings = new ArrayList<>(Contradictions.of(entries));
        findings.addAll(Repeats.of(entries));
        List<Entry> weighed = new ArrayList<>(entries);
        findings.stream()
                .filter(f -> f.kind() != Finding.Kind.SAID_TWICE)
                .flatMap(f -> f.entries().stream())
                .forEach(i -> weighed.set(i, weighed.get(i).contested()));
        return new ReadNotes(weighed, loose, findings);
    }

    /** The entries that findings of the kind are about, by their place. */
    public Set<Integer> entriesWith(Finding.Kind kind) {
        return findings.stream()
                .filter(f -> f.kind() == kind)
                .flatMap(f -> f.entries().stream())
                .collect(Collectors.toUnmodifiableSet());
    }
}
