package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Note;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.cut.CutWord;
import org.loomproof.workshop.planner.cut.LegWord;
import org.loomproof.workshop.planner.cut.Throw;
import org.loomproof.workshop.planner.rule.Searched;
import org.loomproof.workshop.weigh.PlannedJob;

/** What the plan of every example does to a factory wire, or reads of one, is, read from its parts and wires alone, a word that was enumerated. */
class ExampleWordsTest {

    private static final AtomicInteger READ = new AtomicInteger();
    private static final AtomicInteger CUTS = new AtomicInteger();
    private static final AtomicInteger LOADS = new AtomicInteger();
    private static final AtomicInteger ACTUATORS = new AtomicInteger();
    private static final AtomicLong PROVEN = new AtomicLong();

    static List<Path> examples() {
        return ExampleFiles.list();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyCouplingIsAWordThatTheGrammarOffers(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        PROVEN.addAndGet(job.search().plansProven());

        for (Searched searched : job.search().leads()) {
            if (isCut(searched)) {
                readCuts(job, searched);
            } else if (readsOneKind(job, searched.lead())
                    && job.plan().findHookup(searched.lead()).orElseThrow() instanceof Hookup.Connect hookup
                    && hookup.circuits().containsAll(searched.circuits())
                    && !hookup.coupling().startsWith("coupling.added-")) {
                for (CircuitId target : searched.circuits()) {
                    assertThat(List.<Object>copyOf(searched.enumeration().words()))
                            .as("%s of %s", searched.lead(), folder.getFileName())
                            .contains(
                                    isInput(folder, searched.lead())
                                            ? WordReader.readInput(job.plan(), hookup, target)
                                            : WordReader.read(job.plan(), hookup, target));
                    READ.incrementAndGet();
                }
            }
        }
    }

    /** What comes out of the box hangs on its output by a word as well, the one of either pole that it may have for good. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyLoadOutOfTheBoxIsWorkedByAWordThatTheGrammarOffers(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        for (Hookup hookup : job.plan().hookups()) {
            if (hookup instanceof Hookup.Connect connect && connect.serves() != Wish.LOCKS) {
                Set<Object> offered = job.search().leads().stream()
                        .filter(searched -> searched.lead().equals(connect.lead())
                                && searched.circuits().isEmpty())
                        .flatMap(searched -> searched.enumeration().words().stream())
                        .collect(Collectors.toSet());
                for (AddedPartId id : connect.parts()) {
                    if (job.plan().findPart(id).orElseThrow() instanceof AddedPart.Load load) {
                        assertThat(offered)
                                .as("%s of %s", id, folder.getFileName())
                                .contains(WordReader.read(job.plan(), connect, load));
                        LOADS.incrementAndGet();
                    }
                }
            }
        }
    }

    /** An actuator that turns either way hangs between two contacts, as in a word that was offered for its two legs. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyActuatorOutOfTheBoxIsWorkedByAWordThatTheGrammarOffers(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        Set<List<CutReader.Leg>> offered = job.search().leads().stream()
                .flatMap(searched -> searched.enumeration().words().stream())
                .filter(LegWord.class::isInstance)
                .map(word -> legs((LegWord) word))
                .collect(Collectors.toSet());
        for (Hookup hookup : job.plan().hookups()) {
            if (hookup instanceof Hookup.Connect connect && connect.serves() == Wish.LOCKS) {
                for (AddedPartId id : connect.parts()) {
                    if (job.plan().findPart(id).orElseThrow() instanceof AddedPart.Load load) {
                        assertThat(offered)
                                .as("%s of %s", id, folder.getFileName())
                                .contains(List.of(
                                        CutReader.readLeg(job.plan(), load, "+"),
                                        CutReader.readLeg(job.plan(), load, "-")));
                        ACTUATORS.incrementAndGet();
                    }
                }
            }
        }
    }

    private static List<CutReader.Leg> legs(LegWord word) {
        return IntStream.range(0, 2)
                .mapToObj(leg -> new CutReader.Leg(
                        word.word().wires().get(leg).getFirst().gives(),
                        word.rests().get(leg)))
                .toList();
    }

    private static boolean isCut(Searched searched) {
        return searched.enumeration().words().stream().anyMatch(CutWord.class::isInstance);
    }

    /** What lies in a cut wire lies so in a word that was offered. */
    private static void readCuts(PlannedJob job, Searched searched) {
        Set<List<Throw>> offered = searched.enumeration().words().stream()
                .flatMap(word -> ((CutWord) word).wires().stream())
                .collect(Collectors.toSet());
        for (CircuitId circuit : searched.circuits()) {
            List<List<Throw>> ways = CutReader.read(job.plan(), circuit);
            if (!ways.isEmpty()) {
                assertThat(ways).as("%s in %s", circuit, job.plan().wires()).anyMatch(offered::contains);
                CUTS.incrementAndGet();
            }
        }
    }

    /** Two kinds of wires on one input are two words, of which a reader of wires alone cannot tell which part is whose. */
    private static boolean readsOneKind(PlannedJob job, LeadId lead) {
        return job.search().leads().stream()
                        .filter(s -> s.lead().equals(lead) && !s.circuits().isEmpty())
                        .count()
                == 1;
    }

    private static boolean isInput(Path folder, LeadId lead) {
        return ExamplesAreReadTest.brief(folder).kit().lead(lead).port() instanceof Port.Input;
    }

    @AfterAll
    static void tellHowMany() {
        assertThat(READ.get()).as("couplings read").isGreaterThan(20);
        assertThat(LOADS.get()).as("loads out of the box").isGreaterThan(5);
        assertThat(ACTUATORS.get()).as("legs of actuators").isGreaterThan(5);
        assertThat(CUTS.get()).as("cut wires read").isGreaterThan(15);
        Note.that(CUTS.get() + " cut wires and " + READ.get() + " couplings and " + LOADS.get()
                + " added loads and " + ACTUATORS.get() + " actuators' legs in the examples are words of the grammar; "
                + PROVEN.get()
                + " whole plans were proven for " + examples().size() + " examples");
    }
}
