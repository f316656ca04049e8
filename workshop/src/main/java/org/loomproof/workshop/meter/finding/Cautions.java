package org.loomproof.workshop.meter.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.meter.advice.Harm;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Likelihood;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.words.Phrase;

/**
 * What to heed at a wire.
 *
 * @param forbidden why it is left alone, the meter included; empty where it is not
 * @param others what else to heed
 */
record Cautions(List<Phrase> forbidden, List<Phrase> others) {

    private static final Pattern RESTRAINT_WORDS =
            Pattern.compile("\\b(air ?bags?|srs|restraints?|squibs?|pre-?tensioners?|yellow sleeve)\\b");
    private static final Pattern HIGH_VOLTAGE_WORDS =
            Pattern.compile("\\b(high[ -]voltage|hv|orange (?:cable|sleeve|conduit))\\b");

    Cautions {
        forbidden = List.copyOf(forbidden);
        others = List.copyOf(others);
    }

    /**
     * For one wire.
     *
     * @param entry the circuit of the sheet that bears the wire's name
     */
    static Cautions of(List<Reading> readings, Optional<Circuit> entry, Belief belief) {
        return new Cautions(forbidden(readings, entry, belief), others(readings, belief));
    }

    boolean forbid() {
        return !forbidden.isEmpty();
    }

    List<Phrase> all() {
        List<Phrase> all = new ArrayList<>(forbidden);
        all.addAll(others);
        return all;
    }

    private static List<Phrase> forbidden(List<Reading> readings, Optional<Circuit> entry, Belief belief) {
        List<Phrase> forbidden = new ArrayList<>();
        boolean entryForbids = entry.map(Circuit::role)
                .filter(role -> role == CircuitRole.RESTRAINT || role == CircuitRole.HIGH_VOLTAGE)
                .isPresent();
        if (entryForbids || readings.stream().anyMatch(Cautions::speaksOfHarm)) {
            forbidden.add(Phrase.of("meter.caution.leave"));
        } else if (belief.chance(WireRole.RESTRAINT) >= Harm.LEFT_ALONE) {
            forbidden.add(Phrase.of("meter.caution.leave-restraint", belief.chance(WireRole.RESTRAINT)));
        }
        if (entry.map(Circuit::access).filter(Access.NOT_TO_BE_TOUCHED::equals).isPresent()) {
            forbidden.add(Phrase.of("meter.caution.leave-sheet"));
        }
        return forbidden;
    }

    private static boolean speaksOfHarm(Reading reading) {
        String words = String.join(" ", reading.wire(), reading.place(), reading.note(), reading.colour())
                .toLowerCase(Locale.ROOT);
        return RESTRAINT_WORDS.matcher(words).find()
                || HIGH_VOLTAGE_WORDS.matcher(words).find();
    }

    private static List<Phrase> others(List<Reading> readings, Belief belief) {
        List<Phrase> others = new ArrayList<>();
        if (belief.chance(WireRole.DATA) >= Harm.LEFT_ALONE) {
            others.add(Phrase.of("meter.caution.data", belief.chance(WireRole.DATA)));
        }
        if (readings.stream().anyMatch(Likelihood::isTooSlow)) {
            others.add(Phrase.of("meter.caution.slow"));
        }
        if (readings.stream().anyMatch(r -> r.batteryVolts().isEmpty() && r.measured() == Measured.VOLTS)) {
            others.add(Phrase.of("meter.caution.no-battery"));
        }
        return others;
    }
}
