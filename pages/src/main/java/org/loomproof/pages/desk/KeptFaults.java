package org.loomproof.pages.desk;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.trial.Expected;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.fault.Slip;
import org.loomproof.workshop.meter.comeback.Comeback;
import org.loomproof.workshop.meter.comeback.Symptom;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.standby.Standby;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/**
 * What a run found of the faults and slips of a job's plan, kept beside its papers: in words, as whoever started the run reads
 * them. Trying them takes longest by far, and pages, test and comeback all ask for it.
 *
 * @param wrongs every fault and slip, the worst first
 * @param tests by which the finished car is passed, in the order in which they are done
 * @param minutes that the tests take without waiting
 * @param gap how many tests too many there may be at most
 * @param left how many faults and slips were not looked at
 * @param bounds every limit that was put on the search
 * @param mostAddedMilliamps by which the car may draw more asleep than it did before
 */
public record KeptFaults(
        List<Wrong> wrongs,
        List<Test> tests,
        double minutes,
        int gap,
        int left,
        List<String> bounds,
        double mostAddedMilliamps) {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double SECONDS_A_MINUTE = 60;
    private static final double MILLI = 1000;

    public KeptFaults {
        wrongs = List.copyOf(wrongs);
        tests = List.copyOf(tests);
        bounds = List.copyOf(bounds);
    }

    /**
     * One thing that may be wrong.
     *
     * @param id of the mishap
     * @param isSlip whether a hand made it; otherwise a part or joint failed
     * @param what is wrong
     * @param severity how bad that is
     * @param effects what comes of it
     * @param opens the fuses that open
     * @param undecided what could not be decided
     * @param noticedBy the places of the tests that notice it
     * @param inspection how it is found by looking
     * @param about the names of wires, parts, leads and circuits
     * @param complaints what an owner would say
     */
    public record Wrong(
            String id,
            boolean isSlip,
            String what,
            Severity severity,
            List<String> effects,
            List<String> opens,
            List<String> undecided,
            List<Integer> noticedBy,
            String inspection,
            List<String> about,
            Set<Symptom> complaints) {}

    /**
     * One test.
     *
     * @param id stable from one plan to the next
     * @param kind how much it takes
     * @param from what the controller does when it begins
     * @param steps what to do
     * @param expected what a car fitted as planned shows
     * @param isSleep whether it is the current of the sleeping car
     */
    public record Test(
            String id,
            HandTest.Kind kind,
            ControllerState from,
            List<String> steps,
            List<String> expected,
            boolean isSleep) {}

    /** What is kept of these. */
    static KeptFaults of(Brief brief, Plan plan, FaultProof faults, Messages messages) {
        Figure<Amps> standby = brief.kit().standby();
        double spread = standby.high().value() - standby.typical().value();
        double added = Standby.added(brief, plan, ControllerState.ARMED).value() + spread;
        return new KeptFaults(
                wrongs(brief, plan, faults, messages),
                tests(new Expected(brief, plan, faults, new Wording(messages))),
                faults.testOrder().seconds() / SECONDS_A_MINUTE,
                faults.testOrder().gap(),
                faults.left(),
                texts(faults.bounds(), messages),
                added * MILLI);
    }

    private static List<Wrong> wrongs(Brief brief, Plan plan, FaultProof faults, Messages messages) {
        Map<Mishap, Set<Symptom>> complaints = Comeback.complaints(brief, plan, faults);
        List<Wrong> wrongs = new ArrayList<>();
        for (int k = 0; k < faults.results().size(); k++) {
            MishapResult result = faults.results().get(k);
            Mishap mishap = result.mishap();
            wrongs.add(new Wrong(
                    mishap.id(),
                    mishap instanceof Slip,
                    messages.text(mishap.words()),
                    result.severity(),
                    texts(result.effects(), messages),
                    texts(result.opens(), messages),
                    texts(result.undecided(), messages),
                    faults.testOrder().noticedBy().get(k),
                    messages.text(faults.inspection(k)),
                    mishap.names().stream().map(Object::toString).toList(),
                    Objects.requireNonNull(complaints.get(mishap))));
        }
        return wrongs;
    }

    private static List<Test> tests(Expected expected) {
        List<HandTest> tests = expected.faults().testOrder().tests();
        return IntStream.range(0, tests.size())
                .mapToObj(place -> test(tests.get(place), expected, place))
                .toList();
    }

    private static Test test(HandTest test, Expected expected, int place) {
        return new Test(
                test.id(),
                test.kind(),
                test.from(),
                texts(test.steps(), expected.words().messages()),
                expected.lines(place),
                test.metered().filter(Expected::isSleep).isPresent());
    }

    private static List<String> texts(Collection<Phrase> phrases, Messages messages) {
        return phrases.stream().map(messages::text).toList();
    }

    /** What stands in a file as it was kept. */
    public static KeptFaults in(byte[] json) {
        try {
            return MAPPER.readValue(json, KeptFaults.class);
        } catch (IOException e) {
            throw new UncheckedIOException("a result of our own cannot be read", e);
        }
    }

    /** The file. */
    byte[] json() {
        try {
            return MAPPER.writeValueAsBytes(this);
        } catch (IOException e) {
            throw new UncheckedIOException("what is in memory cannot fail to be written", e);
        }
    }
}
