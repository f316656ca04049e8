package org.loomproof.workshop.prover.damage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Beside;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.StockTable;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.explore.Working;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * One area of the stock vehicle and of the vehicle as planned at ends of ranged figures. Each is drawn, and solved in a situation,
 * once for all damages.
 */
final class EndCars {

    private final AsPlanned job;
    private final WholeWalk whole;
    private final Area area;
    private final List<Variations.Variation> variations;
    private final Map<Corner, Car> cars = new ConcurrentHashMap<>();

    EndCars(AsPlanned job, WholeWalk whole, Area area) {
        this.job = job;
        this.whole = whole;
        this.area = area;
        this.variations = job.variations().within(area);
    }

    /** Each figure that has a say in the area, at either end. */
    List<Variations.Variation> variations() {
        return variations;
    }

    /** Both vehicles at that corner. */
    Car at(Corner corner) {
        return cars.computeIfAbsent(corner, Car::new);
    }

    /** Both vehicles at one corner; asked by several threads. */
    final class Car {

        private final Vehicle stock;
        private final Vehicle fitted;
        private final Workbench bench = new Workbench();
        private final Map<Key, Answers> stockAnswers = new HashMap<>();
        private final Map<Key, Optional<Seen>> seen = new HashMap<>();
        private Optional<StockTable> table = Optional.empty();

        private Car(Corner corner) {
            this.stock = Vehicle.stock(job.brief(), corner).restrictedTo(area);
            this.fitted = Vehicle.fitted(job.brief(), job.plan(), corner).restrictedTo(area);
        }

        Vehicle stock() {
            return stock;
        }

        /** What comes of the stock vehicle there. */
        synchronized Answers stock(Key key) {
            return stockAnswers.computeIfAbsent(key, k -> answers(stock, whole.situation(k, Condition.IDLE)));
        }

        /** What is to be seen of the vehicle as planned; empty where it does not come to rest. */
        synchronized Optional<Seen> seen(Key key) {
            return seen.computeIfAbsent(
                    key,
                    k -> new Beside(whole.space, k, stock, fitted, whole.stockTable.working(), bench)
                            .pairsAtRest(stock(k), answers(fitted, whole.situation(k)))
                            .map(job.signs()::read));
        }

        /** What the stock loads get there when they work. */
        synchronized Working working() {
            StockTable known = table.orElseGet(
                    () -> StockTable.of(whole.space, stock, job.brief().sheet()));
            table = Optional.of(known);
            return known.working();
        }

        private Answers answers(Vehicle vehicle, Situation situation) {
            return bench.answers(vehicle, vehicle.settings().of(situation));
        }
    }
}
