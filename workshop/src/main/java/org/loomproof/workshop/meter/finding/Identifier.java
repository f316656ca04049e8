package org.loomproof.workshop.meter.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.advice.Advisor;
import org.loomproof.workshop.meter.advice.Advisor.Standing;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.advice.Foresight;
import org.loomproof.workshop.meter.advice.Harm;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Fleet;
import org.loomproof.workshop.meter.evidence.OnlyOneStarter;
import org.loomproof.workshop.meter.evidence.Priors;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.role.WireModels;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.words.Phrase;

/** Says of every wire in a file of readings what it is. Works without a sheet, better with one. Not for sharing between threads. */
public final class Identifier {

    /** Below this a stepped wire is no longer worth a guided step. */
    private static final double MAY_BE_STEPS = 0.2;

    /** Below this a rival is not worth a test of its own. */
    private static final double WORTH_SPLITTING = 0.02;

    /** Nothing on a voltmeter, its last digits and a little leakage left aside. Common practice, no published source. */
    private static final double ZERO_VOLTS = 0.1;

    /** What shows nothing in every position of the key. Common practice, no published source. */
    private static final Set<WireRole> ZERO = EnumSet.of(WireRole.GROUND, WireRole.DEAD, WireRole.LOCK_MOTOR_LEG);

    private static final Standing FORBIDDEN = new Standing(false, List.of(Phrase.of("meter.forbidden")));

    private final Optional<Sheet> sheet;
    private final Fleet fleet;
    private final Foresight foresight;
    private final Advisor advisor;

    /**
     * @param sheet what is known of the vehicle, if anything
     * @param costs of errors
     */
    public Identifier(Optional<Sheet> sheet, Costs costs) {
        this.sheet = sheet;
        this.fleet = new Fleet(WireModels.usual());
        this.foresight = new Foresight(fleet);
        this.advisor = new Advisor(foresight, costs);
    }

    private record Wire(String name, List<Reading> readings, Optional<Entry> entry, Belief prior, Belief belief) {}

    /** Every wire of the file, in its order. At most one of them is the starter wire. */
    public List<WireFinding> identify(Readings readings) {
        List<Wire> wires = new ArrayList<>();
        readings.byWire().forEach((name, taken) -> wires.add(wire(name, taken)));
        List<Double> starters = OnlyOneStarter.together(
                wires.stream().map(w -> w.belief().chance(WireRole.STARTER)).toList());
        List<WireFinding> findings = new ArrayList<>();
        for (int k = 0; k < wires.size(); k++) {
            findings.add(finding(wires.get(k), starters.get(k)));
        }
        return findings;
    }

    private Wire wire(String name, List<Reading> readings) {
        Optional<Entry> entry = sheet.flatMap(s -> Entry.of(s, name, readings));
        Belief prior = sheet.map(s -> entry.map(e -> Priors.named(fleet, s, e.circuit(), e.trust()))
                        .orElseGet(() -> Priors.unnamed(fleet, s)))
                .orElseGet(() -> Priors.withoutSheet(fleet));
        return new Wire(name, readings, entry, prior, prior.afterReadings(readings));
    }

    private WireFinding finding(Wire wire, double starterTogether) {
        Belief belief = wire.belief().withChance(WireRole.STARTER, starterTogether);
        Cautions cautions = Cautions.of(wire.readings(), wire.entry().map(Entry::circuit), belief);
        boolean sheetSaysSo = wire.entry().filter(e -> e.saysSo(belief.best())).isPresent();
        Standing connect = cautions.forbid() ? FORBIDDEN : advisor.connect(belief, wire.readings());
        return new WireFinding(
                wire.name(),
                wire.entry().map(e -> e.circuit().id()),
                (int) wire.readings().stream().filter(Fleet::counts).count(),
                sorted(belief),
                Why.because(wire.prior(), wire.belief(), wire.readings()),
                Why.not(wire.prior(), belief, wire.readings()),
                connect,
                cautions.forbid() ? FORBIDDEN : advisor.cut(wire.prior(), belief, wire.readings(), sheetSaysSo),
                cautions.forbid() ? Optional.empty() : next(belief, wire.readings()),
                cautions.forbid() || connect.allowed() ? Optional.empty() : split(belief, wire.readings()),
                StepValues.of(wire.readings()),
                cautions.all());
    }

    /** For a wire that may tell buttons by resistance, the guided step with the resistor, as soon as it is safe. */
    private Optional<Foresight.Choice> next(Belief belief, List<Reading> readings) {
        boolean mayBeSteps = belief.chance(WireRole.LOCK_STEPS) >= MAY_BE_STEPS;
        boolean wasLoaded = readings.stream()
                .anyMatch(r -> r.isTaken() && r.step().resistorOhms().isPresent());
        Optional<Foresight.Choice> usual = advisor.next(belief, readings);
        if (mayBeSteps && !wasLoaded && usual.isEmpty() && Harm.isSafe(MeterTest.Kind.RESISTOR, belief)) {
            return Optional.of(new Foresight.Choice(MeterTest.LOADED, foresight.bits(MeterTest.LOADED, belief)));
        }
        return usual;
    }

    /** The test between what shows nothing, where nothing was shown; else between the two likeliest. */
    private Optional<WireFinding.Split> split(Belief belief, List<Reading> readings) {
        Set<WireRole> roles = isZero(readings) ? ZERO : likeliestTwo(belief);
        return roles.size() < 2
                ? Optional.empty()
                : advisor.splitting(belief, roles, readings).map(choice -> new WireFinding.Split(roles, choice.test()));
    }

    private static boolean isZero(List<Reading> readings) {
        List<Reading> taken = readings.stream().filter(Fleet::counts).toList();
        return !taken.isEmpty()
                && taken.stream()
                        .allMatch(r -> r.measured() == Measured.VOLTS
                                && r.shown() instanceof Shown.Steady(double volts, double digit)
                                && Math.abs(volts) <= ZERO_VOLTS);
    }

    private static Set<WireRole> likeliestTwo(Belief belief) {
        Set<WireRole> two = EnumSet.noneOf(WireRole.class);
        sorted(belief).entrySet().stream()
                .limit(2)
                .filter(e -> e.getKey() != WireRole.NONE_OF_THESE && e.getValue() >= WORTH_SPLITTING)
                .forEach(e -> two.add(e.getKey()));
        return two;
    }

    private static Map<WireRole, Double> sorted(Belief belief) {
        Map<WireRole, Double> sorted = new LinkedHashMap<>();
        belief.chances().entrySet().stream()
                .sorted(Map.Entry.<WireRole, Double>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(e -> sorted.put(e.getKey(), e.getValue()));
        return sorted;
    }
}
