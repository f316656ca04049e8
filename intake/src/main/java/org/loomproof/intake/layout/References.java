package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.intake.role.Roles;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/** Cells that point to another row by its name: "same as ignition" in a column of places is the place of the ignition. */
final class References {

    private static final Pattern SAME = Pattern.compile(
            "^\\W*(?:(?:the )?same (?:\\w+ )?as|as|as for|like|see|wie|wie bei|siehe|igual que|lo mismo que|como|ver|comme|(?:la |le )?meme (?:\\w+ )?que|voir|idem)"
                    + "\\s+(?:the |der |die |das |dem |el |la |los |las |le |les |l')?(.{2,40}?)\\W*$");

    private static final int LONGEST_CHAIN = 3;

    private final Map<String, RawEntry> byName = new HashMap<>();
    private final Map<CircuitRole, RawEntry> byRole = new EnumMap<>(CircuitRole.class);

    private References(List<RawEntry> entries) {
        for (RawEntry entry : entries) {
            name(entry).ifPresent(name -> {
                byName.putIfAbsent(name.folded().strip(), entry);
                role(name).ifPresent(role -> byRole.putIfAbsent(role, entry));
            });
        }
    }

    /** The records with such cells put out in full, as far as the row is there; what points nowhere stays as it is written. */
    static List<RawEntry> followed(List<RawEntry> entries) {
        boolean points = entries.stream()
                .flatMap(e -> e.cells().stream())
                .anyMatch(c -> isOfOneField(c.kind())
                        && SAME.matcher(c.text().folded()).find());
        if (!points) {
            return entries;
        }
        List<RawEntry> followed = entries;
        // A row that is pointed to may point to another.
        for (int i = 0; i < LONGEST_CHAIN; i++) {
            followed = followed.stream().map(new References(followed)::followed).toList();
        }
        return followed;
    }

    private RawEntry followed(RawEntry entry) {
        List<Cell> cells = new ArrayList<>();
        for (Cell cell : entry.cells()) {
            cells.add(pointed(cell, entry).orElse(cell));
        }
        return new RawEntry(cells, entry.headings(), entry.notes());
    }

    private Optional<Cell> pointed(Cell cell, RawEntry from) {
        if (!isOfOneField(cell.kind())) {
            return Optional.empty();
        }
        Matcher same = SAME.matcher(cell.text().folded());
        if (!same.find()) {
            return Optional.empty();
        }
        Passage name = cell.text().slice(same.start(1), same.end(1));
        return named(name).filter(other -> !other.equals(from)).stream()
                .flatMap(other -> other.cells().stream())
                .filter(other -> other.kind() == cell.kind()
                        && !SAME.matcher(other.text().folded()).find())
                .findFirst()
                // It stands where the pointer stands, so that the source shown beside it is this row's.
                .map(other -> new Cell(
                        cell.kind(), cell.text().standingFor(other.text().text()), true));
    }

    private static boolean isOfOneField(ColumnKind kind) {
        return switch (kind) {
            case COLOUR, POLARITY, PLACE, CONNECTOR, CAVITY, SIZE, PERHAPS_PLACE -> true;
            case ROLE, NOTE, FREE, PLACE_OF_ALL -> false;
        };
    }

    private Optional<RawEntry> named(Passage name) {
        return Optional.ofNullable(byName.get(name.folded().strip()))
                .or(() -> role(name).flatMap(role -> Optional.ofNullable(byRole.get(role))));
    }

    private static Optional<Passage> name(RawEntry entry) {
        return entry.cells().stream()
                .filter(c -> c.kind() == ColumnKind.ROLE)
                .map(Cell::text)
                .findFirst();
    }

    private static Optional<CircuitRole> role(Passage text) {
        return Roles.inColumn(new Claims(text)).map(Found::value).map(RoleReading::role);
    }
}
