package org.loomproof.workshop.prover.product;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.product.Grid.Moved;
import org.loomproof.workshop.prover.product.Sightings.Table;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;

/**
 * Vehicle and controller as one machine. A state is a number: the combination of positions, the supply point, the state of the
 * controller and how each fading light stands, in mixed radix. Cranking volts come with the key at start and go with it.
 */
final class Product {

    private static final int DARK = 0;
    private static final int FADING = 1;
    /** Fading since before arming began. */
    private static final int FADING_FIRST = 2;

    /** One state, taken apart. */
    record Place(int positions, int supply, int control, int lights) {}

    /** What is asked of the network: electrically it is all that matters of a doing. */
    private record Asked(ControllerFeed feed, Set<LeadId> on) {}

    /** Is told of each next state. */
    @FunctionalInterface
    interface Taker {
        void take(Step step, int state);
    }

    private final Table table;
    private final Grid grid;
    private final Machine machine;
    private final List<Light> lights;
    private final int[] lightStrides;
    private final int[] conditionOf;
    private final int[] inTable;
    private final int cranking;

    Product(Table table, Fitting fitting) {
        this.table = table;
        this.lights = Light.list(fitting);
        this.lightStrides = Light.strides(lights);
        Set<OperableId> always = new LinkedHashSet<>(Set.of(Operable.KEY));
        lights.forEach(light -> always.addAll(light.follows()));
        this.grid = new Grid(table, always);
        Behaviour behaviour = fitting.brief().kit().behaviour();
        Map<Asked, Integer> conditions = new LinkedHashMap<>();
        for (int c = 0; c < table.space().conditions().size(); c++) {
            for (Condition.Doing doing : table.space().conditions().get(c).members()) {
                conditions.put(new Asked(doing.feed(), doing.on(behaviour)), c);
            }
        }
        Set<ControllerFeed> feeds =
                conditions.keySet().stream().map(Asked::feed).collect(Collectors.toSet());
        this.machine = new Machine(
                fitting.brief().kit(),
                feeds,
                control -> conditions.containsKey(new Asked(control.feed(), control.on(behaviour))));
        this.conditionOf = machine.controls().stream()
                .mapToInt(control -> Objects.requireNonNull(
                        conditions.get(new Asked(control.feed(), control.on(behaviour))), control::toString))
                .toArray();
        this.inTable = new int[grid.size()];
        for (int p = 0; p < inTable.length; p++) {
            inTable[p] = grid.inTable(p);
        }
        this.cranking = table.space().supplies().indexOf(SupplyPoint.CRANKING);
    }

    /** How many states can be written down. */
    long size() {
        return (long) grid.size()
                * table.space().supplies().size()
                * machine.controls().size()
                * lightStrides[lights.size()];
    }

    /** Whether states of the controller may be missing. */
    boolean isCutShort() {
        return machine.isCutShort();
    }

    /** Whether everything that matters is moved. */
    boolean isWhole() {
        return table.space().leftAtRest().isEmpty();
    }

    /** How many combinations of positions each stands for. */
    long standsFor() {
        return grid.standsFor();
    }

    /** A car at rest, a charged battery, disarmed: where everything begins. */
    int start() {
        return number(
                new Place(0, table.space().supplies().indexOf(SupplyPoint.REST), machine.placeOf(Control.START), 0));
    }

    /** The number of a state. */
    int number(Place at) {
        return ((at.positions() * table.space().supplies().size() + at.supply())
                                        * machine.controls().size()
                                + at.control())
                        * lightStrides[lights.size()]
                + at.lights();
    }

    Place place(int state) {
        int allLights = lightStrides[lights.size()];
        int rest = state / allLights;
        int control = rest % machine.controls().size();
        rest /= machine.controls().size();
        int supplies = table.space().supplies().size();
        return new Place(rest / supplies, rest % supplies, control, state % allLights);
    }

    /** What the controller does there. */
    Control control(Place at) {
        return machine.controls().get(at.control());
    }

    /** What it is given there; a fading light puts its lead in doubt. */
    Given given(Place at) {
        Given given = table.at(conditionOf[at.control()], at.supply(), inTable[at.positions()]);
        for (int k = 0; k < lights.size(); k++) {
            if (light(at, k) != DARK) {
                given = given.withDoubt(lights.get(k).warns(), lights.get(k).sounds());
            }
        }
        return given;
    }

