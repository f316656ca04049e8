package org.loomproof.intake.check;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.loomproof.intake.field.Evidence;

/**
 * How sure a field is. The evidence it was read on has a weight ({@code evidence.csv}, by hand), and a map that never falls makes of the weight
 * the share of such readings that proved right ({@code calibration.csv}, counted). Where the writer doubted it is less.
 */
final class Sureness {

    /** A mark of doubt takes away this much; no published source. */
    static final double DOUBTED = 0.6;

    /** Evidence so weak that hardly any sheet shows it: nobody knows how often it proves right; no published source. */
    private static final double NOT_COUNTED = 0.6;

    private static final Map<String, Double> WEIGHTS = weights();
    private static final Map<String, NavigableMap<Double, Double>> CALIBRATION = calibration();

    private Sureness() {}

    /** From 0 to 1. What a person said is sure. */
    static double of(Field field, Evidence evidence, boolean doubted) {
        double sure = switch (evidence) {
            case BY_HAND -> 1;
            case BY_EAR -> Math.min(NOT_COUNTED, calibrated(field, evidence));
            default -> calibrated(field, evidence);
        };
        return doubted ? sure * DOUBTED : sure;
    }

    private static double calibrated(Field field, Evidence evidence) {
        Double weight = WEIGHTS.get(word(field) + "," + word(evidence));
        NavigableMap<Double, Double> map = CALIBRATION.get(word(field));
        if (weight == null || map == null) {
            throw new IllegalStateException(
                    "evidence.csv or calibration.csv says nothing of " + field + " " + evidence);
        }
        Map.Entry<Double, Double> step = map.floorEntry(weight);
        return step == null ? Math.min(NOT_COUNTED, map.firstEntry().getValue()) : step.getValue();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Map<String, Double> weights() {
        Map<String, Double> weights = new HashMap<>();
        rows("evidence.csv").forEach(row -> weights.put(row[0] + "," + row[1], Double.parseDouble(row[2])));
        return Map.copyOf(weights);
    }

    private static Map<String, NavigableMap<Double, Double>> calibration() {
        Map<String, NavigableMap<Double, Double>> maps = new HashMap<>();
        rows("calibration.csv")
                .forEach(row -> maps.computeIfAbsent(row[0], field -> new TreeMap<>())
                        .put(Double.parseDouble(row[1]), Double.parseDouble(row[2])));
        return Map.copyOf(maps);
    }

    /** The rows of a file beside this class, without remarks and the head. */
    private static List<String[]> rows(String file) {
        try (InputStream in = Sureness.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing");
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("field,"))
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
