package org.loomproof.pages.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.pages.work.Work.SheetChecked.Says;
import org.loomproof.pages.work.WorkLog;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

/**
 * In how many cars a meter confirmed each entry of a shared vehicle sheet, and in how many it showed another wire. The tally is one
 * card beside the sheet, so that a page reads one card and not every job. It holds sums of entries under names of jobs, and nothing
 * of a customer: when one is forgotten the count stays, and nobody can tell whose car it was.
 */
public final class Confirmations {

    private static final String SHEET = "sheet";
    private static final Map<Says, String> SIGNS = Map.of(Says.CONFIRMED, "+", Says.CONTRADICTED, "-");
    private static final int SUM_DIGITS = 16;

    private final OpenBook book;
    private final Messages messages;

    public Confirmations(OpenBook book, Messages messages) {
        this.book = book;
        this.messages = messages;
    }

    /**
     * An entry of a sheet.
     *
     * @param circuit as the sheet has it
     * @param confirmed cars in which the wire was the one
     * @param contradicted cars in which it was another
     */
    public record Line(Circuit circuit, int confirmed, int contradicted) {}

    /** True for a job that works on a copy of a shared sheet; what meters say of a sheet of its own is counted nowhere. */
    public static boolean concern(Card job) {
        return !job.get(SHEET + "-from").isBlank();
    }

    /** A sum of what a sheet says of each circuit that a meter can confirm: an entry that says something else has another. */
    public Map<CircuitId, String> entries(Card card) {
        Map<CircuitId, String> sums = new HashMap<>();
        circuits(card).forEach(circuit -> sums.put(circuit.id(), sum(circuit)));
        return sums;
    }

    private List<Circuit> circuits(Card card) {
        return switch (new TextRun(messages).briefs().readSheet(new SourceText(SHEET, card.get(SHEET)))) {
            case Checked.Good<Sheet>(Sheet sheet) -> sheet.circuits();
            case Checked.Bad<Sheet> ignored -> List.of();
        };
    }

    private static String sum(Circuit circuit) {
        Stream<Object> said = Stream.of(
                circuit.id(),
                circuit.role(),
                circuit.where(),
                circuit.colour(),
                circuit.switching().rest(),
                circuit.switching().active(),
                circuit.follows());
        return ProgramSum.of(said.map(Object::toString)).substring(0, SUM_DIGITS);
    }

    /** Counts what the meter said at a job, beside the sheet that it took its own from; again and again, and once. */
    public void count(Card job, Author who) {
        String said = said(new WorkLog(book, job.id()).standing());
        Optional<Card> tally = new Shared(book)
                .takenBy(job, SHEET)
                .filter(sheet -> sheet.kind() == CardKind.SHEET)
                .flatMap(sheet -> book.cards().beside(sheet.id(), CardKind.TALLY, who, "tally.begun"));
        JobTally.write(book, tally, job, said, who);
    }

    /** What was said last of each entry, where that decides: its sum and a sign, with a space between one and the next. */
    private static String said(List<Noted> standing) {
        Map<String, String> last = new TreeMap<>();
        standing.forEach(noted -> {
            if (noted.work() instanceof Work.SheetChecked(String circuit, String entry, Says says)) {
                last.put(entry, SIGNS.getOrDefault(says, ""));
            }
        });
        return last.entrySet().stream()
                .filter(one -> !one.getValue().isEmpty())
                .map(one -> one.getKey() + one.getValue())
                .collect(Collectors.joining(" "));
    }

    /** Every entry of a sheet as it stands; what was counted of an entry that said something else is not its own. */
    public List<Line> of(Card sheet) {
        Map<String, Integer> cars = new HashMap<>();
        book.cards()
                .find(CardId.beside(sheet.id(), CardKind.TALLY))
                .ifPresent(tally -> tally.entries().values().values().stream()
                        .flatMap(said -> Stream.of(said.split(" ")))
                        .forEach(one -> cars.merge(one, 1, Integer::sum)));
        Map<CircuitId, String> sums = entries(sheet);
        List<Line> lines = new ArrayList<>();
        for (Circuit circuit : circuits(sheet)) {
            String sum = Objects.requireNonNull(sums.get(circuit.id()));
            lines.add(new Line(circuit, cars.getOrDefault(sum + "+", 0), cars.getOrDefault(sum + "-", 0)));
        }
        return lines;
    }
}
