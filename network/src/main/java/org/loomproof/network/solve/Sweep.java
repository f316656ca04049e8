package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;

/**
 * Operating points of one network after power-up in very many settings. They are walked in an order in which neighbours differ
 * little, in legs of a fixed length that each begin afresh; so the answers are those of {@link Solver#solve(Setting)} whatever
 * the order given, and the same to the bit on any number of threads. Any thread may share it.
 *
 * <p>Over {@value #MANY} settings and more of a network of one battery, what is called at power-up is mostly told without solving it.
 */
public final class Sweep {
    /** Settings a leg, at least and at most: enough to make what is learnt on the way worth more than the start. */
    private static final int SHORT_LEG = 1000;

    private static final int LONG_LEG = 2000;

    /** Legs that a sweep is divided into before they grow longer, so that there is one for each of a few threads. */
    private static final int FEW_LEGS = 4;

    /** Settings for which it is worth finding out what the supply holds up. */
    private static final int MANY = 500;

    /** What each leg begins with afresh, and, once it was worth it, the same with foresight. */
    private final Solver solver;

    private @Nullable Solver foreseeing;

    private final AtomicLong work = new AtomicLong();

    private Sweep(Solver solver) {
        this.solver = solver;
    }

    /** A sweep that gives for each setting the answer alone, without further stable points. */
    public static Sweep of(Network network) {
        return of(network, SolverOptions.USUAL.withoutOtherStablePoints());
    }

    /** A sweep that looks for each setting as closely and widely as told. */
    public static Sweep of(Network network, SolverOptions options) {
        return new Sweep(Solver.of(network, options));
    }

    /** The network it sweeps. */
    public Network network() {
        return solver.network();
    }

    /** Linear solutions and nodes eliminated so far: work that does not depend on the machine. */
    public long work() {
        return work.get();
    }

    /**
     * The outcome of each setting, in the order given, found on the calling thread.
     *
     * @throws IllegalArgumentException if a setting belongs to another network
     */
    public List<SolveOutcome> solve(List<Setting> settings) {
        return solve(settings, 1, Function.identity());
    }

    /**
     * What is to be kept of the outcome of each setting, in the order given. The answers of a million settings need not all be
     * kept.
     *
     * @param threads how many to use; above one, {@code keep} is called on several at a time
     * @param keep what to keep of an outcome
     * @throws IllegalArgumentException if a setting belongs to another network, or for less than one thread
     */
    public <R> List<R> solve(List<Setting> settings, int threads, Function<? super SolveOutcome, ? extends R> keep) {
        if (threads < 1) {
            throw new IllegalArgumentException("a sweep needs a thread or more, not " + threads);
        }
        int[] order = SweepOrder.of(settings);
        List<R> kept = new ArrayList<>(Collections.nCopies(order.length, null));
        int length = Math.clamp(order.length / FEW_LEGS, SHORT_LEG, LONG_LEG);
        int legs = (order.length + length - 1) / length;
        AtomicInteger next = new AtomicInteger();
        Solver beginning = settings.size() < MANY ? solver : foreseeing();
        Runnable walk = () -> {
            for (int leg = next.getAndIncrement(); leg < legs; leg = next.getAndIncrement()) {
                Solver fresh = beginning.fresh();
                for (int k = leg * length; k < Math.min(order.length, (leg + 1) * length); k++) {
                    kept.set(order[k], keep.apply(fresh.solve(settings.get(order[k]))));
                }
                work.addAndGet(fresh.work());
            }
        };
        int helpers = Math.min(threads, legs);
        if (helpers <= 1) {
            walk.run();
        } else {
            runAtOnce(helpers, walk);
        }
        return Collections.unmodifiableList(kept);
    }

    private synchronized Solver foreseeing() {
        if (foreseeing == null) {
            foreseeing = solver.foreseeing();
        }
        return foreseeing;
    }

    private static void runAtOnce(int count, Runnable walk) {
        try (ExecutorService threads = Executors.newFixedThreadPool(count)) {
            List<Future<?>> running = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                running.add(threads.submit(walk));
            }
            for (Future<?> each : running) {
                each.get();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while sweeping", interrupted);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failed);
        }
    }
}
