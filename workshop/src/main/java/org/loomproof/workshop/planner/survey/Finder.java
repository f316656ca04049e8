package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.words.Phrase;

/**
 * Looks for the circuit that serves a role. It answers with the circuit, with the measurement that must come first, or with
 * the reason why it must not be joined. It never chooses by colour, and the order of the sheet does not matter.
 */
public final class Finder {

    private static final Comparator<Circuit> BY_NAME = Comparator.comparing(Circuit::id);

    /**
     * A wire that passes more than this into the body is fed by nothing but fuses, wires and closed contacts; a load in its
     * feed, such as a lamp, passes less.
     */
    private static final double FED_AMPS = 20;

    private final Sheet sheet;
    private final WireDraw draw;
    private final ForbiddenLooms looms;

    /** Looks on that sheet. */
    public Finder(Sheet sheet, WireDraw draw) {
        this.sheet = sheet;
        this.draw = draw;
        this.looms = new ForbiddenLooms(sheet);
    }

    /** All circuits of a role, by name. */
    public List<Circuit> list(CircuitRole role) {
        return sheet.listCircuits(role).stream().sorted(BY_NAME).toList();
    }

    /** The one circuit of the role; several that are equally sure are a question. */
    public Found one(CircuitRole role, Joint joint) {
        return only(role, every(role, joint));
    }

    private static Found only(CircuitRole role, Found found) {
        return found instanceof Found.Usable usable && usable.circuits().size() > 1
                ? new Found.Waiting(
                        Measurements.whichOf(role, names(usable.circuits())),
                        Phrase.of("hold.ambiguous", names(usable.circuits()), Terms.role(role)))
                : found;
    }

    /**
     * The feed that the key gives both in ON and in START. Where the sheet has no entry that is called so, a second ignition
     * whose switches stay closed while the starter turns is one as well.
     */
    public Found ignition(Joint joint) {
        List<Circuit> second = list(CircuitRole.SECOND_IGNITION).stream()
                .filter(KeyFeed::holdsWhileCranking)
                .toList();
        return !list(CircuitRole.IGNITION).isEmpty() || second.isEmpty()
                ? one(CircuitRole.IGNITION, joint)
                : only(CircuitRole.SECOND_IGNITION, amongst(CircuitRole.SECOND_IGNITION, second, joint));
    }

    /** All circuits that serve the role together, surest entries only. */
    public Found every(CircuitRole role, Joint joint) {
        List<Circuit> all = list(role);
        return all.isEmpty()
                ? new Found.Waiting(Measurements.find(role), Phrase.of("hold.missing", Terms.role(role)))
                : amongst(role, all, joint);
    }

    /** That one circuit, by all that the sheet says of its place in its role: another entry of it may be a second piece of evidence. */
    public Found alike(Circuit circuit, Joint joint) {
        return amongst(
                circuit.role(),
                list(circuit.role()).stream()
                        .filter(other -> other.equals(circuit) || isSamePlace(other, circuit))
                        .toList(),
                joint);
    }

    /** The constant supply with the largest factory fuse: it has the most to spare. */
    public Found constantSupply() {
        return switch (every(CircuitRole.CONSTANT_SUPPLY, Joint.POWER_TAP)) {
            case Found.Usable(var circuits, var passedOver) -> {
                Comparator<Circuit> byFuse = Comparator.comparingDouble(Finder::fuseAmps);
                List<Circuit> best = circuits.stream()
                        .sorted(byFuse.reversed().thenComparing(BY_NAME))
                        .toList();
                List<Phrase> reasons = new ArrayList<>(passedOver);
                best.stream()
                        .skip(1)
                        .map(c -> Phrase.of(
                                "lost.smaller-fuse", c.id(), best.getFirst().id()))
                        .forEach(reasons::add);
                yield new Found.Usable(List.of(best.getFirst()), reasons);
            }
            case Found found -> found;
        };
    }

    /** The factory fuse in front of a circuit's wire, when its path names one; the largest is meant when there are several. */
    public static Optional<Double> findFuseAmps(Circuit circuit) {
        return fuses(circuit).map(rating -> rating.typical().value()).max(Comparator.naturalOrder());
    }

    /** The smallest that a fuse on a circuit's paths may be: what its own wire is sure to bear. */
    public static Optional<Double> findLeastFuseAmps(Circuit circuit) {
        return fuses(circuit).map(rating -> rating.low().value()).min(Comparator.naturalOrder());
    }

