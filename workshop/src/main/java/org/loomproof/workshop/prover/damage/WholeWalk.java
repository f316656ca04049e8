package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Beside;
import org.loomproof.workshop.prover.explore.Between;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.StockTable;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Walker;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.WorkedSwitch;

/**
 * One area of the vehicle as planned, solved in every situation: what is seen there, and which damages change nothing there.
 * Where a damage changes nothing the damaged vehicle need not be solved.
 */
final class WholeWalk {

    final Space space;
    final Places places;
    final StockTable stockTable;
    final Vehicle stock;
    final Vehicle fitted;
    private final Signs signs;

    /** For each damage and each pair of condition and supply point the combinations in which it may change something. */
    private final Map<Integer, BitSet[]> touched = new HashMap<>();

    private final @Nullable Seen[][] seen;

    /** The controller's supply and ground in each situation, for each point of rest: two volts one after the other. */
    private final double[][][][] feed;

    /** How contacts stand in each situation. */
    final Between.Stands stands;

    /** For each pair of condition and supply point the combinations in which contacts are close to standing otherwise. */
    private final BitSet[] near;

    final Brink brink;

    private long solves;

    /**
     * @param job the job
     * @param parts the parts of the area, of either vehicle
     * @param conditions of its controller
     */
    WholeWalk(AsPlanned job, Set<PartId> parts, List<Condition> conditions, Brink brink) {
        this.brink = brink;
        Area area = new Area(parts, true);
        List<WorkedSwitch> switches = Stream.concat(
                        job.stock().wired().switches().stream(), job.fitted().wired().switches().stream())
                .toList();
        this.space = Space.of(job.brief().sheet(), conditions, parts, switches, job.askedAbout());
        this.places = new Places(job.brief().sheet(), space, switches, parts);
        this.stock = job.stock().restrictedTo(area);
        this.fitted = job.fitted().restrictedTo(area);
        this.signs = job.signs();
        this.stockTable = StockTable.of(space, stock, job.brief().sheet());
        this.solves = stockTable.solves();
        this.stands = new Between.Stands(space, stock, stockTable, new Workbench());
        this.near = new BitSet[space.conditions().size() * space.supplies().size()];
        this.seen = new Seen[space.conditions().size()][space.positions().size()];
        this.feed = new double[space.conditions().size()][space.supplies().size()]
                [space.positions().size()][];
    }

    /** The conditions of a vehicle with that controller. */
    static List<Condition> conditions(AsPlanned job, ControllerParts controller) {
        return Condition.list(job.brief().kit(), !controller.feedFuses().isEmpty(), controller.fuseOutIsUnplugged());
    }

    /** Walks it, with an eye on these damages, each by a number of its own. */
    WholeWalk walk(Map<Integer, List<Change>> damages) {
        return walk(damages, (c, s) -> everywhere());
    }

    /** Walks it at a corner, where contacts of the vehicle as planned are close to standing otherwise at typical values. */
    WholeWalk walkNear(WholeWalk typical, Map<Integer, List<Change>> damages) {
        return walk(damages, typical::near);
    }

    private BitSet everywhere() {
        BitSet all = new BitSet();
        all.set(0, space.positions().size());
        return all;
    }

    private WholeWalk walk(Map<Integer, List<Change>> damages, BiFunction<Integer, Integer, BitSet> where) {
        int chunks = space.conditions().size() * space.supplies().size();
        damages.keySet().forEach(number -> touched.put(number, new BitSet[chunks]));
        solves += IntStream.range(0, space.conditions().size())
                .parallel()
                .mapToLong(c -> walk(c, damages, where))
                .sum();
        return this;
    }

    private long walk(int condition, Map<Integer, List<Change>> damages, BiFunction<Integer, Integer, BitSet> where) {
        Workbench bench = new Workbench();
        Brink.Gauge fittedGauge = brink.of(fitted);
        Brink.Gauge stockGauge = brink.of(stock);
        for (int s = 0; s < space.supplies().size(); s++) {
            Map<Integer, BitSet> here = new HashMap<>();
            damages.keySet().forEach(number -> here.put(number, new BitSet()));
            Walker settings = new Walker(
                    space,
                    fitted.settings(),
                    space.supplies().get(s),
                    space.conditions().get(condition).representative());
            BitSet close = new BitSet();
            BitSet asked = where.apply(condition, s);
            for (int p = asked.nextSetBit(0); p >= 0; p = asked.nextSetBit(p + 1)) {
                Answers answers = bench.answers(fitted, settings.at(p));
                feed[condition][s][p] = feed(fitted, answers);
                close.set(p, fittedGauge.isNear(answers) || stockGauge.isNear(stockTable.at(s, p)));
                stands.put(new Key(condition, s, p), bench.stand(fitted, answers));
                if (space.supplies().get(s) == SupplyPoint.REST) {
                    seen[condition][p] = seen(new Key(condition, s, p), answers, bench);
                }
                for (Map.Entry<Integer, List<Change>> damage : damages.entrySet()) {
                    if (!isLeftAlone(answers, damage.getValue())) {
                        Objects.requireNonNull(here.get(damage.getKey())).set(p);
                    }
                }
            }
            int chunk = condition * space.supplies().size() + s;
            near[chunk] = close;
            here.forEach((number, combinations) -> Objects.requireNonNull(touched.get(number))[chunk] = combinations);
        }
        return bench.solves();
    }

