package org.loomproof.workshop.meter.comeback;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Wired;

/** All that may be behind a comeback of one finished car, and how it is told apart. Not for sharing between threads. */
public final class Comeback {

    private static final Table RATES = Table.read(Comeback.class, "mishap-rates.csv");

    /** More than this beside what the plan draws at rest empties a battery in a fortnight or two. Common practice. */
    private static final double DRAIN_AMPS = 0.05;

    /** The feed of a controller that loses so much leaves its receiver short of breath. Common practice. */
    private static final double POOR_FEED_VOLTS = 1.5;

    /** So many pairs of suspects are solved, the likeliest; the bound is told. */
    public static final int MOST_PAIRS = 40;

    /** How much less common two mishaps at once are than one, beyond their own weights. */
    private static final double PAIR_SHARE = 0.1;

    private final Brief brief;
    private final Plan plan;
    private final Wired fitted;
    private final Looks looks;
    private final FinishedCar sound;
    private final List<Hypothesis> singles = new ArrayList<>();
    private final Map<List<Integer>, Optional<Hypothesis>> pairs = new HashMap<>();

    /** A cause, or two, with the car that it makes. */
    private record Hypothesis(List<Cause> causes, Set<Symptom> symptoms, double weight, FinishedCar car) {

        Mishap firstMishap() {
            return causes.getFirst().mishaps().getFirst();
        }

        /** This or the other, which nothing tells apart. */
        Hypothesis or(Hypothesis other) {
            Cause cause = causes.getFirst().or(other.causes.getFirst());
            return new Hypothesis(List.of(cause), symptoms, cause.weight(), car);
        }
    }

    private Comeback(Brief given, Plan plan, Map<Mishap, Set<Symptom>> complaints) {
        this.brief = given.set(plan.settings());
        this.plan = plan;
        this.looks = new Looks(brief, plan);
        Vehicle whole = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        this.fitted = whole.wired();
        this.sound = new FinishedCar(whole);
        Cause elsewhere = new Cause(List.of(), EnumSet.noneOf(Symptom.class), rate("elsewhere"));
        singles.add(new Hypothesis(List.of(elsewhere), elsewhere.symptoms(), elsewhere.weight(), sound));
        Map<Damage, List<Mishap>> alike = new LinkedHashMap<>();
        complaints
                .keySet()
                .forEach(mishap -> alike.computeIfAbsent(Damage.of(mishap, plan, fitted), d -> new ArrayList<>())
                        .add(mishap));
        alike.forEach((damage, mishaps) -> add(damage, mishaps, complaints));
        mergeLookAlikes();
    }

    /** Causes that differ at no look and in nothing an owner could tell are one: a person looks at each of them. */
    private void mergeLookAlikes() {
        List<Look> all = looks.list();
        for (int k = 1; k < singles.size(); k++) {
            for (int other = singles.size() - 1; other > k; other--) {
                if (singles.get(k).symptoms().equals(singles.get(other).symptoms())
                        && FinishedCar.showAlike(
                                singles.get(k).car(), singles.get(other).car(), all)) {
                    singles.set(k, singles.get(k).or(singles.remove(other)));
                }
            }
        }
    }

    /**
     * The causes of a plan.
     *
     * @param given with a complete sheet
     * @param faults what every fault and slip of that plan comes to
     */
    public static Comeback of(Brief given, Plan plan, FaultProof faults) {
        return of(given, plan, complaints(given, plan, faults));
    }

    /**
     * The causes of a plan whose faults were tried before.
     *
     * @param given with a complete sheet
     * @param complaints as {@link #complaints} gave them for that plan, in the same order
     */
    public static Comeback of(Brief given, Plan plan, Map<Mishap, Set<Symptom>> complaints) {
        return new Comeback(given, plan, complaints);
    }

