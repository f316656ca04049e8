package org.loomproof.pages.bay;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.Work.SheetChecked.Says;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * What the readings at a job say of the entries of its sheet.
 *
 * @param bay the job
 * @param entries a sum of what its sheet says, by circuit
 */
public record SheetCheck(BayJob bay, Map<CircuitId, String> entries) {

    public SheetCheck {
        entries = Map.copyOf(entries);
    }

    /** The circuits that these entries of a log are readings of, or take readings of back. */
    public static Set<CircuitId> touched(List<Entry> entries, List<Noted> all) {
        Map<String, String> circuits = all.stream()
                .filter(noted -> noted.work() instanceof Work.ReadingTaken)
                .collect(Collectors.toMap(Noted::id, noted -> Taken.taken(noted).circuit(), (one, same) -> one));
        Set<CircuitId> touched = new TreeSet<>();
        for (Entry entry : entries) {
            if (entry.work() instanceof Work.ReadingTaken reading) {
                touched.add(new CircuitId(reading.circuit()));
            } else if (entry.work() instanceof Work.Undone(String undone)) {
                Optional.ofNullable(circuits.get(undone)).map(CircuitId::new).ifPresent(touched::add);
            }
        }
        return touched;
    }

    /** The entries to write, of these circuits those of which the meter now says something else than was written last. */
    public List<Entry> changed(Set<CircuitId> circuits, List<Noted> standing, Instant now) {
        Map<String, Says> written = new HashMap<>();
        standing.forEach(noted -> {
            if (noted.work() instanceof Work.SheetChecked(String circuit, String entry, Says says)) {
                written.put(entry, says);
            }
        });
        return circuits.stream()
                .filter(circuit -> bay.joins(circuit) && entries.containsKey(circuit))
                .map(circuit -> new Work.SheetChecked(
                        circuit.value(), Objects.requireNonNull(entries.get(circuit)), says(circuit, standing)))
                .filter(checked -> written.getOrDefault(checked.entry(), Says.OPEN) != checked.says())
                .map(checked -> Entry.of(now, checked))
                .toList();
    }

    private Says says(CircuitId circuit, List<Noted> standing) {
        MeteredCircuit metered = bay.metered(circuit, standing);
        if (metered.answer().isIt()) {
            return Says.CONFIRMED;
        }
        return metered.isContradicted() ? Says.CONTRADICTED : Says.OPEN;
    }
}
