package org.loomproof.pages.bay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.schematic.LiveSchematic;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.LiveVehicle;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A planned job's car to be tried out: whatever its controls say is solved by the engine, every figure at its typical value. Keeps
 * the networks and the placed drawing between one answer and the next, and may be asked by several at once.
 */
public final class TriedCar {

    /** Enough for a few people who try mishaps at one job; more are built again. */
    private static final int MOST_KEPT = 12;

    private final Brief brief;
    private final Plan plan;
    private final List<Mishap> mishaps;
    private final Map<String, LiveVehicle> vehicles = new LinkedHashMap<>();
    private final Map<Locale, List<PlacedDrawing>> sheets = new HashMap<>();

    /** The car of a brief with its plan carried out. */
    public TriedCar(Brief given, Plan plan) {
        this.brief = given.set(plan.settings());
        this.plan = plan;
        this.mishaps = Mishap.list(brief, plan);
    }

    /** What is given, the kit set as the plan says. */
    public Brief brief() {
        return brief;
    }

    /** Every part that may fail and every mistake that may be made, faults first. */
    public List<Mishap> mishaps() {
        return mishaps;
    }

    /** How the controller can be fed: its own fuse is out only where it has one. */
    public synchronized List<ControllerFeed> feeds() {
        boolean hasFuse = !vehicle("")
                .fitted()
                .wired()
                .controller()
                .orElseThrow()
                .feedFuses()
                .isEmpty();
        return List.of(ControllerFeed.values()).stream()
                .filter(feed -> hasFuse || feed != ControllerFeed.FUSE_OUT)
                .toList();
    }

    /** What is found at that stand of the controls. A mishap that is not of this plan is none. */
    public synchronized TriedMoment at(Controls controls) {
        LiveVehicle vehicle = vehicle(controls.wrong());
        Situation situation = controls.situation();
        List<Phrase> unsettled = new ArrayList<>();
        List<OperatingPoint> stock =
                points(vehicle, vehicle.stock(), situation, "pages.bay.stock-unsettled", unsettled);
        List<OperatingPoint> fitted =
                points(vehicle, vehicle.fitted(), situation, "pages.bay.fitted-unsettled", unsettled);
        Optional<Reading> fittedReading = fitted.stream().findFirst().map(p -> new Reading(vehicle.fitted(), p));
        Set<CircuitId> cut = new LinkedHashSet<>(JoinedCircuits.cut(plan));
        MeterRound round = new MeterRound(
                vehicle.fitted().wired(),
                stock.stream().findFirst().map(p -> new Reading(vehicle.stock(), p)),
                fittedReading,
                cut);
        return new TriedMoment(
                round.rows(),
                round.drawn(),
                fittedReading.map(reading -> thinks(reading, situation)),
                vehicle.claims(situation),
                unsettled,
                Math.max(0, fitted.size() - 1));
    }

    /** The schematic with what is on its conductors; it shows the plan, whatever mistake was made in the car. */
    public List<PlacedDrawing> drawn(TriedMoment moment, Wording words) {
        List<PlacedDrawing> placed;
        synchronized (this) {
            placed = sheets.computeIfAbsent(words.messages().locale(), locale -> Schematic.sheets(brief, plan, words));
        }
        return LiveSchematic.of(placed, plan, moment.drawn(), words);
    }

    private static List<OperatingPoint> points(
            LiveVehicle both, Vehicle which, Situation situation, String key, List<Phrase> unsettled) {
        return switch (both.answers(which, situation)) {
            case Answers.AtRest(List<OperatingPoint> points) -> points;
            case Answers.Chatters(Phrase words) -> {
                unsettled.add(Phrase.of(key, words));
                yield List.of();
            }
            case Answers.Lost(Phrase words) -> {
                unsettled.add(Phrase.of(key, words));
                yield List.of();
            }
        };
    }

    private TriedMoment.Thinks thinks(Reading reading, Situation situation) {
        ControllerParts parts = reading.wired().controller().orElseThrow();
        boolean isAlive = reading.aliveByVolts() >= 0;
        List<String> drives = isAlive
                ? brief.kit().behaviour().listOn(situation.controller(), situation.moment()).stream()
                        .map(Object::toString)
                        .toList()
                : List.of();
        return new TriedMoment.Thinks(
                new Volts(reading.controllerVolts()), new Volts(parts.leastSupplyVolts()), isAlive, drives);
    }

    private LiveVehicle vehicle(String wrong) {
        Optional<Mishap> mishap =
                mishaps.stream().filter(each -> each.id().equals(wrong)).findFirst();
        String name = mishap.map(Mishap::id).orElse("");
        LiveVehicle known = vehicles.remove(name);
        LiveVehicle vehicle = known == null ? LiveVehicle.of(brief, plan, mishap) : known;
        vehicles.put(name, vehicle);
        while (vehicles.size() > MOST_KEPT) {
            vehicles.remove(vehicles.keySet().iterator().next());
        }
        return vehicle;
    }
}
