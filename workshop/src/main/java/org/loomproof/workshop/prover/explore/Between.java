package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.explore.Finding.Found;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * Looks between two supply points wherever contacts stand otherwise at the one than at the other: where they move is found to a
 * hundredth of a volt, and each case is asked on both sides of it. A battery has volts between cranking and tired only while it
 * cranks: there the key is at start, if it matters.
 *
 * <p>Where no contact moves nothing is looked at: what is left are resistances, lamps and diodes between one source and the body,
 * in which no node rises by more than the source and none falls, so that volts lie between those at the two points.
 */
public final class Between {

    /** Beyond so many answers asked for nothing more is looked at, and what that leaves is open. */
    static final long MOST_SOLVES = 200_000;

    /** Volts are counted in these, so that places found one after another are the same where contacts move at the same volts. */
    private static final double GRAIN_VOLTS = 0.01;

    /**
     * A place between two supply points.
     *
     * @param found with the lower of the two as its supply
     * @param volts at the battery's posts
     */
    public record Place(Found found, double volts) {}

    private final Space space;
    private final Sheet sheet;
    private final Vehicle stock;
    private final Vehicle fitted;
    private final List<Case> cases;
    private final Concern concern;
    private final StockTable stockTable;
    private final Contacts stands;
    private final Answering fittedAnswers;
    private final Map<Integer, Working> working = new ConcurrentHashMap<>();
    private final AtomicLong solves = new AtomicLong();

    /**
     * What lies between the supply points of a space.
     *
     * @param stands how contacts stand at the supply points
     * @param fittedAnswers how the fitted vehicle is solved
     */
    public Between(
            Space space,
            Sheet sheet,
            Vehicle stock,
            Vehicle fitted,
            List<Case> cases,
            Concern concern,
            StockTable stockTable,
            Contacts stands,
            Answering fittedAnswers) {
        this.space = space;
        this.sheet = sheet;
        this.stock = stock;
        this.fitted = fitted;
        this.cases = cases;
        this.concern = concern;
        this.stockTable = stockTable;
        this.stands = stands;
        this.fittedAnswers = fittedAnswers;
    }

    /** How a vehicle is solved in a setting. */
    @FunctionalInterface
    public interface Answering {

        /** Its points of rest there. */
        Answers answers(Workbench bench, Setting setting);
    }

    /** Whether contacts stand otherwise at one supply point than at another. */
    @FunctionalInterface
    public interface Contacts {

        /** Whether they do under a condition, in a combination of positions. */
        boolean differ(int condition, int lower, int upper, int positions);
    }

    /** Two neighbouring supply points, by their places in the space. */
    private record Gap(int lower, int upper) {}

    /** The least slack of each case in between, where contacts move there and it is asked; the findings take it in. */
    long look(List<Finding> findings, Workbench beside, BooleanSupplier isEnough) {
        List<Gap> gaps = gaps();
        int all = space.conditions().size() * gaps.size();
        List<List<Finding>> found = IntStream.range(0, all)
                .parallel()
                .mapToObj(k -> isEnough.getAsBoolean()
                        ? List.<Finding>of()
                        : new Look(k / gaps.size(), gaps.get(k % gaps.size()), beside.beside()).all())
                .toList();
        found.forEach(each -> merge(findings, each));
        return solves.get();
    }

    /** The same by one thread at one bench. */
    public void look(List<Finding> findings, Workbench bench) {
        for (int condition = 0; condition < space.conditions().size(); condition++) {
            for (Gap gap : gaps()) {
                merge(findings, new Look(condition, gap, bench).all());
            }
        }
    }

    /** The pair that decides a case at such a place, solved once more; the place must have come to rest. */
    public Pair deciding(int caseIndex, Place place, Workbench bench) {
        Key key = place.found().key();
        Look look = new Look(key.condition(), new Gap(key.supply(), key.supply()), bench);
        int grains = (int) Math.round(place.volts() / GRAIN_VOLTS);
        Stood there = look.stand(key.positions(), grains);
        if (there.stock() instanceof Answers.AtRest s && there.fitted() instanceof Answers.AtRest f) {
            Beside beside = new Beside(space, key, place.volts(), stock, fitted, look.workingAt(grains), bench);
            return Beside.deciding(cases.get(caseIndex), beside.pairs(s, f));
        }
        throw new IllegalStateException("settled once, not settled again: " + key);
    }

