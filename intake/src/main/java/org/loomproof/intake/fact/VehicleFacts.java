package org.loomproof.intake.fact;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Marks;
import org.loomproof.intake.field.Segments;
import org.loomproof.intake.field.Validity;
import org.loomproof.intake.field.Word;

/**
 * What notes say of the vehicle beside its circuits: year, doors, gearbox, fuel, key and start, the side of the wheel, the voltage. Only what is said
 * counts; where two places differ, neither is taken and both are told.
 *
 * @param agreed one a key, in the order of the text
 * @param differing those of keys for which the notes say several things
 */
public record VehicleFacts(List<VehicleFact> agreed, List<VehicleFact> differing) {

    private static final Lexicon WORDS = Lexicon.read(VehicleFacts.class, "facts.words");
    /** What notes may say something of. */
    static final Set<String> KEYS = WORDS.listIdeas().stream()
            .filter(idea -> idea.indexOf('=') > 0)
            .map(idea -> idea.substring(idea.lastIndexOf(' ', idea.indexOf('=')) + 1, idea.indexOf('=')))
            .collect(Collectors.toUnmodifiableSet());

    private static final String DOORS_WORD = "(?:doors?|dr|turer|turig\\w*|turen|turer|puertas?|portes?)";
    private static final Map<String, String> NUMBERS = numbers();
    private static final Pattern DOORS =
            Pattern.compile("\\b([2-5]|" + String.join("|", NUMBERS.keySet()) + ")\\s?-?\\s?" + DOORS_WORD + "\\b");
    private static final Pattern YEAR =
            Pattern.compile("(?<![\\d./-])(19[5-9]\\d|20[0-4]\\d)(?!\\d|[./-]\\d|\\s?(?:mm|ohm|k\\b|rpm|v\\b))");
    private static final Pattern VOLTS = Pattern.compile("(?<![\\w.,])(6|12|24)\\s?-?\\s?(v|volts?|voltios)\\b");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?;])\\s+");

    public VehicleFacts {
        agreed = List.copyOf(agreed);
        differing = List.copyOf(differing);
    }

    /** What the lines say of the vehicle. */
    public static VehicleFacts of(SourceLines source) {
        List<VehicleFact> all = new ArrayList<>();
        for (Passage line : source.lines()) {
            for (Passage sentence : sentences(line)) {
                sentence(sentence, all);
            }
        }
        Map<String, List<VehicleFact>> byKey =
                all.stream().collect(Collectors.groupingBy(VehicleFact::key, LinkedHashMap::new, Collectors.toList()));
        List<VehicleFact> agreed = new ArrayList<>();
        List<VehicleFact> differing = new ArrayList<>();
        byKey.values().forEach(facts -> {
            List<VehicleFact> distinct = distinct(facts);
            if (distinct.size() == 1) {
                agreed.add(distinct.getFirst());
            } else {
                differing.addAll(distinct);
            }
        });
        return new VehicleFacts(agreed, differing);
    }

    /** The values that hold, by their keys. */
    public Map<String, String> values() {
        Map<String, String> values = new LinkedHashMap<>();
        agreed.forEach(fact -> values.put(fact.key(), fact.value()));
        return values;
    }

    private static List<VehicleFact> distinct(List<VehicleFact> facts) {
        Map<String, VehicleFact> byValue = new LinkedHashMap<>();
        facts.forEach(fact -> byValue.putIfAbsent(fact.value(), fact));
        return List.copyOf(byValue.values());
    }

    private static List<Passage> sentences(Passage line) {
        List<Passage> sentences = new ArrayList<>();
        Matcher end = SENTENCE.matcher(line.text());
        int from = 0;
        while (end.find()) {
            sentences.add(line.slice(from, end.start()));
            from = end.end();
        }
        sentences.add(line.slice(from, line.length()));
        return sentences.stream().filter(Predicate.not(Passage::isBlank)).toList();
    }

    /** What of the words says something of a vehicle, letter by letter. */
    static List<Hit> exact(List<Word> words) {
        return WORDS.find(words).stream().filter(h -> !h.isOff()).toList();
    }

    private static void sentence(Passage sentence, List<VehicleFact> facts) {
        // What holds for some vehicles only says nothing of this one.
        Claims claims = new Claims(sentence);
        Validity.read(claims);
        String open = claims.open();
        Matcher doors = DOORS.matcher(open);
        if (doors.find()) {
            String number = NUMBERS.getOrDefault(doors.group(1), doors.group(1));
            facts.add(fact("doors", number, sentence, doors.start(), doors.end()));
        }
        Matcher year = YEAR.matcher(open);
        if (year.find()) {
            facts.add(fact("year", year.group(1), sentence, year.start(1), year.end(1)));
        }
        List<Hit> hits = exact(Word.of(open));
        volts(open, hits).ifPresent(m -> facts.add(fact("system-voltage", m[2] + " V", sentence, m[0], m[1])));
        words(sentence, open, hits, facts);
        boolean circuits = Colours.among(new Claims(sentence)).isPresent();
        String side = Marks.steering(claims);
        if (!side.isEmpty() && !circuits) {
            facts.add(fact("steering", side.equals("LHD") ? "left" : "right", sentence, 0, sentence.length()));
        }
    }

    /** From, to and number of the volts of the vehicle: twelve volts at a wire say nothing of it. */
    private static Optional<int[]> volts(String open, List<Hit> hits) {
        Matcher volts = VOLTS.matcher(open);
        while (volts.find()) {
            boolean ofVehicle =
                    hits.stream().anyMatch(h -> h.means("vehicle") && Math.abs(h.from() - volts.start()) <= NEAR);
            boolean spelt = volts.group(2).startsWith("volt") && !volts.group(1).equals("12");
            if (ofVehicle || spelt) {
                return Optional.of(new int[] {volts.start(), volts.end(), Integer.parseInt(volts.group(1))});
            }
        }
        return Optional.empty();
    }

    private static void words(Passage sentence, String open, List<Hit> hits, List<VehicleFact> facts) {
        List<int[]> segments = Segments.of(open);
        for (int i = 0; i < hits.size(); i++) {
            Hit hit = hits.get(i);
            boolean denied = i > 0
                    && hits.get(i - 1).means("none")
                    && open.substring(hits.get(i - 1).to(), hit.from()).isBlank();
            for (String idea : hit.ideas()) {
                int sign = idea.indexOf('=');
                boolean alone = idea.startsWith(ALONE);
                if (sign < 0 || denied || (alone && !isAlone(hit, hits, segments, open))) {
                    continue;
                }
                String key = idea.substring(alone ? ALONE.length() : 0, sign);
                facts.add(fact(key, idea.substring(sign + 1), sentence, hit.from(), hit.to()));
            }
        }
    }

    /** True when nothing but other facts of the vehicle stands between the marks around the words. */
    private static boolean isAlone(Hit hit, List<Hit> hits, List<int[]> segments, String open) {
        return segments.stream()
                .filter(s -> s[0] <= hit.from() && hit.to() <= s[1])
                .anyMatch(s -> Word.of(open.substring(s[0], s[1])).stream()
                        .allMatch(w ->
                                hits.stream().anyMatch(h -> h.from() <= w.from() + s[0] && w.to() + s[0] <= h.to())));
    }

    private static VehicleFact fact(String key, String value, Passage sentence, int from, int to) {
        Passage part = sentence.slice(from, to);
        return new VehicleFact(key, value, part.origin(), part.text());
    }

    private static final String ALONE = "alone ";
    private static final int NEAR = 30;

    private static Map<String, String> numbers() {
        Map<String, String> numbers = new LinkedHashMap<>();
        List.of(
                        Set.of("two", "zwei", "dos", "deux"),
                        Set.of("three", "drei", "tres", "trois"),
                        Set.of("four", "vier", "cuatro", "quatre"),
                        Set.of("five", "funf", "cinco", "cinq"))
                .forEach(words -> {
                    String number = Integer.toString(
                            2 + (int) numbers.values().stream().distinct().count());
                    words.stream().sorted().forEach(word -> numbers.put(word, number));
                });
        return numbers;
    }
}
