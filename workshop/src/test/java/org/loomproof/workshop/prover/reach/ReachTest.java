package org.loomproof.workshop.prover.reach;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.prover.reach.Reach.Together;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Messages;

class ReachTest {

    private static final LeadId LOCK = new LeadId("lock");
    private static final LeadId UNLOCK = new LeadId("unlock");
    private static final LeadId WINDOW = new LeadId("window");

    private static Port output(double seconds) {
        return new Port.LowSide(
                Figure.exactly(new Amps(0.5), Figured.STATED),
                Figure.exactly(new Volts(0.3), Figured.STATED),
                seconds > 0 ? Optional.of(Figure.exactly(new Seconds(seconds), Figured.STATED)) : Optional.empty(),
                false,
                false);
    }

    /** Arming takes {@code AKit}'s 20 s; lock and window act as it arms, unlock as it is disarmed. */
    private static Kit kit(double lock, double unlock, double window) {
        return AKit.simple()
                .lead("lock", LeadRole.LOCK, output(lock), false)
                .lead("unlock", LeadRole.UNLOCK, output(unlock), false)
                .lead("window", LeadRole.WINDOW, output(window), false)
                .output(new OutputBehaviour(LOCK, EnumSet.of(ControllerState.ARMING), OutputTiming.PULSE))
                .output(new OutputBehaviour(WINDOW, EnumSet.of(ControllerState.ARMING), OutputTiming.PULSE))
                .output(new OutputBehaviour(UNLOCK, EnumSet.of(ControllerState.DISARMED), OutputTiming.PULSE))
                .kit();
    }

    private static boolean has(Reach reach, ControllerState state, LeadId... pulses) {
        return reach.ways().keySet().stream()
                .filter(each -> each.state() == state)
                .anyMatch(each -> {
                    Set<LeadId> running = new TreeSet<>(each.on());
                    running.retainAll(Set.of(LOCK, UNLOCK, WINDOW));
                    return running.equals(Set.of(pulses));
                });
    }

    @Test
    void lockAndUnlockOverlapForOneWhoChangesHisMind() {
        Reach reach = Reach.of(kit(0.8, 0.8, 0.8));
        assertThat(has(reach, ControllerState.DISARMED, LOCK, UNLOCK, WINDOW)).isTrue();
        Reach.Way way = Objects.requireNonNull(
                reach.ways().get(new Together(ControllerState.DISARMED, Set.of(LOCK, UNLOCK, WINDOW))));
        assertThat(way.steps()).extracting(Messages.english()::text).containsExactly("arm", "disarm");
        assertThat(way.isSupposed()).isTrue();
    }

    @Test
    void aPulseThatIsOverBeforeItIsArmedNeverMeetsTheArmedController() {
        assertThat(has(Reach.of(kit(0.8, 0.8, 19)), ControllerState.ARMED, WINDOW))
                .isFalse();
        assertThat(has(Reach.of(kit(0.8, 0.8, 21)), ControllerState.ARMED, WINDOW))
                .isTrue();
        // Unlocked, armed at once: the unlock pulse of 25 s is still there when it is armed.
        assertThat(has(Reach.of(kit(0.8, 25, 5)), ControllerState.ARMED, UNLOCK))
                .isTrue();
        assertThat(has(Reach.of(kit(0.8, 19, 5)), ControllerState.ARMED, UNLOCK))
                .isFalse();
    }

    @Test
    void aPulseOfUnknownLengthMayLastForEver() {
        assertThat(has(Reach.of(kit(0.8, 0, 5)), ControllerState.ARMED, UNLOCK)).isTrue();
    }

    @Test
    void ofTwoPulsesOfOneCommandTheLongerIsSurelyLeftAlone() {
        Reach reach = Reach.of(kit(0.8, 0.8, 5));
        Reach.Way way = Objects.requireNonNull(reach.ways().get(new Together(ControllerState.ARMING, Set.of(WINDOW))));
        assertThat(way.isSupposed()).isFalse();
        assertThat(has(reach, ControllerState.ARMING, LOCK)).isFalse();
    }

    static List<double[]> lengths() {
        return List.of(
                new double[] {0.8, 1.1, 1.5},
                new double[] {0.8, 3.5, 19},
                new double[] {0.8, 25, 30},
                new double[] {4, 22, 19},
                new double[] {0.5, 50, 7});
    }

