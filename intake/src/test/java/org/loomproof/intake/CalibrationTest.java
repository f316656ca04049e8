package org.loomproof.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * What the reader calls so sure is so often right. The map from the weight of the evidence to that share is counted here, on sheets to train
 * on: generated ones, the first corpus, and the fresh corpus, by which the reader was mended. {@code -Dloomproof.write=true} writes {@code
 * calibration.csv}; without it the file must say what is counted today, to within two in a hundred. Whether it holds is asked of sheets that had no part in it.
 */
class CalibrationTest {

    private static final Path FILES = Path.of("src/main/resources/org/loomproof/intake/check");
    private static final int SEEDS = 400;
    private static final double CALLED_SURE_AND_RIGHT = 0.99;

    /** What is reached on the sheets of another hand that were not looked at, rounded down; to be raised with the reader. */
    private static final double FRESH_SURE_AND_RIGHT = 0.98;

    /** A sort of sheet that shows evidence less often says nothing of it. */
    private static final int LEAST_READINGS = 8;

    private static final double AS_GOOD_AS_COUNTED = 0.02;

    /** By how much a band of at least 50 fields there may say more than is right: what was reached, rounded up. */
    private static final double FRESH_OVERSTATED = 0.05;

    private static final String HEAD = """
            # What share proves right of the fields whose evidence weighs so much or more (evidence.csv), up to the next row. Counted by CalibrationTest,
            # -Dloomproof.write=true, on three sorts of sheets: generated ones, the first corpus, and the fresh corpus, by which the reader was
            # mended, so that a wrong one counts twice. For each a map that never falls is fitted (pool adjacent violators) to what is right with a certainty of nine in ten; the lowest of the three holds.
            # Sizes were not counted.
            # source: counted, docs/internals/reading.md
            field,weight,sure
            """;
    private static final String SIZES = "size,0.00,0.90\n";

    @Test
    void theCalibrationIsWhatTheTrainingSheetsShow() throws IOException {
        Path file = FILES.resolve("calibration.csv");
        String counted = HEAD + rows() + SIZES;
        if (Boolean.getBoolean("loomproof.write")) {
            Files.writeString(file, counted);
        }
        Map<String, NavigableMap<Double, Double>> kept = maps(Files.readString(file));
        Map<String, NavigableMap<Double, Double>> today = maps(counted);
        weights().forEach((key, weight) -> {
            String field = key.substring(0, key.indexOf(','));
            assertThat(said(kept, field, weight))
                    .as(key)
                    .isCloseTo(said(today, field, weight), within(AS_GOOD_AS_COUNTED));
        });
    }

    @Test
    void ofGeneratedSheetsHeldBackWhatIsCalledSureIsRight() {
        Scores scores = FreshCorpusTest.generated(true, SEEDS);
        scores.tellReliability("generated, held back");
        assertThat(scores.sure()).isGreaterThan(5000);
        assertThat(scores.shareOfSure()).isGreaterThanOrEqualTo(CALLED_SURE_AND_RIGHT);
    }

    @Test
    void ofSheetsByAnotherHandHeldBackNoBandSaysMuchMoreThanIsRight() throws IOException {
        Scores scores = FreshCorpusTest.later();
        double overstated = scores.tellReliability("fresh, written later");
        assertThat(scores.sure()).isGreaterThan(250);
        assertThat(scores.shareOfSure()).isGreaterThanOrEqualTo(FRESH_SURE_AND_RIGHT);
        assertThat(overstated).isLessThanOrEqualTo(FRESH_OVERSTATED);
    }

    private static double said(Map<String, NavigableMap<Double, Double>> maps, String field, double weight) {
        NavigableMap<Double, Double> map = maps.getOrDefault(field, new TreeMap<>());
        return Optional.ofNullable(map.floorEntry(weight))
                .map(Map.Entry::getValue)
                .orElse(0.0);
    }

    private static Map<String, NavigableMap<Double, Double>> maps(String file) {
        Map<String, NavigableMap<Double, Double>> maps = new TreeMap<>();
        file.lines()
                .filter(line -> !line.startsWith("#") && !line.startsWith("field,"))
                .map(line -> line.split(",", -1))
                .forEach(row -> maps.computeIfAbsent(row[0], field -> new TreeMap<>())
                        .put(Double.parseDouble(row[1]), Double.parseDouble(row[2])));
        return maps;
    }

