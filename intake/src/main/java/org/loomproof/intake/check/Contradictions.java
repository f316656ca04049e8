package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.words.Phrase;

/** Entries whose use and way of switching exclude each other, by a data file. */
final class Contradictions {

    private static final Set<String> NEVER = never();

    private Contradictions() {}

    static List<Finding> of(List<Entry> entries) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            Optional<CircuitRole> role = entry.role().map(a -> a.value().role());
            Optional<Behaviour.Kind> kind = entry.behaviour().map(a -> a.value().kind());
            if (role.isPresent() && kind.isPresent() && NEVER.contains(pair(role.get(), kind.get()))) {
                findings.add(new Finding(
                        Finding.Kind.CONTRADICTION,
                        List.of(i),
                        Phrase.of("intake.finding.contradiction", term(role.get()), SwitchingWords.of(kind.get())),
                        MeterQuestion.of(role.get())));
            }
        }
        return findings;
    }

    private static Phrase term(CircuitRole role) {
        return Phrase.of("intake.role", role.word());
    }

    private static String pair(CircuitRole role, Behaviour.Kind kind) {
        return role.word() + " " + Words.of(kind);
    }

    private static Set<String> never() {
        Set<String> pairs = new TreeSet<>();
        for (Row row : Table.read(Contradictions.class, "contradictions.csv").listRows()) {
            CircuitRole role = CircuitRole.valueOf(
                    row.text("role").toUpperCase(Locale.ROOT).replace('-', '_'));
            for (String kind : row.text("never").split(" ", -1)) {
                pairs.add(pair(
                        role,
                        Behaviour.Kind.valueOf(kind.toUpperCase(Locale.ROOT).replace('-', '_'))));
            }
        }
        return pairs;
    }
}