    /**
     * A second way: a controller that is told what to do at random, in tenths of a second, with a rule of its own for each pulse
     * of an earlier state. It comes to no set of outputs that the walk has not found, and given time it comes to all.
     */
    @ParameterizedTest
    @MethodSource("lengths")
    void aControllerToldAtRandomComesToAllThatWasFoundAndToNothingElse(double[] seconds) {
        Kit kit = kit(seconds[0], seconds[1], seconds[2]);
        Set<Together> found = Reach.of(kit).ways().keySet();
        Set<Together> met = new LinkedHashSet<>();
        for (long seed : Sample.seeds(12, 120).toArray()) {
            new Told(kit, new SplittableRandom(seed)).walk(met, 60_000);
        }
        assertThat(found).containsAll(met);
        Set<Together> never = new LinkedHashSet<>(found);
        never.removeAll(met);
        Note.that("reach: " + found.size() + " sets of outputs, " + met.size() + " met at random");
        assertThat(never).isEmpty();
    }

    /** One controller in tenths of a second. */
    private static final class Told {
        private final Kit kit;
        private final RandomGenerator chance;
        private final Map<LeadId, Integer> left = new HashMap<>();
        private final Set<LeadId> earlier = new TreeSet<>();
        private ControllerState state = ControllerState.DISARMED;
        private int since;
        private boolean isLit;
        private boolean cutsShort;

        Told(Kit kit, RandomGenerator chance) {
            this.kit = kit;
            this.chance = chance;
        }

        void walk(Set<Together> met, int tenths) {
            double eager = 0.02;
            for (int k = 0; k < tenths; k++) {
                if (k % 400 == 0) {
                    eager = chance.nextBoolean() ? 0.3 : 0.004;
                }
                tick();
                if (chance.nextDouble() < eager) {
                    command();
                }
                met.add(new Together(state, on()));
            }
        }

        private void tick() {
            since++;
            isLit = chance.nextBoolean();
            left.replaceAll((lead, tenth) -> tenth - 1);
            left.entrySet()
                    .removeIf(pulse -> pulse.getValue() <= 0
                            || (cutsShort && earlier.contains(pulse.getKey()) && chance.nextInt(10) == 0));
            if (state == ControllerState.ARMING && since >= 200) {
                enter(ControllerState.ARMED);
            } else if (state == ControllerState.ARMED && chance.nextInt(20) == 0) {
                enter(chance.nextBoolean() ? ControllerState.WARNING : ControllerState.SOUNDING);
            } else if ((state == ControllerState.WARNING || state == ControllerState.SOUNDING)
                    && chance.nextInt(100) == 0) {
                enter(chance.nextBoolean() ? ControllerState.ARMED : ControllerState.SOUNDING);
            }
        }

        private void command() {
            if (chance.nextInt(8) == 0) {
                enter(state == ControllerState.OVERRIDE ? ControllerState.DISARMED : ControllerState.OVERRIDE);
            } else if (state == ControllerState.DISARMED) {
                enter(ControllerState.ARMING);
            } else {
                enter(ControllerState.DISARMED);
            }
        }

        private void enter(ControllerState next) {
            cutsShort = chance.nextInt(3) == 0;
            earlier.clear();
            earlier.addAll(left.keySet());
            state = next;
            since = 0;
            for (OutputBehaviour output : kit.behaviour().outputs()) {
                if (output.timing() == OutputTiming.PULSE && output.onIn().contains(next)) {
                    double lasts = kit.lead(output.lead())
                            .port()
                            .pulse()
                            .orElseThrow()
                            .typical()
                            .value();
                    left.put(output.lead(), (int) Math.round(10 * lasts));
                    earlier.remove(output.lead());
                }
            }
        }

        private Set<LeadId> on() {
            Set<LeadId> on = new TreeSet<>(left.keySet());
            for (OutputBehaviour output : kit.behaviour().outputs()) {
                boolean isOn =
                        output.timing() == OutputTiming.STEADY || (output.timing() == OutputTiming.FLASHING && isLit);
                if (isOn && output.onIn().contains(state)) {
                    on.add(output.lead());
                }
            }
            return on;
        }
    }
}
