package org.loomproof.intake.correct;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedSet;
import java.util.stream.Stream;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.role.Roles;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/**
 * What a field may well be instead, to be chosen with one tap: what else the same lines name, what is often taken for what was read, and
 * the words that nobody understood.
 */
public final class Likely {

    private static final int MOST = 4;
    private static final int MOST_WORDS = 5;
    private static final List<String> WAYS = List.of("negative", "positive", "reversing", "data");

    /** Roles that notes, or readers, take for one another. */
    private static final List<List<CircuitRole>> CLOSE = List.of(
            List.of(
                    CircuitRole.IGNITION,
                    CircuitRole.SECOND_IGNITION,
                    CircuitRole.ACCESSORY,
                    CircuitRole.CONSTANT_SUPPLY),
            List.of(CircuitRole.STARTER, CircuitRole.SECOND_STARTER, CircuitRole.IGNITION),
            List.of(CircuitRole.LOCK, CircuitRole.UNLOCK, CircuitRole.LOCK_MOTOR_LEG),
            List.of(CircuitRole.TRUNK_TRIGGER, CircuitRole.TRUNK_RELEASE),
            List.of(CircuitRole.DOOR_TRIGGER, CircuitRole.INTERIOR_LIGHT, CircuitRole.HOOD_TRIGGER),
            List.of(CircuitRole.PARKING_LAMP, CircuitRole.BRAKE, CircuitRole.OTHER));

    private Likely() {}

    /** Meanings that a correction of the field could have, most likely first; never what was read. */
    public static List<String> of(ReviewLine line, Field field) {
        SequencedSet<String> meanings = new LinkedHashSet<>();
        switch (field) {
            case ROLE -> roles(line, meanings);
            case COLOUR -> colours(line, meanings);
            case POLARITY -> meanings.addAll(WAYS);
            case PLACE -> places(line.entry(), meanings);
            case SIZE -> {}
        }
        return meanings.stream()
                .filter(meaning -> new Correction(field, "any", meaning)
                        .applied(line.entry())
                        .filter(right -> !Values.of(right, field).equals(Values.of(line.entry(), field)))
                        .isPresent())
                .limit(MOST)
                .toList();
    }

    private static void roles(ReviewLine line, SequencedSet<String> meanings) {
        for (Passage passage : line.source()) {
            for (int[] part : Segments.of(passage.folded())) {
                Roles.among(new Claims(passage), part[0], part[1])
                        .ifPresent(found -> meanings.add(found.value().role().word()));
            }
        }
        Optional<CircuitRole> read = line.entry().role().map(a -> a.value().role());
        CLOSE.stream()
                .filter(group -> read.filter(group::contains).isPresent())
                .flatMap(List::stream)
                .forEach(role -> meanings.add(role.word()));
    }

    private static void colours(ReviewLine line, SequencedSet<String> meanings) {
        line.entry()
                .colour()
                .map(a -> a.value().letters().split("/", -1))
                .filter(halves -> halves.length == 2)
                .ifPresent(halves -> meanings.add(halves[1] + "/" + halves[0]));
        for (Passage passage : line.source()) {
            Claims claims = new Claims(passage);
            Stream.generate(() -> Colours.among(claims))
                    .takeWhile(Optional::isPresent)
                    .flatMap(Optional::stream)
                    .map(Found::value)
                    .forEach(colour -> meanings.add(colour.letters()));
        }
    }

    private static void places(Entry entry, SequencedSet<String> meanings) {
        entry.leftOver().stream()
                .map(passage -> passage.text().strip())
                .filter(text -> !text.equals(entry.name().strip()))
                .filter(text -> text.split("\\s+", -1).length <= MOST_WORDS)
                .forEach(meanings::add);
    }

    /** Every role there is, by its word. */
    public static List<String> allRoles() {
        return Arrays.stream(CircuitRole.values())
                .map(CircuitRole::word)
                .sorted()
                .toList();
    }
}
