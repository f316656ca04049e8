package org.loomproof.intake.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Finding;
import org.loomproof.intake.check.MeterQuestion;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.words.Phrase;

/**
 * What of wiring notes can stand on a sheet, and what cannot yet.
 *
 * @param operables the key, and the openings that the circuits speak of
 * @param placed what becomes of each entry, in the order of the notes
 */
public record DraftSheet(List<Operable> operables, List<Placed> placed) {

    public DraftSheet {
        operables = List.copyOf(operables);
        placed = List.copyOf(placed);
    }

    /** The circuits, in the order of the notes; each names the file, line and columns it comes from. */
    public List<Circuit> circuits() {
        return placed.stream()
                .filter(Placed.OnSheet.class::isInstance)
                .map(p -> ((Placed.OnSheet) p).circuit())
                .toList();
    }

    /** Entries that a sheet cannot hold before something is settled. */
    public List<HeldBack> heldBack() {
        return placed.stream()
                .filter(HeldBack.class::isInstance)
                .map(HeldBack.class::cast)
                .toList();
    }

    /**
     * The sheet's part of the notes.
     *
     * @param file the name under which the notes are known
     * @param known what is known of the vehicle, by the keys of a sheet; what holds for others stays off the sheet, and where nothing is known all
     *     variants are kept
     * @param taken ids that are no longer free
     */
    public static DraftSheet of(ReadNotes notes, String file, Map<String, String> known, Set<String> taken) {
        CircuitMaker maker = new CircuitMaker(file, known, new HashSet<>(taken));
        List<Placed> placed = new ArrayList<>();
        Set<Integer> contradicting = notes.entriesWith(Finding.Kind.CONTRADICTION);
        Set<Integer> conflicting = notes.entriesWith(Finding.Kind.CONFLICT);
        for (int i = 0; i < notes.entries().size(); i++) {
            Entry entry = notes.entries().get(i);
            Optional<HeldBack> why = heldBack(entry, contradicting.contains(i), known);
            boolean conflict = conflicting.contains(i);
            placed.add(why.<Placed>map(held -> held)
                    .orElseGet(() -> new Placed.OnSheet(entry, maker.circuit(entry, conflict))));
        }
        List<Circuit> circuits = new DraftSheet(List.of(), placed).circuits();
        return new DraftSheet(operables(circuits), placed);
    }

    private static Optional<HeldBack> heldBack(Entry entry, boolean contradiction, Map<String, String> known) {
        if (entry.role().isEmpty()) {
            return Optional.of(new HeldBack(entry, HeldBack.Reason.ROLE_UNKNOWN, Phrase.of("intake.ask.role")));
        }
        CircuitRole role = entry.role().get().value().role();
        Phrase meter = MeterQuestion.of(role);
        String steering = SheetFacts.steering(known);
        if (!steering.isEmpty()
                && !entry.steering().isEmpty()
                && !entry.steering().equals(steering)) {
            return Optional.of(new HeldBack(entry, HeldBack.Reason.OTHER_STEERING, Phrase.of("intake.ask.nothing")));
        }
        if (HoldsFor.of(entry.validity(), known) == HoldsFor.OTHERS) {
            return Optional.of(new HeldBack(entry, HeldBack.Reason.OTHER_VEHICLE, Phrase.of("intake.ask.nothing")));
        }
        if (entry.absent()) {
            return Optional.of(new HeldBack(entry, HeldBack.Reason.ABSENT, Phrase.of("intake.ask.absent")));
        }
        if (contradiction) {
            return Optional.of(new HeldBack(entry, HeldBack.Reason.CONTRADICTION, meter));
        }
        if (CircuitMaker.levels(entry).isPresent()) {
            return Optional.empty();
        }
        HeldBack.Reason reason =
                entry.behaviour().isEmpty() ? HeldBack.Reason.SWITCHING_NOT_SAID : HeldBack.Reason.REST_NOT_SAID;
        return Optional.of(new HeldBack(entry, reason, meter));
    }

    private static List<Operable> operables(List<Circuit> circuits) {
        List<Operable> operables = new ArrayList<>();
        operables.add(new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS));
        for (Operable.Kind kind : EnumSet.of(Operable.Kind.HOOD, Operable.Kind.TRUNK)) {
            OperableId id = CircuitMaker.opening(kind);
            if (circuits.stream().anyMatch(c -> c.follows().contains(id))) {
                operables.add(new Operable(id, kind, Operable.OPENING_POSITIONS));
            }
        }
        return operables;
    }
}