    /** Supply and ground of the controller at each point of rest; nothing where the controller does not lie here. */
    private static double[] feed(Vehicle vehicle, Answers answers) {
        ControllerParts controller = vehicle.wired().controller().orElseThrow();
        if (!vehicle.wired().network().hasNode(controller.supply())
                || !(answers instanceof Answers.AtRest(List<OperatingPoint> points))) {
            return new double[0];
        }
        return points.stream()
                .flatMapToDouble(p -> DoubleStream.of(p.volts(controller.supply()), p.volts(controller.ground())))
                .toArray();
    }

    /** Volts by which the controller's supply or ground is further than here from where it is as planned. */
    double feedMoved(Key key, Vehicle damaged, Answers answers) {
        double[] planned = feed[key.condition()][key.supply()][key.positions()];
        if (planned == null) {
            return 0;
        }
        double[] now = feed(damaged, answers);
        double most = 0;
        for (int k = 0; k < now.length; k += 2) {
            double least = Double.POSITIVE_INFINITY;
            for (int j = 0; j < planned.length; j += 2) {
                least = Math.min(least, Math.max(Math.abs(now[k] - planned[j]), Math.abs(now[k + 1] - planned[j + 1])));
            }
            most = Math.max(most, least);
        }
        return most;
    }

    /** The combinations in which only these operables are moved. */
    BitSet movingOnly(Set<OperableId> operables) {
        BitSet combinations = new BitSet();
        for (int p = 0; p < space.positions().size(); p++) {
            boolean only = true;
            for (Space.Axis axis : space.axes()) {
                only &= operables.contains(axis.operable())
                        || space.position(p, axis.operable())
                                .equals(axis.positions().getFirst());
            }
            combinations.set(p, only);
        }
        return combinations;
    }

    private static boolean isLeftAlone(Answers answers, List<Change> changes) {
        if (!(answers instanceof Answers.AtRest(List<OperatingPoint> points))) {
            return false;
        }
        for (OperatingPoint point : points) {
            for (Change change : changes) {
                if (!change.leavesAlone(point)) {
                    return false;
                }
            }
        }
        return true;
    }

    private @Nullable Seen seen(Key key, Answers answers, Workbench bench) {
        Answers before = stockTable.at(key.supply(), key.positions());
        return new Beside(space, key, stock, fitted, stockTable.working(), bench)
                .pairsAtRest(before, answers)
                .map(signs::read)
                .orElse(null);
    }

    /** What is seen as planned, with a charged battery at rest; null where contacts do not come to rest. */
    @Nullable
    Seen seen(Key key) {
        return seen[key.condition()][key.positions()];
    }

    /** The combinations in which the damage may change something. */
    BitSet touched(int damage, int condition, int supply) {
        BitSet[] chunks = touched.get(damage);
        if (chunks == null) {
            throw new IllegalArgumentException("no damage " + damage + " was looked for");
        }
        return chunks[condition * space.supplies().size() + supply];
    }

    /** The combinations in which contacts are close to standing otherwise. */
    BitSet near(int condition, int supply) {
        return near[condition * space.supplies().size() + supply];
    }

    /** The situation of a place, by the doing that stands for its condition. */
    Situation situation(Key key) {
        return situation(key, space.conditions().get(key.condition()).representative());
    }

    /** The situation of a place while the controller does that. */
    Situation situation(Key key, Condition.Doing doing) {
        return doing.with(
                space.positions().get(key.positions()), space.supplies().get(key.supply()));
    }

    long solves() {
        return solves;
    }

    /** All situations there are. */
    long situations() {
        return (long) space.conditions().size()
                * space.supplies().size()
                * space.positions().size();
    }
}
