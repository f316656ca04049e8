package org.loomproof.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Passage;
import org.loomproof.testing.Note;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.text.Words;

/** How well sheets are read whose right answers are known. An answer is role, colour, polarity, and panel|connector|cavity. */
final class Scores {

    static final List<String> FIELDS = List.of("role", "colour", "polarity", "place");
    private static final double CALLED_SURE = 0.95;

    /** Role and colour tell circuits apart three times as well as the others. */
    private static final int ALL_ALIKE = 8;

    private final Map<String, int[]> right = new TreeMap<>();
    private final Map<String, int[]> byEvidence = new TreeMap<>();
    private final Map<String, Map<String, Integer>> confusion = new TreeMap<>();
    private final int[] sure = new int[2];
    private final boolean tells;
    private int sheets;

    /** @param tells whether every wrong field is printed */
    Scores(boolean tells) {
        this.tells = tells;
    }

    /** Reads the text and compares each answer with the entry that is most like it. */
    void judge(String name, String text, List<List<String>> answers) {
        sheets++;
        List<Entry> left = new ArrayList<>(ReadNotes.of(Notes.lines(name, text.getBytes(StandardCharsets.UTF_8)))
                .entries());
        Map<Integer, Entry> taken = matched(answers, left);
        for (int k = 0; k < answers.size(); k++) {
            List<String> wanted = answers.get(k);
            Optional<Entry> entry = Optional.ofNullable(taken.get(k));
            List<String> got = entry.map(Scores::fields).orElse(List.of("-", "-", "-", "-"));
            for (int f = 0; f < FIELDS.size(); f++) {
                if (!wanted.get(f).equals("*")) {
                    count(name, f, wanted.get(f), got.get(f), entry);
                }
            }
        }
    }

    /** Which entry answers which of the answers: the pairs most alike first, so that a circuit that was not read takes nobody else's entry. */
    private static Map<Integer, Entry> matched(List<List<String>> answers, List<Entry> entries) {
        Map<Integer, Entry> taken = new TreeMap<>();
        Set<Integer> used = new TreeSet<>();
        for (int alike = ALL_ALIKE; alike > 0; alike--) {
            for (int k = 0; k < answers.size(); k++) {
                for (int e = 0; e < entries.size() && !taken.containsKey(k); e++) {
                    if (!used.contains(e) && equal(answers.get(k), fields(entries.get(e))) == alike) {
                        taken.put(k, entries.get(e));
                        used.add(e);
                    }
                }
            }
        }
        return taken;
    }

    private void count(String name, int f, String wanted, String got, Optional<Entry> entry) {
        boolean isRight = isEqual(wanted, got);
        String field = FIELDS.get(f);
        add(right.computeIfAbsent(field, x -> new int[2]), isRight);
        Optional<? extends Answer<?>> answer = entry.flatMap(e -> answer(e, f));
        answer.ifPresent(a -> add(
                byEvidence.computeIfAbsent(
                        field + "," + Words.of(a.evidence()) + (entry.get().doubted() ? ",doubted" : ""),
                        x -> new int[2]),
                isRight));
        answer.ifPresent(a -> band(a.sure(), isRight));
        if (answer.isPresent() && answer.get().sure() >= CALLED_SURE) {
            add(sure, isRight);
            add(sureByField.computeIfAbsent(field, x -> new int[2]), isRight);
        }
        if (f == 0) {
            confusion.computeIfAbsent(wanted, x -> new TreeMap<>()).merge(got, 1, Integer::sum);
        }
        if (!isRight && tells) {
            System.out.println(name + " " + field + ": wanted " + wanted + ", got " + got
                    + entry.map(e -> " in \"" + e.name() + "\"").orElse("")
                    + answer.map(a -> String.format(
                                    Locale.ROOT, ", %.0f %% sure by %s", 100 * a.sure(), Words.of(a.evidence())))
                            .orElse(""));
        }
    }

    private static void add(int[] tally, boolean isRight) {
        tally[0] += isRight ? 1 : 0;
        tally[1]++;
    }

    /** The share of the fields that were read right, from 0 to 1. */
    double share(String field) {
        int[] tally = right.getOrDefault(field, new int[] {0, 1});
        return tally[0] / (double) tally[1];
    }

    /** The share of right ones among fields called at least 95 % sure. */
    double shareOfSure() {
        return sure[1] == 0 ? 0 : sure[0] / (double) sure[1];
    }

