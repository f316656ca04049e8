package org.loomproof.intake.correct;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.workshop.brief.text.Words;

/**
 * What a shop remembers of its corrections; the latest of a field and a text is the one that counts.
 *
 * @param corrections oldest first
 */
public record ShopMemory(List<Correction> corrections) {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader("field", "written", "means")
            .setSkipHeaderRecord(true)
            .setRecordSeparator("\n")
            .get();

    public ShopMemory {
        corrections = List.copyOf(corrections);
    }

    /** The memory of a shop that has corrected nothing yet. */
    public static ShopMemory empty() {
        return new ShopMemory(List.of());
    }

    /** This memory and one correction more; an older one for the same text is forgotten. A text that is empty teaches nothing. */
    public ShopMemory with(Correction correction) {
        if (correction.written().isEmpty()) {
            return this;
        }
        List<Correction> more = new ArrayList<>(corrections);
        more.removeIf(c -> c.field() == correction.field() && c.written().equals(correction.written()));
        more.add(correction);
        return new ShopMemory(more);
    }

    /** What the shop once said about the field of such an entry. */
    public Optional<Correction> suggestion(Entry entry, Field field) {
        String written = Correction.key(Correction.written(entry, field));
        return corrections.stream()
                .filter(c -> c.field() == field && c.written().equals(written))
                .findFirst();
    }

    /** As comma-separated lines, to be kept in a file. */
    public String write() {
        StringBuilder text = new StringBuilder("field,written,means\n");
        try (CSVPrinter printer =
                new CSVPrinter(text, FORMAT.builder().setSkipHeaderRecord(true).get())) {
            for (Correction c : corrections) {
                printer.printRecord(Words.of(c.field()), c.written(), c.means());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a memory cannot be written to memory", e);
        }
        return text.toString();
    }

    /** The memory in lines that {@link #write} made; lines that are none are passed over. */
    public static ShopMemory read(String text) {
        ShopMemory memory = empty();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
            for (CSVRecord line : parser) {
                if (line.size() == 3) {
                    Optional<Field> field = field(line.get(0));
                    memory = field.isPresent()
                            ? memory.with(new Correction(field.get(), line.get(1), line.get(2)))
                            : memory;
                }
            }
        } catch (IOException | UncheckedIOException e) {
            // What was read until the file broke is kept: suggestions are only shown, so a lost one does no harm.
            return memory;
        }
        return memory;
    }

    private static Optional<Field> field(String word) {
        try {
            return Optional.of(Field.valueOf(word.toUpperCase(Locale.ROOT)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
