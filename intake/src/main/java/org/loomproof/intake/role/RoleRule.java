package org.loomproof.intake.role;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/**
 * One set of ideas that makes a role.
 *
 * @param role what it makes
 * @param needs the ideas that must all be there
 * @param bars the ideas that must not
 * @param named how much those words say
 */
record RoleRule(CircuitRole role, Set<String> needs, Set<String> bars, Named named) {

    /** How much the words of a rule say. */
    enum Named {
        FULL,
        HALF,
        /** Half, and only when nothing unknown stands beside. */
        ALONE,
        AMBIGUOUS
    }

    boolean fits(Set<String> ideas) {
        return ideas.containsAll(needs) && bars.stream().noneMatch(ideas::contains);
    }

    static List<RoleRule> readAll() {
        try (InputStream in = RoleRule.class.getResourceAsStream("roles.csv")) {
            if (in == null) {
                throw new IllegalStateException("roles.csv is missing");
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("role,"))
                    .map(RoleRule::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RoleRule of(String line) {
        String[] cells = line.split(",", -1);
        return new RoleRule(
                CircuitRole.valueOf(cells[0].toUpperCase(Locale.ROOT).replace('-', '_')),
                ideas(cells[1]),
                ideas(cells[2]),
                Named.valueOf(cells[3].toUpperCase(Locale.ROOT)));
    }

    private static Set<String> ideas(String cell) {
        return cell.isBlank() ? Set.of() : new TreeSet<>(List.of(cell.strip().split(" ", -1)));
    }
}
