package org.loomproof.intake.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.layout.Cell;
import org.loomproof.intake.layout.ColumnKind;
import org.loomproof.intake.layout.LaidOut;
import org.loomproof.intake.layout.LayoutReader;
import org.loomproof.intake.layout.RawEntry;

/**
 * A list of leads as it was understood.
 *
 * @param leads in the order of the text
 * @param loose lines that belong to no lead
 */
public record LeadNotes(List<LeadReading> leads, List<Passage> loose) {

    public LeadNotes {
        leads = List.copyOf(leads);
        loose = List.copyOf(loose);
    }

    /** Understands the lines as far as they can be; what is not understood is kept and can be shown. */
    public static LeadNotes of(SourceLines source) {
        LaidOut laidOut = LayoutReader.read(source);
        List<LeadReading> leads = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        boolean relays = source.lines().stream().anyMatch(line -> LeadWords.speaksOfRelays(line.folded()));
        List<Passage> loose = new ArrayList<>(laidOut.loose());
        for (RawEntry raw : laidOut.entries()) {
            if (isOfAllRelays(raw)) {
                raw.cells().forEach(cell -> loose.add(cell.text()));
                loose.addAll(raw.notes());
                continue;
            }
            List<Passage> extras =
                    raw.notes().stream().filter(LeadNotes::namesLeads).toList();
            List<Passage> notes =
                    raw.notes().stream().filter(note -> !extras.contains(note)).toList();
            leads.add(new LeadReader(new RawEntry(raw.cells(), raw.headings(), notes))
                    .read(leads.size() + 1, ids, relays));
            for (Passage line : extras) {
                for (int[] part : Segments.of(line.folded())) {
                    Cell cell = new Cell(ColumnKind.FREE, line.slice(part[0], part[1]), false);
                    leads.add(new LeadReader(new RawEntry(List.of(cell), raw.headings(), List.of()))
                            .read(leads.size() + 1, ids, relays));
                }
            }
        }
        return new LeadNotes(leads, loose);
    }

    /** A line without colour and figure that speaks of relays: "Lock relays inside" is about the leads below it and none itself. */
    private static boolean isOfAllRelays(RawEntry raw) {
        Passage all = Passage.join(raw.cells().stream().map(Cell::text).toList());
        return LeadWords.speaksOfRelays(all.folded())
                && LeadWords.contact(all.folded()).isEmpty()
                && Colours.among(new Claims(all)).isEmpty()
                && all.text().codePoints().noneMatch(Character::isDigit);
    }

    /** A line without a colour that names something of its own in every part ("LED, service button"): leads with plugs of their own. */
    private static boolean namesLeads(Passage line) {
        List<int[]> parts = Segments.of(line.folded());
        return !parts.isEmpty()
                && parts.stream()
                        .allMatch(part -> LeadWords.use(line.folded().substring(part[0], part[1]), Optional.empty())
                                .isPresent());
    }
}