    /** What an owner would complain of, by the claims that each fault and slip breaks; the worst first. */
    public static Map<Mishap, Set<Symptom>> complaints(Brief given, Plan plan, FaultProof faults) {
        Symptoms symptoms = new Symptoms(given.set(plan.settings()));
        Map<Mishap, Set<Symptom>> complaints = new LinkedHashMap<>();
        faults.results().forEach(result -> complaints.put(result.mishap(), symptoms.of(result)));
        return complaints;
    }

    private void add(Damage damage, List<Mishap> mishaps, Map<Mishap, Set<Symptom>> complaints) {
        FinishedCar car = new FinishedCar(damage.vehicle(brief));
        Set<Symptom> shown = EnumSet.noneOf(Symptom.class);
        mishaps.forEach(mishap -> shown.addAll(complaints.getOrDefault(mishap, Set.of())));
        shown.addAll(ofTheFeed(car));
        if (shown.isEmpty()) {
            return; // Nobody complains of what does nothing; where all measures sound, it is elsewhere.
        }
        double weight = mishaps.stream().mapToDouble(m -> rate(m.kind())).sum();
        singles.add(new Hypothesis(List.of(new Cause(mishaps, shown, weight)), shown, weight, car));
    }

    /** What no claim speaks of: a battery that goes flat, a controller that does not live or hardly does. */
    private Set<Symptom> ofTheFeed(FinishedCar car) {
        Set<Symptom> shown = EnumSet.noneOf(Symptom.class);
        for (ControllerState state : List.of(ControllerState.ARMED, ControllerState.DISARMED)) {
            Situation standing =
                    new Situation(new TreeMap<>(), SupplyPoint.REST, state, ControllerFeed.WHOLE, Moment.SETTLED);
            double drain = car.batteryAmps(standing).orElse(0.0)
                    - sound.batteryAmps(standing).orElse(0.0);
            if (drain > DRAIN_AMPS) {
                shown.add(Symptom.FLAT_BATTERY);
            }
            double feed = car.controllerVolts(standing).orElse(0.0);
            if (feed < car.leastSupplyVolts()) {
                shown.add(Symptom.SYSTEM_DEAD);
            } else if (feed < sound.controllerVolts(standing).orElse(0.0) - POOR_FEED_VOLTS) {
                shown.add(Symptom.SHORT_RANGE);
            }
        }
        return shown;
    }

    private static double rate(String kind) {
        return RATES.findRow("kind", kind)
                .map((Row row) -> row.number("weight"))
                .orElseThrow(() -> new IllegalStateException("mishap-rates.csv has no " + kind));
    }

    /** Every cause there is, what is not of the plan first. */
    public List<Cause> causes() {
        return singles.stream().map(h -> h.causes().getFirst()).toList();
    }

    /** The words for the steps of these measurements, as a file of readings has them. */
    public LookWords words() {
        return new LookWords(brief.sheet(), looks());
    }

    /** Every measurement that may be asked for. */
    public List<Look> looks() {
        return looks.list();
    }

    /**
     * How it stands.
     *
     * @param said what the owner complains of
     * @param nowAndThen whether the trouble comes and goes
     * @param taken what was measured, in any order
     */
    public Finding find(Set<Symptom> said, boolean nowAndThen, List<Taken> taken) {
        return find(said, nowAndThen, taken, Set.of());
    }

    /**
     * How it stands.
     *
     * @param said what the owner complains of
     * @param nowAndThen whether the trouble comes and goes
     * @param taken what was measured, in any order
     * @param passed what cannot be measured at this car: it is not asked for again
     */
    public Finding find(Set<Symptom> said, boolean nowAndThen, List<Taken> taken, Set<Look> passed) {
        Evidence evidence = new Evidence(nowAndThen);
        List<double[]> readings =
                singles.stream().map(h -> ofTaken(h, evidence, taken)).toList();
        List<Hypothesis> all = new ArrayList<>(singles);
        List<Double> weights = new ArrayList<>();
        for (int k = 0; k < singles.size(); k++) {
            Hypothesis single = singles.get(k);
            weights.add(single.weight() * ofSaid(single, evidence, said) * product(readings.get(k)));
        }
        for (Hypothesis pair : pairs(evidence, said, readings)) {
            all.add(pair);
            weights.add(pair.weight() * ofSaid(pair, evidence, said) * product(ofTaken(pair, evidence, taken)));
        }
        double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
        List<Weighed> ranked = IntStream.range(0, all.size())
                .mapToObj(k -> new Weighed(all.get(k).causes(), all.get(k).car(), weights.get(k) / sum))
                .sorted(Comparator.comparingDouble(Weighed::probability).reversed())
                .toList();
        return new Choice(looks, ranked, said, taken, passed).finding();
    }