    /** True where a short of the circuit's wire may be drawn through several fuses at once, which no thin lead bears. */
    public static boolean isFedByMany(Circuit circuit) {
        return fuses(circuit).count() > 1
                && circuit.switching().active() instanceof Level.Supply
                && circuit.switching().rest() instanceof Level.Ground;
    }

    private static Stream<Figure<Amps>> fuses(Circuit circuit) {
        return circuit.paths().stream()
                .flatMap(List::stream)
                .filter(PathStep.Fuse.class::isInstance)
                .map(step -> ((PathStep.Fuse) step).rating());
    }

    private static double fuseAmps(Circuit circuit) {
        return findFuseAmps(circuit).orElse(0.0);
    }

    /** What a supply can still give for long: its fuse's continuous share, less what the car draws behind it at rest. */
    public Optional<Amps> reserve(Circuit supply) {
        return findFuseAmps(supply)
                .map(fuse -> new Amps(
                        Fuses.continuousShare() * fuse - draw.fromSupply(supply).value()));
    }

    private boolean isWithoutReserve(Circuit circuit) {
        return circuit.role() == CircuitRole.CONSTANT_SUPPLY
                && reserve(circuit).filter(left -> left.value() <= 0).isPresent();
    }

    /** True when a constant supply is fed by way of a switch or a relay's contact: what is switched is not constant. */
    private static boolean isSwitched(Circuit circuit) {
        return circuit.role() == CircuitRole.CONSTANT_SUPPLY
                && KeyFeed.listFeeds(circuit).stream()
                        .flatMap(List::stream)
                        .anyMatch(step -> step instanceof PathStep.Switch || step instanceof PathStep.Contact);
    }

    /** Judges candidates of one role: what is barred, what must be measured, and which of the rest are surest. */
    public Found amongst(CircuitRole role, List<Circuit> all, Joint joint) {
        List<Circuit> left = new ArrayList<>(all);
        List<Phrase> passedOver = new ArrayList<>();
        Optional<Found> barred = barred(left);
        if (barred.isPresent()) {
            return barred.get();
        }
        left.removeIf(c -> drop(c, isBarred(c), "lost.barred", passedOver));
        if (left.stream().allMatch(Finder::isSwitched)) {
            return new Found.Waiting(
                    Measurements.find(role),
                    Phrase.of("hold.switched-supply", left.getFirst().id()));
        }
        left.removeIf(c -> drop(c, isSwitched(c), "lost.switched-supply", passedOver));
        if (left.stream().allMatch(this::isWithoutReserve)) {
            return new Found.Waiting(
                    Measurements.currentOf(left.getFirst()),
                    Phrase.of("hold.no-reserve", left.getFirst().id(), new Amps(fuseAmps(left.getFirst()))));
        }
        left.removeIf(c -> drop(c, isWithoutReserve(c), "lost.no-reserve", passedOver));
        Optional<Circuit> doubtful =
                left.stream().filter(c -> contradicts(c, left)).findFirst();
        if (doubtful.isPresent()) {
            return new Found.Waiting(
                    Measurements.levelsOf(doubtful.get()),
                    Phrase.of("hold.contradictory", doubtful.get().id()));
        }
        if (joint == Joint.CUT && left.stream().allMatch(c -> c.access() == Access.MAY_BE_TAPPED)) {
            return new Found.Waiting(
                    Measurements.accessTo(left.getFirst()),
                    Phrase.of("hold.may-not-be-cut", left.getFirst().id()));
        }
        left.removeIf(c ->
                drop(c, joint == Joint.CUT && c.access() == Access.MAY_BE_TAPPED, "lost.may-not-be-cut", passedOver));
        return surest(role, left, joint, passedOver);
    }

