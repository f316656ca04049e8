package org.loomproof.workshop.meter.role;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.StepReader;

/** Trade facts about wires, common practice with no published source, found again in what the engine says of our models. */
class WireModelsTest {

    private static final double TEN_MEG = 10e6;
    private static final double BATTERY = 12.6;
    private final List<WireModel> models = WireModels.usual();
    private final StepReader steps = new StepReader(java.util.Map.of());

    private List<Shows> all(WireRole role, String step) {
        return models.stream()
                .filter(m -> m.role() == role)
                .flatMap(m -> m.shows(steps.read(step).orElseThrow(), TEN_MEG).stream())
                .toList();
    }

    @Test
    void everyRoleButTheUnknownOneHasModelsWhoseSharesSumToOne() {
        Set<WireRole> modelled = EnumSet.noneOf(WireRole.class);
        models.forEach(m -> modelled.add(m.role()));
        assertThat(modelled).isEqualTo(EnumSet.complementOf(EnumSet.of(WireRole.NONE_OF_THESE)));
        for (WireRole role : modelled) {
            double sum = models.stream()
                    .filter(m -> m.role() == role)
                    .mapToDouble(WireModel::share)
                    .sum();
            assertThat(sum).as(role.word()).isEqualTo(1, Offset.offset(1e-12));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "CONSTANT,no key,1",
        "CONSTANT,key off,1",
        "CONSTANT,cranking,1",
        "CONSTANT,asleep,1", // the same in every state
        "IGNITION,key off,0",
        "IGNITION,key acc,0",
        "IGNITION,key on,1",
        "IGNITION,cranking,1", // holds through cranking
        "SECOND_IGNITION,key on,1",
        "SECOND_IGNITION,cranking,0", // looks like the ignition until cranked
        "ACCESSORY,key acc,1",
        "ACCESSORY,key on,1",
        "ACCESSORY,cranking,0", // drops in crank
        "STARTER,key off,0",
        "STARTER,key on,0",
        "STARTER,running,0",
        "STARTER,cranking,1", // only in crank
        "BRAKE,key off,0",
        "BRAKE,pressed brake,1",
        "FUEL_PUMP,key on,0"
    })
    void aWireShowsNothingOrTheBatteryAsTheTradeKnowsIt(WireRole role, String step, double share) {
        assertThat(all(role, step))
                .isNotEmpty()
                .allSatisfy(shows -> assertThat(shows.volts(BATTERY)).isEqualTo(share * BATTERY, Offset.offset(1.8)));
    }

    @ParameterizedTest
    @CsvSource({
        "DOOR_TRIGGER,key off,opened door", "HOOD_TRIGGER,key off,opened hood", "LOCK,key off,pressed lock",
        "UNLOCK,key off,pressed unlock", "HORN,key off,pressed horn", "TRUNK_RELEASE,key off,pressed release"
    })
    void aWireThatIsWorkedComesToOnePoleOrLeavesIt(WireRole role, String rest, String worked) {
        List<Shows> before = all(role, rest);
        List<Shows> after = all(role, worked);
        for (int k = 0; k < before.size(); k++) {
            boolean wasFloating = before.get(k).floats();
            double change = Math.abs(after.get(k).volts(BATTERY) - before.get(k).volts(BATTERY));
            assertThat(wasFloating ? 13 : change).as(role + " " + k).isGreaterThan(1.5);
        }
    }

    @Test
    void lockAndUnlockAreToldApartByTheirOwnButtons() {
        assertThat(all(WireRole.LOCK, "pressed unlock")).isEqualTo(all(WireRole.LOCK, "key off"));
        assertThat(all(WireRole.UNLOCK, "pressed lock")).isEqualTo(all(WireRole.UNLOCK, "key off"));
    }

    /** Lamps are mostly fed with supply, and lock wires mostly put to the body. */
    @Test
    void lampsAreMostlyPositiveAndLockWiresMostlyNegative() {
        assertThat(shareUp(WireRole.PARKING_LAMP, "lamps on")).isGreaterThan(0.5);
        assertThat(shareUp(WireRole.LOCK, "pressed lock")).isLessThan(0.5);
        assertThat(shareUp(WireRole.UNLOCK, "pressed unlock")).isLessThan(0.5);
    }

    /** What share of the wires of a role stands near the battery in a step. */
    private double shareUp(WireRole role, String step) {
        return models.stream()
                .filter(m -> m.role() == role)
                .filter(m -> m.shows(steps.read(step).orElseThrow(), TEN_MEG).stream()
                        .allMatch(shows -> shows.volts(BATTERY) > BATTERY / 2))
                .mapToDouble(WireModel::share)
                .sum();
    }

    /** About 2.5 V on two wires, 9 to 11.5 V on one, as the trade's tables say; a meter sees the average. */
    @Test
    void dataWiresShowTheirAverageAndMove() {
        assertThat(all(WireRole.DATA, "key on")).allSatisfy(shows -> {
            assertThat(shows.volts(BATTERY))
                    .satisfiesAnyOf(
                            v -> assertThat(v).isBetween(1.8, 3.1),
                            v -> assertThat(v).isBetween(6.5, 12.5));
            assertThat(shows.swing()).isPositive();
        });
    }

    @Test
    void anUnconnectedWireShowsAGhostToTenMegohmsAndNextToNothingToALowOne() {
        assertThat(all(WireRole.DEAD, "key off")).allMatch(Shows::floats).anyMatch(s -> s.volts(BATTERY) > 3);
        WireModel dead = models.stream()
                .filter(m -> m.role() == WireRole.DEAD)
                .findFirst()
                .orElseThrow();
        assertThat(dead.shows(Step.REST, 20e3))
                .allSatisfy(s -> assertThat(s.volts(BATTERY)).isLessThan(0.06));
    }

    /** The formula of a divider: what a pull-up leaves over a resistor. */
    @Test
    void aResistorToTheBodyDividesAHeldWire() {
        WireModel steps12 = models.stream()
                .filter(m -> m.role() == WireRole.LOCK_STEPS && m.sleepShare() == 0)
                .findFirst()
                .orElseThrow();
        List<Shows> open = steps12.shows(Step.REST, TEN_MEG);
        List<Shows> loaded = steps12.shows(Step.REST.withResistor(1000), TEN_MEG);
        for (int k = 0; k < open.size(); k++) {
            double pullUp = 1000
                    * (open.get(k).volts(BATTERY) - loaded.get(k).volts(BATTERY))
                    / loaded.get(k).volts(BATTERY);
            assertThat(pullUp).isBetween(300.0, 16_000.0);
        }
    }
}
