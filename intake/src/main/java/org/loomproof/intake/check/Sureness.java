package org.loomproof.intake.check;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.loomproof.intake.field.Evidence;

/** How sure a field is: how often such evidence should be right, less where the writer doubted. */
final class Sureness {

    /** A mark of doubt takes away this much; no published source. */
    static final double DOUBTED = 0.6;

    private static final Map<String, Double> MEASURED = measured();

    private Sureness() {}

    /** From 0 to 1. */
    static double of(Field field, Evidence evidence, boolean doubted) {
        Double sure = MEASURED.get(word(field) + "," + word(evidence));
        if (sure == null) {
            throw new IllegalStateException("calibration.csv says nothing of " + field + " " + evidence);
        }
        return doubted ? sure * DOUBTED : sure;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Map<String, Double> measured() {
        try (InputStream in = Sureness.class.getResourceAsStream("calibration.csv")) {
            if (in == null) {
                throw new IllegalStateException("calibration.csv is missing");
            }
            Map<String, Double> measured = new HashMap<>();
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(l -> !l.startsWith("#") && !l.startsWith("field,"))
                    .forEach(l -> measured.put(
                            l.substring(0, l.lastIndexOf(',')),
                            Double.parseDouble(l.substring(l.lastIndexOf(',') + 1))));
            return Map.copyOf(measured);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