    private Found surest(CircuitRole role, List<Circuit> left, Joint joint, List<Phrase> passedOver) {
        Certainty best = left.stream()
                .map(c -> c.basis().certainty())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Circuit first = left.stream()
                .filter(c -> c.basis().certainty() == best)
                .findFirst()
                .orElseThrow();
        if (joint.needsMoreThanAGuess() && best.compareTo(Certainty.STATED) > 0) {
            return new Found.Waiting(
                    Measurements.levelsOf(first),
                    Phrase.of("hold.guessed", first.id(), Terms.role(role), Terms.certainty(best)));
        }
        if (joint == Joint.CUT && Evidence.count(first, left) < Evidence.FOR_A_CUT) {
            return new Found.Waiting(
                    Measurements.levelsOf(first), Phrase.of("hold.one-piece-of-evidence", first.id(), first.origin()));
        }
        left.removeIf(c -> drop(c, c.basis().certainty().compareTo(best) > 0, "lost.less-sure", passedOver));
        left.removeIf(c -> drop(c, Evidence.confirms(c, first), "lost.says-the-same", passedOver));
        Optional<Circuit> unknown =
                left.stream().filter(c -> c.paths().isEmpty()).findFirst();
        if (unknown.isPresent()) {
            return new Found.Waiting(
                    Measurements.pathOf(unknown.get()),
                    Phrase.of("hold.no-path", unknown.get().id()));
        }
        return new Found.Usable(left, passedOver);
    }

    private Optional<Found> barred(List<Circuit> circuits) {
        if (circuits.stream().allMatch(c -> Family.of(c.switching()) == Family.DATA)) {
            return Optional.of(new Found.Forbidden(
                    Phrase.of("refuse.data-only", circuits.getFirst().id()), Phrase.of("possible.data-only")));
        }
        Optional<String> loom = looms.find(circuits.getFirst());
        if (loom.isPresent() && circuits.stream().allMatch(c -> looms.find(c).isPresent())) {
            return Optional.of(new Found.Forbidden(
                    Phrase.of("refuse." + loom.get(), circuits.getFirst().id()), Phrase.of("possible." + loom.get())));
        }
        if (circuits.stream().allMatch(this::isBarred)) {
            return Optional.of(new Found.Waiting(
                    Measurements.accessTo(circuits.getFirst()),
                    Phrase.of("hold.not-to-be-touched", circuits.getFirst().id())));
        }
        return Optional.empty();
    }

    private boolean isBarred(Circuit circuit) {
        return circuit.access() == Access.NOT_TO_BE_TOUCHED
                || Family.of(circuit.switching()) == Family.DATA
                || looms.find(circuit).isPresent();
    }

    /** True when an entry contradicts itself, or says of one place what another entry of the role says otherwise. */
    private boolean contradicts(Circuit circuit, List<Circuit> others) {
        return !switchesAsItsRole(circuit)
                || !isFedAsItsRole(circuit)
                || others.stream()
                        .anyMatch(o -> !o.id().equals(circuit.id())
                                && o.basis().certainty() == circuit.basis().certainty()
                                && isSamePlace(o, circuit)
                                && !o.switching().isLike(circuit.switching()));
    }

    /** A constant supply is fed whatever the key does; what the key feeds is not fed at rest. */
    private boolean isFedAsItsRole(Circuit circuit) {
        boolean fed = draw.intoBody(circuit).value() > FED_AMPS;
        return circuit.paths().isEmpty()
                || switch (circuit.role().kind()) {
                    case FEED -> fed;
                    case KEY_FEED, START_WIRE -> !fed;
                    case PLAIN -> true;
                };
    }

    /** A supply is always at supply, an ignition goes to supply; anything else rests and acts at different levels. */
    private static boolean switchesAsItsRole(Circuit circuit) {
        Level always = new Level.Supply();
        return switch (circuit.role().kind()) {
            case FEED ->
                circuit.switching().rest().equals(always)
                        && circuit.switching().active().equals(always);
            case KEY_FEED -> Family.of(circuit.switching()) == Family.POSITIVE;
            case START_WIRE, PLAIN -> Family.of(circuit.switching()) != Family.CONTRADICTORY;
        };
    }

    static boolean isSamePlace(Circuit one, Circuit other) {
        return !one.where().connector().isBlank()
                && !one.where().cavity().isBlank()
                && one.where().connector().equals(other.where().connector())
                && one.where().cavity().equals(other.where().cavity());
    }

    private static boolean drop(Circuit circuit, boolean dropped, String key, List<Phrase> passedOver) {
        if (dropped) {
            passedOver.add(Phrase.of(key, circuit.id()));
        }
        return dropped;
    }

    private static List<String> names(List<Circuit> circuits) {
        return circuits.stream().map(c -> c.id().toString()).toList();
    }
}
