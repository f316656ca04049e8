package org.loomproof.pages.call;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.words.Phrase;

/**
 * What can be said on the telephone: yes, yes if, or no, and how long the bay is wanted. The proof says the last word; this only
 * keeps nobody waiting for a car that cannot be helped.
 *
 * @param kind the answer
 * @param reasons conditions and refusals, the gravest first
 * @param hoursLow the fewest hours in the bay
 * @param hoursHigh the most
 */
public record FirstAnswer(Kind kind, List<Phrase> reasons, double hoursLow, double hoursHigh) {

    /** In a word. */
    public enum Kind {
        YES,
        YES_IF,
        NO
    }

    /** A wish that nobody should fulfil: a stalled engine on the road kills. Common practice; the planner refuses them too. */
    private static final Set<Wish> NEVER = Set.of(Wish.ENGINE_STOP_WHILE_MOVING, Wish.IGNITION_OR_PUMP_CUT);

    /** From this age a battery is tested before anything is added to it. Common practice, no published source. */
    private static final int OLD_BATTERY_YEARS = 5;

    /** Longer than this and what the kit draws has to be reckoned with. Common practice, no published source. */
    private static final int LONG_UNUSED_DAYS = 14;

    /** Taking out what somebody else fitted. Common practice, no published source. */
    private static final Hours EARLIER_ALARM = new Hours(1.5, 4);

    /** A lock motor in each door that has none. Common practice, no published source. */
    private static final Hours ACTUATOR = new Hours(0.8, 1.5);

    private static final Map<Wish, Hours> BY_WISH = read();

    private record Hours(double low, double high) {}

    public FirstAnswer {
        reasons = List.copyOf(reasons);
    }

    /** The answer to a call. */
    public static FirstAnswer to(Call call) {
        List<Phrase> refused = new ArrayList<>();
        for (Wish wish : call.wishes().stream().sorted().toList()) {
            if (NEVER.contains(wish)) {
                refused.add(Phrase.of("pages.call.never", name(wish)));
            } else if (wish == Wish.REMOTE_START && call.manual()) {
                refused.add(Phrase.of("pages.call.remote-start-manual"));
            }
        }
        List<Phrase> conditions = conditions(call);
        Kind kind = refused.size() == call.wishes().size() && !refused.isEmpty()
                ? Kind.NO
                : refused.isEmpty() && conditions.isEmpty() ? Kind.YES : Kind.YES_IF;
        List<Phrase> reasons = new ArrayList<>(refused);
        reasons.addAll(conditions);
        return new FirstAnswer(kind, reasons, hours(call, true), hours(call, false));
    }

    private static List<Phrase> conditions(Call call) {
        List<Phrase> conditions = new ArrayList<>();
        if (call.earlierAlarm()) {
            conditions.add(Phrase.of("pages.call.earlier-alarm"));
        }
        if (call.batteryYears() >= OLD_BATTERY_YEARS) {
            conditions.add(Phrase.of("pages.call.old-battery", call.batteryYears()));
        }
        if (call.unusedDays() > LONG_UNUSED_DAYS) {
            conditions.add(Phrase.of("pages.call.long-unused", call.unusedDays()));
        }
        if (call.wishes().contains(Wish.LOCKS) && !call.locks()) {
            conditions.add(Phrase.of("pages.call.no-locks", call.doors()));
        }
        if (call.wishes().contains(Wish.STARTER_INTERRUPT) && call.button()) {
            conditions.add(Phrase.of("pages.call.start-button"));
        }
        return conditions;
    }

    private static double hours(Call call, boolean low) {
        double sum = pick(BY_WISH.getOrDefault(Wish.BASICS, new Hours(0, 0)), low);
        for (Wish wish : call.wishes()) {
            sum += pick(BY_WISH.getOrDefault(wish, new Hours(0, 0)), low);
        }
        if (call.earlierAlarm()) {
            sum += pick(EARLIER_ALARM, low);
        }
        if (call.wishes().contains(Wish.LOCKS) && !call.locks()) {
            sum += call.doors() * pick(ACTUATOR, low);
        }
        return sum;
    }

    private static double pick(Hours hours, boolean low) {
        return low ? hours.low() : hours.high();
    }

    private static Phrase name(Wish wish) {
        return Phrase.of("pages.wish." + wish.word());
    }

    private static Map<Wish, Hours> read() {
        try (InputStream in = FirstAnswer.class.getResourceAsStream("hours.csv")) {
            if (in == null) {
                throw new IllegalStateException("hours.csv is missing from the jar");
            }
            Map<String, Wish> words = Words.all(Wish.class);
            Map<Wish, Hours> hours = new EnumMap<>(Wish.class);
            for (String line : new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(l -> !l.startsWith("#"))
                    .skip(1)
                    .toList()) {
                String[] cells = line.split(",", -1);
                Wish wish = words.get(cells[0]);
                if (wish == null) {
                    throw new IllegalStateException("hours.csv speaks of " + cells[0]);
                }
                hours.put(wish, new Hours(Double.parseDouble(cells[1]), Double.parseDouble(cells[2])));
            }
            return hours;
        } catch (IOException e) {
            throw new UncheckedIOException("hours.csv cannot be read", e);
        }
    }
}