    /** What a sound car shows at what was measured, in the same order. */
    public List<Shows> sound(List<Taken> taken) {
        return sound.shows(taken);
    }

    private static double ofSaid(Hypothesis hypothesis, Evidence evidence, Set<Symptom> said) {
        return hypothesis.causes().getFirst().isElsewhere()
                ? evidence.ofSaidElsewhere(said)
                : evidence.ofSaid(said, hypothesis.symptoms());
    }

    /** How likely each reading is in the car of a hypothesis. */
    private double[] ofTaken(Hypothesis hypothesis, Evidence evidence, List<Taken> taken) {
        return taken.stream()
                .mapToDouble(each -> evidence.ofTaken(
                        each,
                        hypothesis.car().shows(each.look(), each.batteryVolts()),
                        sound.shows(each.look(), each.batteryVolts())))
                .toArray();
    }

    private static double product(double[] factors) {
        return Arrays.stream(factors).reduce(1, (a, b) -> a * b);
    }

    private record Promise(List<Integer> two, double weight) {}

    /**
     * Two at once, of all pairs those that promise most. A pair promises by what its members show alone: at each reading it is
     * taken for the member that shows it better, as most readings see one of two troubles and not the other. Only then is the
     * car with both solved.
     */
    private List<Hypothesis> pairs(Evidence evidence, Set<Symptom> said, List<double[]> readings) {
        List<Promise> promises = new ArrayList<>();
        for (int a = 1; a < singles.size(); a++) {
            for (int b = a + 1; b < singles.size(); b++) {
                double weight = singles.get(a).weight() * singles.get(b).weight();
                weight *= evidence.ofSaid(said, ofBoth(singles.get(a), singles.get(b)));
                for (int k = 0; k < readings.get(a).length; k++) {
                    weight *= Math.max(readings.get(a)[k], readings.get(b)[k]);
                }
                promises.add(new Promise(List.of(a, b), weight));
            }
        }
        return promises.stream()
                .sorted(Comparator.comparingDouble(Promise::weight).reversed())
                .limit(MOST_PAIRS)
                .flatMap(promise -> pairs.computeIfAbsent(promise.two(), this::together).stream())
                .toList();
    }

    private static Set<Symptom> ofBoth(Hypothesis a, Hypothesis b) {
        Set<Symptom> shown = EnumSet.copyOf(a.symptoms());
        shown.addAll(b.symptoms());
        return shown;
    }

    /** Both at once; empty where they cannot be. */
    private Optional<Hypothesis> together(List<Integer> two) {
        Hypothesis a = singles.get(two.getFirst());
        Hypothesis b = singles.get(two.getLast());
        return Damage.both(a.firstMishap(), b.firstMishap(), brief, plan, fitted)
                .map(damage -> together(a, b, damage));
    }

    private Hypothesis together(Hypothesis a, Hypothesis b, Damage damage) {
        double total = singles.stream().mapToDouble(Hypothesis::weight).sum();
        return new Hypothesis(
                List.of(a.causes().getFirst(), b.causes().getFirst()),
                ofBoth(a, b),
                PAIR_SHARE * a.weight() * b.weight() / total,
                new FinishedCar(damage.vehicle(brief)));
    }
}
