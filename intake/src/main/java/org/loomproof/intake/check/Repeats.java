package org.loomproof.intake.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Spot;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.words.Phrase;

/** Entries that speak of one circuit: the same said twice, or two things that cannot both be true. */
final class Repeats {

    /** Roles of which a car has one wire to be found; of others, two entries may well be two circuits. */
    private static final Set<CircuitRole> SINGLE = EnumSet.of(
            CircuitRole.IGNITION,
            CircuitRole.STARTER,
            CircuitRole.SECOND_STARTER,
            CircuitRole.HOOD_TRIGGER,
            CircuitRole.TRUNK_TRIGGER,
            CircuitRole.TRUNK_RELEASE,
            CircuitRole.HORN,
            CircuitRole.LOCK,
            CircuitRole.BRAKE,
            CircuitRole.TACHOMETER,
            CircuitRole.FUEL_PUMP);

    private Repeats() {}

    static List<Finding> of(List<Entry> entries) {
        List<Finding> findings = new ArrayList<>();
        grouped(entries, Repeats::circuit)
                .values()
                .forEach(group -> circuit(group, entries).ifPresent(findings::add));
        grouped(entries, Repeats::cavity)
                .values()
                .forEach(group -> cavity(group, entries).ifPresent(findings::add));
        return findings;
    }

    private static Map<String, List<Integer>> grouped(List<Entry> entries, Function<Entry, Optional<String>> key) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            int at = i;
            key.apply(entries.get(i))
                    .ifPresent(k ->
                            groups.computeIfAbsent(k, x -> new ArrayList<>()).add(at));
        }
        groups.values().removeIf(group -> group.size() < 2);
        return groups;
    }

    /** What two entries for the same circuit share. A variant for other vehicles is another circuit. */
    private static Optional<String> circuit(Entry entry) {
        return entry.role().map(a -> a.value().role()).map(role -> {
            String name =
                    SINGLE.contains(role) ? "" : Passage.fold(entry.name()).replaceAll("[^a-z0-9+-]", "");
            return role + "/" + name + "/" + variant(entry);
        });
    }

    private static Optional<Finding> circuit(List<Integer> group, List<Entry> entries) {
        Entry first = entries.get(group.getFirst());
        CircuitRole role = first.role().orElseThrow().value().role();
        Phrase term = Phrase.of("intake.role", role.word());
        List<String> colours = said(group, entries, Repeats::colour);
        List<String> ways = said(group, entries, Repeats::way);
        if (colours.size() > 1 || ways.size() > 1) {
            List<String> differing = colours.size() > 1 ? colours : ways;
            return Optional.of(new Finding(
                    Finding.Kind.CONFLICT,
                    group,
                    Phrase.of("intake.finding.conflict", term, differing),
                    MeterQuestion.of(role)));
        }
        boolean onePlace = said(group, entries, Repeats::place).size() < 2;
        return onePlace
                ? Optional.of(new Finding(
                        Finding.Kind.SAID_TWICE,
                        group,
                        Phrase.of("intake.finding.said-twice", term),
                        Phrase.of("intake.ask.nothing")))
                : Optional.empty();
    }

    private static Optional<String> cavity(Entry entry) {
        return entry.spot()
                .map(Answer::value)
                .filter(s -> !s.connector().isEmpty() && !s.cavity().isEmpty())
                .map(s ->
                        plain(s.panel()) + "/" + plain(s.connector()) + "/" + plain(s.cavity()) + "/" + variant(entry));
    }

    /** Which vehicles the entry holds for: entries for others are other circuits. */
    private static String variant(Entry entry) {
        return entry.steering() + "/" + Passage.fold(entry.validity());
    }

    private static Optional<Finding> cavity(List<Integer> group, List<Entry> entries) {
        List<String> roles =
                said(group, entries, e -> e.role().map(a -> a.value().role().word()));
        Spot spot = entries.get(group.getFirst()).spot().orElseThrow().value();
        return roles.size() < 2
                ? Optional.empty()
                : Optional.of(new Finding(
                        Finding.Kind.CONFLICT,
                        group,
                        Phrase.of("intake.finding.one-cavity", spot.connector(), spot.cavity(), roles),
                        Phrase.of("intake.ask.one-cavity")));
    }

    private static Optional<String> colour(Entry entry) {
        return entry.colour().map(a -> a.value().letters());
    }

    private static Optional<String> way(Entry entry) {
        return entry.behaviour().map(a -> Words.of(a.value().kind()));
    }

    private static Optional<String> place(Entry entry) {
        return entry.spot()
                .map(a -> plain(
                        a.value().panel() + a.value().connector() + a.value().cavity()));
    }

    private static String plain(String text) {
        return Passage.fold(text).replaceAll("[^a-z0-9]", "");
    }

    private static List<String> said(
            List<Integer> group, List<Entry> entries, Function<Entry, Optional<String>> field) {
        return group.stream()
                .map(i -> field.apply(entries.get(i)))
                .flatMap(Optional::stream)
                .distinct()
                .collect(Collectors.toList());
    }
}