    /** Right ones and all, by field and evidence, of what the writer did not doubt. */
    Map<String, int[]> byEvidence() {
        return byEvidence.entrySet().stream()
                .filter(e -> !e.getKey().endsWith(",doubted"))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, TreeMap::new));
    }

    /** Tells, for each band of sureness, how many fields were called so and the share that was right; gives by how much a band of at least 50 says too much. */
    double tellReliability(String what) {
        double most = 0;
        for (Map.Entry<Integer, double[]> band : bands.entrySet()) {
            double[] t = band.getValue();
            Note.that(String.format(
                    Locale.ROOT,
                    "%s called %d %% and more: %.0f fields, said %.3f, right %.3f",
                    what,
                    band.getKey(),
                    t[0],
                    t[1] / t[0],
                    t[2] / t[0]));
            most = t[0] < LEAST_OF_A_BAND ? most : Math.max(most, t[1] / t[0] - t[2] / t[0]);
        }
        sureByField.forEach((field, t) ->
                Note.that(what + " called at least 95 % sure, " + field + ": " + t[0] + " of " + t[1] + " right"));
        return most;
    }

    private static final int LEAST_OF_A_BAND = 50;
    private final Map<String, int[]> sureByField = new TreeMap<>();
    private final Map<Integer, double[]> bands = new TreeMap<>();

    private void band(double called, boolean isRight) {
        int percent = (int) Math.round(called * 100);
        double[] tally = bands.computeIfAbsent(percent >= 95 ? 95 : percent / 10 * 10, x -> new double[3]);
        tally[0]++;
        tally[1] += called;
        tally[2] += isRight ? 1 : 0;
    }

    /** How many fields were called at least 95 % sure. */
    int sure() {
        return sure[1];
    }

    int sheets() {
        return sheets;
    }

    /** Prints what was counted, the roles as a confusion matrix: each row a role, then what it was read as. */
    void print(String what) {
        right.forEach((field, t) -> Note.that(what + " " + field + ": " + t[0] + " of " + t[1]));
        Note.that(what + " fields called at least 95 % sure: " + sure[0] + " of " + sure[1] + " right, on " + sheets
                + " sheets");
        confusion.forEach((wanted, got) -> System.out.println(what + " " + wanted + " read as " + got));
        byEvidence.forEach((evidence, t) -> System.out.println(what + " by " + evidence + ": " + t[0] + " of " + t[1]));
    }

    private static Optional<? extends Answer<?>> answer(Entry entry, int field) {
        return switch (field) {
            case 0 -> entry.role();
            case 1 -> entry.colour();
            case 2 -> entry.behaviour();
            default -> entry.spot();
        };
    }

    /** How alike the two are; what need not be said makes nothing alike. */
    private static int equal(List<String> wanted, List<String> got) {
        int equal = 0;
        for (int f = 0; f < FIELDS.size(); f++) {
            equal += !got.get(f).isEmpty() && !wanted.get(f).equals("*") && isEqual(wanted.get(f), got.get(f))
                    ? f < 2 ? 3 : 1
                    : 0;
        }
        return equal;
    }

    private static boolean isEqual(String wanted, String got) {
        return wanted.equals("*")
                || plain(wanted).equals(plain(got))
                // Neither is taken for a circuit of ours.
                || (wanted.equals("other") && got.equals("unknown"))
                || (got.contains("|") && !wanted.contains("|") && words(wanted).equals(words(got)));
    }

    /** A whole place as the set of its words, without those that only say what the next one is. */
    private static Set<String> words(String place) {
        Set<String> words = new TreeSet<>(List.of(Passage.fold(place).split("[^a-z0-9]+", -1)));
        words.removeAll(LEADING);
        return words;
    }

    private static final Set<String> LEADING = Set.of(
            "",
            "the",
            "der",
            "die",
            "das",
            "dem",
            "den",
            "la",
            "el",
            "le",
            "les",
            "los",
            "las",
            "in",
            "at",
            "am",
            "im",
            "en",
            "au",
            "connector",
            "plug",
            "pin",
            "cavity",
            "stecker",
            "kontakt",
            "conector",
            "terminal",
            "connecteur",
            "borne",
            "broche");

    private static String plain(String text) {
        return Passage.fold(text)
                .replaceAll("\\b(the|der|die|das|dem|la|el|le|conn|connector|plug|stecker)\\b", "")
                .replaceAll("[^a-z0-9|]", "");
    }

    static List<String> fields(Entry e) {
        String role = e.role().map(a -> a.value().role()).map(CircuitRole::word).orElse("unknown");
        String colour = e.colour().map(a -> a.value().letters()).orElse("");
        String place = e.spot()
                .map(a -> a.value().panel() + "|" + a.value().connector() + "|"
                        + a.value().cavity())
                .orElse("||");
        String polarity = e.behaviour()
                .map(a -> switch (a.value().kind()) {
                    case NEGATIVE -> "neg";
                    case POSITIVE -> "pos";
                    case REVERSING -> "rev";
                    case DATA -> "data";
                    case MODULE_VOLTAGE -> "5";
                    case STEPPED -> a.value().active().map(Scores::ohms).orElse("");
                })
                .orElse("");
        return List.of(role, colour, polarity, place);
    }

    private static String ohms(Level level) {
        return level instanceof Level.Resistance(var ohms) ? String.format(Locale.ROOT, "%.0f", ohms.value()) : "";
    }
}