    private static void merge(List<Finding> findings, List<Finding> found) {
        for (int c = 0; c < found.size(); c++) {
            findings.get(c).merge(found.get(c));
        }
    }

    private List<Gap> gaps() {
        List<Integer> upwards = IntStream.range(0, space.supplies().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        s -> space.supplies().get(s).volts().value()))
                .toList();
        List<Gap> gaps = new ArrayList<>();
        for (int k = 1; k < upwards.size(); k++) {
            gaps.add(new Gap(upwards.get(k - 1), upwards.get(k)));
        }
        return gaps;
    }

    /** One condition between two supply points, at every combination of positions. */
    private final class Look {

        private final int condition;
        private final Gap gap;
        private final Workbench bench;
        private final long solvedBefore;
        private final Walker stockSettings;
        private final Walker fittedSettings;
        private final int[] under;
        private final List<Finding> found = new ArrayList<>();

        Look(int condition, Gap gap, Workbench bench) {
            this.condition = condition;
            this.gap = gap;
            this.bench = bench;
            this.solvedBefore = bench.solves();
            SupplyPoint lower = space.supplies().get(gap.lower());
            this.stockSettings = new Walker(space, stock.settings(), lower, Condition.IDLE);
            this.fittedSettings = new Walker(
                    space,
                    fitted.settings(),
                    lower,
                    space.conditions().get(condition).representative());
            this.under = concern.under(condition);
            cases.forEach(each -> found.add(new Finding()));
        }

        List<Finding> all() {
            for (int p = 0; under.length > 0 && p < space.positions().size(); p++) {
                int[] asked = concern.at(under, p);
                if (asked.length > 0 && isReached(p) && stands.differ(condition, gap.lower(), gap.upper(), p)) {
                    look(p, asked);
                }
            }
            solves.addAndGet(bench.solves() - solvedBefore);
            return found;
        }

        private boolean isReached(int positions) {
            String key = space.positions().get(positions).get(Operable.KEY);
            return space.supplies().get(gap.lower()) != SupplyPoint.CRANKING
                    || key == null
                    || key.equals(Operable.KEY_POSITIONS.getLast());
        }

        private void look(int positions, int[] asked) {
            int low = grains(gap.lower());
            int high = grains(gap.upper());
            Stood below = stand(positions, low);
            Stood above = stand(positions, high);
            narrow(positions, asked, low, below, high, above);
        }

        private int grains(int supply) {
            return (int) Math.round(space.supplies().get(supply).volts().value() / GRAIN_VOLTS);
        }

        /** Halves until contacts stand alike at both ends, or the ends are neighbours; then both are asked. */
        private void narrow(int positions, int[] asked, int low, Stood below, int high, Stood above) {
            if (below.isLike(above)) {
                return;
            }
            if (high - low <= 1) {
                ask(positions, asked, low, below);
                ask(positions, asked, high, above);
                return;
            }
            if (solves.get() + bench.solves() - solvedBefore > MOST_SOLVES) {
                leave(positions, asked, low);
                return;
            }
            int middle = (low + high) / 2;
            Stood there = stand(positions, middle);
            narrow(positions, asked, low, below, middle, there);
            narrow(positions, asked, middle, there, high, above);
        }

        private Stood stand(int positions, int grains) {
            double volts = grains * GRAIN_VOLTS;
            return new Stood(
                    bench,
                    stock,
                    fitted,
                    bench.answers(stock, at(stock, stockSettings, positions, volts)),
                    fittedAnswers.answers(bench, at(fitted, fittedSettings, positions, volts)));
        }

        private Setting at(Vehicle vehicle, Walker settings, int positions, double volts) {
            return settings.at(positions).emf(vehicle.wired().battery(), volts);
        }

        private void ask(int positions, int[] asked, int grains, Stood there) {
            Key key = new Key(condition, gap.lower(), positions);
            double volts = grains * GRAIN_VOLTS;
            Beside beside = new Beside(space, key, volts, stock, fitted, workingAt(grains), bench);
            for (int c : asked) {
                double slack = there.stock() instanceof Answers.AtRest s && there.fitted() instanceof Answers.AtRest f
                        ? Beside.slack(cases.get(c), beside.pairs(s, f))
                        : Double.NEGATIVE_INFINITY;
                if (!Double.isNaN(slack)) {
                    found.get(c).add(new Place(new Found(key, slack, concern.steps(c, key)), volts));
                }
            }
        }

        private void leave(int positions, int[] asked, int grains) {
            Key key = new Key(condition, gap.lower(), positions);
            for (int c : asked) {
                Found unknown = new Found(key, Double.NEGATIVE_INFINITY, concern.steps(c, key));
                found.get(c).add(new Place(unknown, grains * GRAIN_VOLTS));
            }
        }

        private Working workingAt(int grains) {
            return working.computeIfAbsent(
                    grains,
                    g -> stockTable.at(space, stock, sheet, space.supplies().get(gap.lower()), g * GRAIN_VOLTS));
        }
    }

    /** How both vehicles stand at some volts. */
    private record Stood(Answers stock, Answers fitted, long ofStock, long ofFitted) {

        Stood(Workbench bench, Vehicle stockCar, Vehicle fittedCar, Answers stock, Answers fitted) {
            this(stock, fitted, bench.stand(stockCar, stock), bench.stand(fittedCar, fitted));
        }

        boolean isLike(Stood other) {
            return ofStock == other.ofStock && ofFitted == other.ofFitted;
        }
    }

    /** How contacts stand in every situation that was walked. */
    public static final class Stands implements Contacts {
        private final long[][][] fitted;
        private final long[][] stock;

        /** Of a space in which nothing was walked yet. */
        public Stands(Space space, Vehicle vehicle, StockTable table, Workbench bench) {
            int supplies = space.supplies().size();
            int combinations = space.positions().size();
            this.fitted = new long[space.conditions().size()][supplies][combinations];
            this.stock = new long[supplies][combinations];
            for (int s = 0; s < supplies; s++) {
                for (int p = 0; p < combinations; p++) {
                    stock[s][p] = bench.stand(vehicle, table.at(s, p));
                }
            }
        }

        /** How the fitted vehicle stands there. */
        public void put(Key key, long stand) {
            fitted[key.condition()][key.supply()][key.positions()] = stand;
        }

        @Override
        public boolean differ(int condition, int lower, int upper, int positions) {
            return stock[lower][positions] != stock[upper][positions]
                    || fitted[condition][lower][positions] != fitted[condition][upper][positions];
        }

        /**
         * A vehicle of which something is wrong: where it was not walked it stands as this one, and nothing is between.
         *
         * @param walked how it stands where it was walked
         */
        public Contacts but(Map<Key, Long> walked) {
            return (condition, lower, upper, positions) -> {
                Long below = walked.get(new Key(condition, lower, positions));
                Long above = walked.get(new Key(condition, upper, positions));
                if (below == null && above == null) {
                    return false;
                }
                long from = below == null ? fitted[condition][lower][positions] : below;
                long to = above == null ? fitted[condition][upper][positions] : above;
                return from != to || stock[lower][positions] != stock[upper][positions];
            };
        }

        /**
         * The same where this vehicle was not walked everywhere itself: where one of the two is unknown contacts may have moved.
         */
        public Contacts only(Map<Key, Long> walked) {
            return (condition, lower, upper, positions) -> {
                Long below = walked.get(new Key(condition, lower, positions));
                Long above = walked.get(new Key(condition, upper, positions));
                if (below == null || above == null) {
                    return below != null || above != null;
                }
                return !below.equals(above) || stock[lower][positions] != stock[upper][positions];
            };
        }
    }
}
