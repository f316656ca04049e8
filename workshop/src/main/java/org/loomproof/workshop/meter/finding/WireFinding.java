package org.loomproof.workshop.meter.finding;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.meter.advice.Advisor.Standing;
import org.loomproof.workshop.meter.advice.Foresight;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.words.Phrase;

/**
 * What the readings of one wire say.
 *
 * @param wire its name in the file
 * @param entry the circuit of the sheet it was taken for, if any
 * @param readings how many readings counted
 * @param chances the probability of each role, likeliest first
 * @param because the readings that decided
 * @param not what it proved not to be
 * @param connect whether a lead may be joined to it
 * @param cut whether it may be cut
 * @param next what to measure next
 * @param split what to measure to tell the likeliest roles apart, while that is needed
 * @param steps pull-up and buttons, where they could be computed
 * @param cautions what to heed at this wire
 */
public record WireFinding(
        String wire,
        Optional<CircuitId> entry,
        int readings,
        Map<WireRole, Double> chances,
        List<Phrase> because,
        List<RuledOut> not,
        Standing connect,
        Standing cut,
        Optional<Foresight.Choice> next,
        Optional<Split> split,
        Optional<StepValues> steps,
        List<Phrase> cautions) {

    /** A role that is ruled out, and by what. */
    public record RuledOut(WireRole role, Phrase by) {}

    /**
     * A test between some roles.
     *
     * @param roles what it may be
     * @param test what tells them apart best
     */
    public record Split(Set<WireRole> roles, MeterTest test) {

        public Split {
            roles = Collections.unmodifiableSet(EnumSet.copyOf(roles));
        }
    }

    public WireFinding {
        chances = Collections.unmodifiableMap(new LinkedHashMap<>(chances));
        because = List.copyOf(because);
        not = List.copyOf(not);
        cautions = List.copyOf(cautions);
    }

    /** The likeliest role. */
    public WireRole best() {
        return chances.keySet().iterator().next();
    }
}
