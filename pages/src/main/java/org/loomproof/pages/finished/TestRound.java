package org.loomproof.pages.finished;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.desk.KeptFaults.Wrong;
import org.loomproof.pages.finished.TestStep.Phase;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;

/**
 * The tests of one finished car as far as they have come: first the computed order, then what is looked at instead, then the panels
 * and some tests again, what is checked last, and the sleep current.
 *
 * @param of which plan, and which time: results of another count for nothing
 * @param steps in the order in which they are done
 */
public record TestRound(String of, List<TestStep> steps) {

    /** What putting panels back can do to the loom: kinds of fault. Common practice, no published source. */
    private static final Set<String> OF_PANELS =
            Set.of("wire-open", "poor-joint", "chafed-to-body", "chafed-to-supply");

    /** Checked last of all; the ends of message keys. */
    private static final List<String> LAST = List.of("lamps", "range", "settings", "slip");

    private static final String SLEEP = "sleep-current";

    /**
     * How far it has come.
     *
     * @param of which plan, and which time
     * @param log the entries that count, the oldest first
     */
    public static TestRound in(KeptFaults faults, String of, List<Noted> log) {
        Map<String, Noted> results = new HashMap<>();
        for (Noted noted : log) {
            if (noted.work() instanceof Work.TestResult result && result.of().equals(of)) {
                results.put(result.test(), noted);
            }
        }
        return new TestRound(of, new Builder(faults, results).steps());
    }

    /** Puts the steps together. */
    private record Builder(KeptFaults faults, Map<String, Noted> results) {

        List<TestStep> steps() {
            List<TestStep> steps = new ArrayList<>();
            tests().stream()
                    .filter(t -> !test(t).isSleep())
                    .forEach(t -> steps.add(step(test(t).id(), phase(test(t).kind()), t)));
            looks().forEach(look -> steps.add(plain("look " + look, Phase.LOOK, List.of(look))));
            steps.add(plain("panels", Phase.PANELS, List.of()));
            again().forEach(t -> steps.add(step("again " + test(t).id(), Phase.AGAIN, t)));
            LAST.forEach(last -> steps.add(plain("last " + last, Phase.LAST, List.of())));
            List<Integer> sleeps =
                    tests().stream().filter(t -> test(t).isSleep()).toList();
            sleeps.forEach(t -> steps.add(step(SLEEP, Phase.SLEEP, t)));
            if (sleeps.isEmpty()) {
                steps.add(plain(SLEEP, Phase.SLEEP, List.of()));
            }
            return List.copyOf(steps);
        }

        /** As on paper: what is measured dead first. */
        private List<Integer> tests() {
            return IntStream.range(0, faults.tests().size())
                    .boxed()
                    .sorted(Comparator.comparingInt(t -> HandTest.Kind.inOrder().indexOf(test(t).kind())))
                    .toList();
        }

        private KeptFaults.Test test(int place) {
            return faults.tests().get(place);
        }

        private TestStep step(String id, Phase phase, int place) {
            KeptFaults.Test test = test(place);
            return new TestStep(id, phase, place + 1, test.from().word(), test.steps(), test.expected(), noted(id));
        }

        private TestStep plain(String id, Phase phase, List<String> todo) {
            return new TestStep(id, phase, 0, "", todo, List.of(), noted(id));
        }

        private Optional<Noted> noted(String id) {
            return Optional.ofNullable(results.get(id));
        }

        /** Each look once, for all that it stands for. */
        private Set<String> looks() {
            return faults.wrongs().stream()
                    .filter(wrong -> wrong.noticedBy().isEmpty() && wrong.severity() != Severity.NONE)
                    .map(Wrong::inspection)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
        }

        /**
         * Tests by hand that together notice all that putting the panels back can do and any test by hand notices: each time the one
         * that notices most of what is left.
         */
        private List<Integer> again() {
            List<Integer> byHand = tests().stream()
                    .filter(t -> test(t).kind() == HandTest.Kind.BY_HAND && !test(t).isSleep())
                    .toList();
            List<Wrong> left = new ArrayList<>(faults.wrongs().stream()
                    .filter(wrong -> !wrong.isSlip()
                            && OF_PANELS.contains(wrong.id().split(" ", 2)[0])
                            && wrong.noticedBy().stream().anyMatch(byHand::contains))
                    .toList());
            Set<Integer> chosen = new HashSet<>();
            while (!left.isEmpty()) {
                int most = byHand.stream()
                        .max(Comparator.comparingLong(t -> noticed(t, left)))
                        .orElseThrow();
                chosen.add(most);
                left.removeIf(wrong -> wrong.noticedBy().contains(most));
            }
            return byHand.stream().filter(chosen::contains).toList();
        }

        private static long noticed(int test, List<Wrong> left) {
            return left.stream()
                    .filter(wrong -> wrong.noticedBy().contains(test))
                    .count();
        }

        private static Phase phase(HandTest.Kind kind) {
            return switch (kind) {
                case BATTERY_OFF -> Phase.BATTERY_OFF;
                case BY_HAND -> Phase.BY_HAND;
                case INTERVENING -> Phase.INTERVENING;
                case WITH_METER -> Phase.WITH_METER;
            };
        }
    }

    /** The step of that id. */
    public Optional<TestStep> step(String id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** What is next: the first that nobody has done, else the first that did not pass; nothing when all are closed. */
    public Optional<TestStep> next() {
        return steps.stream()
                .filter(step -> step.noted().isEmpty())
                .findFirst()
                .or(() -> steps.stream().filter(step -> !step.isClosed()).findFirst());
    }

    /** The steps in that state. */
    public List<TestStep> in(String state) {
        return steps.stream().filter(step -> step.state().equals(state)).toList();
    }

    /** True when every step passed, or a named person has said why it is left out. */
    public boolean isClosed() {
        return steps.stream().allMatch(TestStep::isClosed);
    }
}