    private int light(Place at, int k) {
        return at.lights() / lightStrides[k] % 3;
    }

    /** What is moved, with the positions that differ, rest first. */
    SortedMap<OperableId, List<String>> moved() {
        SortedMap<OperableId, List<String>> all = new TreeMap<>();
        grid.moved().forEach(moved -> all.put(moved.operable(), moved.positions()));
        return all;
    }

    /** Where everything that is moved stands there. */
    SortedMap<OperableId, String> positions(Place at) {
        SortedMap<OperableId, String> positions = new TreeMap<>();
        for (Moved moved : grid.moved()) {
            positions.put(moved.operable(), moved.positions().get(moved.digit(at.positions())));
        }
        return positions;
    }

    /** Volts of the battery there. */
    SupplyPoint supply(Place at) {
        return table.space().supplies().get(at.supply());
    }

    /** Every step that can be taken from there. */
    void next(int state, Taker taker) {
        Place at = place(state);
        for (Machine.Move move : machine.moves(at.control(), given(at))) {
            if (move.deed() != Deed.ARMING_OVER || !isFadingFirst(at)) {
                int after = move.deed() == Deed.ARM ? fadingFirst(at) : at.lights();
                taker.take(
                        new Step.Controls(move.deed()),
                        number(new Place(at.positions(), at.supply(), machine.placeOf(move.to()), after)));
            }
        }
        for (Moved moved : grid.moved()) {
            operate(at, moved, taker);
        }
        for (int s = 0; s < table.space().supplies().size(); s++) {
            if (s != at.supply() && (s != cranking || isAtStart(at.positions()))) {
                taker.take(
                        new Step.Supplies(table.space().supplies().get(s)),
                        number(new Place(at.positions(), s, at.control(), at.lights())));
            }
        }
        for (int k = 0; k < lights.size(); k++) {
            if (light(at, k) != DARK) {
                taker.take(
                        new Step.Darkens(lights.get(k).circuit()),
                        number(new Place(at.positions(), at.supply(), at.control(), lit(at.lights(), k, DARK))));
            }
        }
    }

    private void operate(Place at, Moved moved, Taker taker) {
        int before = moved.digit(at.positions());
        for (int digit = 0; digit < moved.positions().size(); digit++) {
            if (digit != before) {
                int after = moved.with(at.positions(), digit);
                int supply = at.supply() == cranking && !isAtStart(after) ? 0 : at.supply();
                taker.take(
                        new Step.Operates(moved.operable(), moved.positions().get(digit)),
                        number(new Place(after, supply, at.control(), afterMoving(at, moved, after))));
            }
        }
    }

    /** Where the key works nothing here it may be anywhere. */
    private boolean isAtStart(int positions) {
        for (Moved moved : grid.moved()) {
            if (moved.operable().equals(Operable.KEY)) {
                return moved.positions().get(moved.digit(positions)).equals(Operable.KEY_POSITIONS.getLast());
            }
        }
        return true;
    }

    private int afterMoving(Place at, Moved moved, int after) {
        int standing = at.lights();
        for (int k = 0; k < lights.size(); k++) {
            Light light = lights.get(k);
            if (light.follows().contains(moved.operable())) {
                if (isWorked(light, after)) {
                    standing = lit(standing, k, DARK);
                } else if (isWorked(light, at.positions())) {
                    standing = lit(standing, k, FADING);
                }
            }
        }
        return standing;
    }

    private boolean isWorked(Light light, int positions) {
        for (Moved moved : grid.moved()) {
            if (light.follows().contains(moved.operable()) && moved.digit(positions) != 0) {
                return true;
            }
        }
        return false;
    }

    private boolean isFadingFirst(Place at) {
        for (int k = 0; k < lights.size(); k++) {
            if (lights.get(k).outlasted() && light(at, k) == FADING_FIRST) {
                return true;
            }
        }
        return false;
    }

    private int fadingFirst(Place at) {
        int standing = at.lights();
        for (int k = 0; k < lights.size(); k++) {
            standing = light(at, k) == DARK ? standing : lit(standing, k, FADING_FIRST);
        }
        return standing;
    }

    private int lit(int standing, int k, int how) {
        return standing + (how - standing / lightStrides[k] % 3) * lightStrides[k];
    }
}
