package org.loomproof.intake.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.field.Spot;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.problem.Place;

/** Makes circuits of entries: each with an id of its own, and no surer than what it was read from. */
final class CircuitMaker {

    /** An entry less sure than this is a guess; below it more than one field in twenty proves wrong. */
    private static final double SURE_ENOUGH = 0.95;

    private final String file;
    private final Map<String, String> known;
    private final Set<String> taken;

    /** @param known what is known of the vehicle, by the keys of a sheet */
    CircuitMaker(String file, Map<String, String> known, Set<String> taken) {
        this.file = file;
        this.known = known;
        this.taken = taken;
    }

    /** The name under which an opening is known that a circuit speaks of: {@code hood} or {@code trunk}. */
    static OperableId opening(Operable.Kind kind) {
        return new OperableId(kind.name().toLowerCase(Locale.ROOT));
    }

    /** What the entry's wire shows, as said, or as follows from what is said; empty when it must be measured. */
    static Optional<RoleFacts.Usual> levels(Entry entry) {
        CircuitRole role = entry.role().orElseThrow().value().role();
        Optional<Behaviour> behaviour = entry.behaviour().map(a -> a.value());
        Optional<RoleFacts.Usual> usual = RoleFacts.levels(role, behaviour.map(Behaviour::kind));
        Optional<Level> rest = behaviour.flatMap(Behaviour::rest);
        Optional<Level> active = behaviour.flatMap(Behaviour::active);
        boolean byRole = usual.isPresent() && usual.get().followsFromRole();
        if (rest.isPresent() && active.isPresent() && !byRole) {
            return Optional.of(new RoleFacts.Usual(new Switching(rest.get(), active.get()), true));
        }
        return usual;
    }

    Circuit circuit(Entry entry, boolean conflicting) {
        CircuitRole role = entry.role().orElseThrow().value().role();
        RoleFacts.Usual levels = levels(entry).orElseThrow();
        // Whether this vehicle is one of those it holds for must be known.
        boolean holds = entry.validity().isEmpty() || HoldsFor.of(entry.validity(), known) == HoldsFor.THIS;
        boolean sure = !conflicting && holds && levels.followsFromRole() && entry.sure() >= SURE_ENOUGH;
        Basis basis = new Basis(
                sure ? Certainty.STATED : Certainty.GUESSED,
                new Place(file, entry.origin().line(), entry.origin().column(), ""));
        return new Circuit(
                id(role),
                role,
                where(entry),
                entry.colour().map(a -> a.value()),
                entry.size().map(a -> Figure.exactly(a.value(), basis)),
                levels.switching(),
                follows(role),
                List.of(),
                RoleFacts.access(role),
                basis,
                origin(entry.origin()),
                note(entry, role));
    }

    private CircuitId id(CircuitRole role) {
        String id = role.word();
        for (int i = 2; !taken.add(id); i++) {
            id = role.word() + "-" + i;
        }
        return new CircuitId(id);
    }

    private String origin(Origin origin) {
        return file + " " + origin;
    }

    private static List<OperableId> follows(CircuitRole role) {
        String follows = RoleFacts.follows(role);
        return follows.isEmpty() ? List.of() : List.of(new OperableId(follows));
    }

    private static Where where(Entry entry) {
        Spot spot = entry.spot().map(a -> a.value()).orElse(Spot.NOT_SAID);
        return new Where(spot.panel(), spot.connector(), spot.cavity(), "");
    }

    /** What the source calls it, and what it adds: nothing is lost on the way to the sheet. */
    private static String note(Entry entry, CircuitRole role) {
        String note = Stream.of(
                        Stream.of(entry.name(), entry.colourAsWritten(), entry.steering(), entry.validity()),
                        entry.notes().stream().map(Passage::text),
                        entry.leftOver().stream().map(Passage::text))
                .flatMap(s -> s)
                .filter(s -> !s.isBlank())
                .distinct()
                .collect(Collectors.joining("; "));
        // A circuit without a role of ours must say what it is.
        return note.isEmpty() && role == CircuitRole.OTHER ? role.word() : note;
    }
}
