package org.loomproof.workshop.brief.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.QuantityText.Outcome;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Phrase;

/** Reads what a meter finds on a wire: a word, a resistance to the body, or a voltage. */
final class LevelReader {

    private static final Map<String, Level> WORDS = words();

    private LevelReader() {}

    private static Map<String, Level> words() {
        Map<String, Level> words = new LinkedHashMap<>();
        words.put("ground", new Level.Ground());
        words.put("supply", new Level.Supply());
        words.put("open", new Level.Open());
        words.put("reversing", new Level.Reversing());
        words.put("data", new Level.Data());
        return words;
    }

    /** The level behind the key, which must be there; open stands in. */
    static Level read(MappingCursor in, String key) {
        if (in.find(key).isEmpty()) {
            in.missing(key, wanted());
        }
        return in.find(key).map(LevelReader::level).orElse(new Level.Open());
    }

    private static Level level(Cursor at) {
        String text = at.text();
        Level word = WORDS.get(text);
        if (word != null) {
            return word;
        }
        if (QuantityText.read(text, Unit.OHMS) instanceof Outcome.Read(Range<?> ohms) && isSingle(ohms)) {
            return new Level.Resistance(new Ohms(ohms.low().value()));
        }
        if (QuantityText.read(text, Unit.VOLTS) instanceof Outcome.Read(Range<?> volts) && isSingle(volts)) {
            return new Level.Voltage(new Volts(volts.low().value()));
        }
        if (at.isText()) {
            at.problem(ProblemKind.NOT_ONE_OF, wanted(), Words.hint(text, WORDS.keySet()));
        }
        return new Level.Open();
    }

    private static boolean isSingle(Range<? extends Quantity> range) {
        return range.low().value() == range.high().value();
    }

    private static Phrase wanted() {
        return Phrase.of("problem.wanted.level", List.copyOf(WORDS.keySet()));
    }
}
