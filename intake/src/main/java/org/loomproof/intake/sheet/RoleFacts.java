package org.loomproof.intake.sheet;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** What follows from a role, and what is usual for it, from data files. */
final class RoleFacts {

    private static final Map<String, Row> FACTS = by("role-facts.csv", "role");
    private static final Map<String, Row> LEVELS = by("levels.csv", "role", "says");
    private static final Map<String, Level> WORDS = Map.of(
            "supply", new Level.Supply(),
            "ground", new Level.Ground(),
            "open", new Level.Open(),
            "data", new Level.Data());

    private RoleFacts() {}

    /** Levels that were not all said, and whether they follow from the role or are merely usual. */
    record Usual(Switching switching, boolean followsFromRole) {}

    static Access access(CircuitRole role) {
        return Access.valueOf(fact(role, "access").toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** What works the circuit: {@code key}, {@code hood}, {@code trunk}, or empty when it cannot be told from the role. */
    static String follows(CircuitRole role) {
        return fact(role, "follows");
    }

    private static String fact(CircuitRole role, String column) {
        Row row = FACTS.get(role.word());
        if (row == null) {
            throw new IllegalStateException("role-facts.csv says nothing of " + role.word());
        }
        return row.text(column);
    }

    /** The levels for what the notes say of the circuit; empty when a meter has to show them first. */
    static Optional<Usual> levels(CircuitRole role, Optional<Behaviour.Kind> says) {
        Row row = LEVELS.get(role.word() + "/" + says.map(Words::of).orElse("unsaid"));
        return Optional.ofNullable(row)
                .map(r -> new Usual(
                        new Switching(level(r.text("rest")), level(r.text("active"))),
                        r.text("why").equals("role")));
    }

    private static Level level(String word) {
        Level level = WORDS.get(word);
        if (level == null) {
            throw new IllegalStateException("levels.csv has no level " + word);
        }
        return level;
    }

    private static Map<String, Row> by(String file, String... columns) {
        Map<String, Row> rows = new HashMap<>();
        for (Row row : Table.read(RoleFacts.class, file).listRows()) {
            StringBuilder key = new StringBuilder();
            for (String column : columns) {
                key.append(key.isEmpty() ? "" : "/").append(row.text(column));
            }
            rows.put(key.toString(), row);
        }
        return Map.copyOf(rows);
    }
}