    private static String rows() throws IOException {
        List<Map<String, int[]>> sources = List.of(
                FreshCorpusTest.generated(false, SEEDS).byEvidence(),
                CorpusTest.all(false).byEvidence(),
                lookedAt(FreshCorpusTest.lookedAt(false).byEvidence()));
        Map<String, Double> weights = weights();
        StringBuilder rows = new StringBuilder();
        for (String field : Scores.FIELDS) {
            List<NavigableMap<Double, Double>> maps = sources.stream()
                    .map(source -> neverFalling(byWeight(field, weights, source)))
                    .filter(map -> !map.isEmpty())
                    .toList();
            TreeMap<Double, Double> lowest = new TreeMap<>();
            maps.forEach(map -> map.keySet().forEach(weight -> lowest.put(weight, lowest(maps, weight))));
            double before = -1;
            for (Map.Entry<Double, Double> step : lowest.entrySet()) {
                double said = Math.floor(step.getValue() * 1000) / 1000;
                if (said > before) {
                    rows.append(String.format(Locale.ROOT, "%s,%.2f,%.3f%n", field, step.getKey(), said));
                }
                before = said;
            }
        }
        return rows.toString();
    }

    /** By these sheets the reader was mended, so on sheets never seen it is wrong oftener: each wrong reading stands for two. Set by hand. */
    private static Map<String, int[]> lookedAt(Map<String, int[]> byEvidence) {
        Map<String, int[]> counted = new TreeMap<>();
        byEvidence.forEach((key, tally) -> counted.put(key, new int[] {tally[0], tally[1] + (tally[1] - tally[0])}));
        return counted;
    }

    private static double lowest(List<NavigableMap<Double, Double>> maps, double weight) {
        return maps.stream()
                .map(map -> Optional.ofNullable(map.floorEntry(weight)).orElseGet(map::firstEntry))
                .mapToDouble(Map.Entry::getValue)
                .min()
                .orElse(0);
    }

    /** Right ones and all by the weight of their evidence. */
    private static NavigableMap<Double, int[]> byWeight(
            String field, Map<String, Double> weights, Map<String, int[]> source) {
        TreeMap<Double, int[]> byWeight = new TreeMap<>();
        source.forEach((key, tally) -> {
            if (key.startsWith(field + ",") && tally[1] >= LEAST_READINGS) {
                int[] sum = byWeight.computeIfAbsent(weights.get(key), w -> new int[2]);
                sum[0] += tally[0];
                sum[1] += tally[1];
            }
        });
        return byWeight;
    }

    /**
     * What share is right with a certainty of nine in ten, when so many of so many were: the lower end of the score interval (E. B. Wilson, Journal of
     * the American Statistical Association 22, 1927; from memory). Of few readings little is concluded.
     */
    static double atLeast(int right, int all) {
        double share = right / (double) all;
        double z2 = ONE_IN_TEN * ONE_IN_TEN;
        double middle = share + z2 / (2 * all);
        double spread = ONE_IN_TEN * Math.sqrt(share * (1 - share) / all + z2 / (4.0 * all * all));
        return (middle - spread) / (1 + z2 / all);
    }

    /** The normal distribution leaves one in ten beyond so many standard deviations. */
    private static final double ONE_IN_TEN = 1.2816;

    /** Neighbours that would fall are pooled until none does. */
    static NavigableMap<Double, Double> neverFalling(NavigableMap<Double, int[]> byWeight) {
        record Block(double weight, int right, int all) {
            double share() {
                return atLeast(right, all);
            }
        }
        List<Block> blocks = new ArrayList<>();
        byWeight.forEach((weight, tally) -> {
            blocks.add(new Block(weight, tally[0], tally[1]));
            while (blocks.size() > 1
                    && blocks.get(blocks.size() - 2).share() > blocks.getLast().share()) {
                Block last = blocks.removeLast();
                Block before = blocks.removeLast();
                blocks.add(new Block(before.weight(), before.right() + last.right(), before.all() + last.all()));
            }
        });
        TreeMap<Double, Double> map = new TreeMap<>();
        blocks.forEach(block -> map.put(block.weight(), block.share()));
        return map;
    }

    @Test
    void theMapNeverFallsAndPoolsWhatWould() {
        TreeMap<Double, int[]> counted =
                new TreeMap<>(Map.of(0.2, new int[] {8, 8}, 0.5, new int[] {3, 8}, 0.9, new int[] {98, 98}));
        // 11 of 16 pooled, and 98 of 98; reckoned by hand.
        NavigableMap<Double, Double> map = neverFalling(counted);
        assertThat(map).containsOnlyKeys(0.2, 0.9);
        assertThat(map.get(0.2)).isCloseTo(0.5275, within(0.0001));
        assertThat(map.get(0.9)).isCloseTo(0.9835, within(0.0001));
    }

    private static Map<String, Double> weights() throws IOException {
        Map<String, Double> weights = new TreeMap<>();
        Files.readAllLines(FILES.resolve("evidence.csv")).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("field,"))
                .map(line -> line.split(",", -1))
                .forEach(row -> weights.put(row[0] + "," + row[1], Double.parseDouble(row[2])));
        return weights;
    }
}
