package org.loomproof.pages.bay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.pages.bay.CircuitAnswer.Kind;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.ReadingWords;
import org.loomproof.workshop.meter.expected.Touch;
import org.loomproof.workshop.meter.finding.NamedThings;
import org.loomproof.workshop.meter.finding.WireFinding;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.StepReader;
import org.loomproof.workshop.meter.role.WireRole;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Phrase;

/** One circuit of a plan under the meter: what must be shown, what was shown, and what that says. */
public final class MeteredCircuit {

    /** Below this the wire is not what the sheet says: one in a hundred cars. */
    private static final double NOT_IT = 0.01;

    private final Brief brief;
    private final Plan plan;
    private final Circuit circuit;
    private final CircuitReadings expected;
    private final Taken taken;
    private final Optional<WireFinding> finding;
    private final ReadingWords words;

    MeteredCircuit(Brief brief, Plan plan, CircuitReadings expected, Taken taken, Optional<WireFinding> finding) {
        this.brief = brief;
        this.plan = plan;
        this.circuit = brief.sheet().circuit(expected.circuit());
        this.expected = expected;
        this.taken = taken;
        this.finding = finding;
        this.words = new ReadingWords(brief);
    }

    /** What must be shown on the wire before anything is joined, with what was; what was read otherwise stands behind. */
    public List<MeterRow> rows() {
        List<MeterRow> rows = new ArrayList<>(expected.whole().stream()
                .map(reading -> row(reading, Taken.WHOLE))
                .toList());
        for (Noted one : taken.at(circuit.id().value(), Taken.WHOLE)) {
            MeterAt at = MeterAt.of(Taken.taken(one));
            if (rows.stream().noneMatch(row -> row.at().isSameAs(at))) {
                rows.add(new MeterRow(
                        at,
                        Phrase.of("pages.bay.at.thing", at.step()),
                        Phrase.of("pages.bay.step.asked"),
                        List.of(shown(one, true))));
            }
        }
        answer().next()
                .filter(next -> rows.stream().noneMatch(row -> row.at().isSameAs(next.at())))
                .ifPresent(next ->
                        rows.add(new MeterRow(next.at(), next.what(), Phrase.of("pages.bay.step.asked"), List.of())));
        return List.copyOf(rows);
    }

    private MeterRow row(ExpectedReading reading, String end) {
        MeterAt at = MeterAt.of(reading.when(), brief.sheet());
        List<MeterRow.Shown> read = taken.at(circuit.id().value(), end).stream()
                .filter(one -> at.isSameAs(MeterAt.of(Taken.taken(one))))
                .map(one -> shown(one, isAsExpected(reading, one)))
                .toList();
        return new MeterRow(at, words.when(reading), ReadingWords.shows(reading), read);
    }

    private MeterRow.Shown shown(Noted one, boolean isAsExpected) {
        Work.ReadingTaken reading = Taken.taken(one);
        return new MeterRow.Shown(one.id(), (reading.value() + " " + reading.unit()).strip(), isAsExpected);
    }

    private boolean isAsExpected(ExpectedReading reading, Noted one) {
        return taken.find(one).filter(read -> Taken.isAsExpected(reading, read)).isPresent();
    }

    /** The answer to all readings so far. */
    public CircuitAnswer answer() {
        if (expected.whole().isEmpty()) {
            return new CircuitAnswer(
                    Kind.LEAVE_ALONE, List.of(Phrase.of("readings.never")), Optional.empty(), List.of());
        }
        if (finding.isEmpty()) {
            return new CircuitAnswer(Kind.NOTHING_YET, List.of(), firstUnread(), List.of());
        }
        WireFinding found = finding.orElseThrow();
        List<WireRole> meant = WireRole.of(circuit.role());
        double chance = meant.stream()
                .mapToDouble(role -> found.chances().getOrDefault(role, 0.0))
                .sum();
        List<Phrase> wrong = wrong();
        List<Phrase> reasons = new ArrayList<>(wrong);
        if (found.connect().lacks().stream().anyMatch(lack -> lack.key().equals("meter.forbidden"))) {
            return new CircuitAnswer(Kind.LEAVE_ALONE, found.cautions(), Optional.empty(), List.of());
        }
        if (isKnownByReadings(meant) && chance < NOT_IT) {
            found.not().stream().filter(out -> meant.contains(out.role())).forEach(out -> reasons.add(out.by()));
            reasons.addAll(found.because());
            return new CircuitAnswer(Kind.NOT_IT, reasons, Optional.empty(), found.cautions());
        }
        boolean decided = isKnownByReadings(meant)
                ? meant.contains(found.best()) && found.connect().allowed()
                : firstUnread().isEmpty();
        if (decided && wrong.isEmpty()) {
            return new CircuitAnswer(Kind.THIS_IS_IT, found.because(), Optional.empty(), found.cautions());
        }
        if (isKnownByReadings(meant)) {
            reasons.addAll(found.connect().lacks());
        }
        return new CircuitAnswer(Kind.ONE_MORE, reasons, next(found), found.cautions());
    }

    /** True when the readings contradict the sheet: it is another wire, or all that must be shown was read and not all of it was shown. */
    public boolean isContradicted() {
        return answer().kind() == Kind.NOT_IT
                || (!expected.whole().isEmpty() && firstUnread().isEmpty() && !wrong().isEmpty());
    }

    /** What the sheet calls something else is in no drawn car: only what must be shown can tell. */
    private static boolean isKnownByReadings(List<WireRole> meant) {
        return meant.stream().anyMatch(role -> role != WireRole.NONE_OF_THESE);
    }

    /** The last reading at each step, where it is not what must be shown. */
    private List<Phrase> wrong() {
        List<Phrase> wrong = new ArrayList<>();
        for (MeterRow row : expected.whole().stream()
                .map(reading -> row(reading, Taken.WHOLE))
                .toList()) {
            if (!row.read().isEmpty() && !row.read().getLast().isAsExpected()) {
                wrong.add(Phrase.of(
                        "pages.bay.step.wrong", row.when(), row.read().getLast().value(), row.shows()));
            }
        }
        return wrong;
    }

    private Optional<CircuitAnswer.Next> next(WireFinding found) {
        Optional<MeterTest> test =
                found.next().map(choice -> choice.test()).or(() -> found.split().map(WireFinding.Split::test));
        return test.map(this::asked).or(this::firstUnread);
    }

    /** In the words of the step that must be shown anyway, where it is one. */
    private CircuitAnswer.Next asked(MeterTest test) {
        StepReader steps = new StepReader(NamedThings.of(brief.sheet()));
        return expected.whole().stream()
                .filter(reading -> test.kind() == MeterTest.Kind.VOLTS)
                .map(reading -> new CircuitAnswer.Next(MeterAt.of(reading.when(), brief.sheet()), words.when(reading)))
                .filter(next -> steps.read(next.at().step())
                        .map(Step::plain)
                        .filter(test.step()::equals)
                        .isPresent())
                .findFirst()
                .orElseGet(() -> new CircuitAnswer.Next(
                        MeterAt.of(test),
                        Phrase.of(
                                "meter.test." + test.kind().word(), test.step().word())));
    }

    private Optional<CircuitAnswer.Next> firstUnread() {
        return expected.whole().stream()
                .filter(reading -> row(reading, Taken.WHOLE).read().isEmpty())
                .findFirst()
                .map(reading -> new CircuitAnswer.Next(MeterAt.of(reading.when(), brief.sheet()), words.when(reading)));
    }

    /** How far its cut has come, where the plan cuts it. */
    public CutStand cut(List<Noted> standing) {
        List<Work.CutEvidence> evidence = standing.stream()
                .filter(one -> one.work() instanceof Work.CutEvidence seen
                        && seen.circuit().equals(circuit.id().value()))
                .map(one -> (Work.CutEvidence) one.work())
                .toList();
        boolean isCut = standing.stream()
                .anyMatch(one -> one.work() instanceof Work.CutMade made
                        && made.circuit().equals(circuit.id().value()));
        return new CutStand(
                lacks(evidence),
                evidence.stream().map(Work.CutEvidence::seen).distinct().toList(),
                isCut,
                List.of(end(Touch.End.BEFORE_CUT, standing), end(Touch.End.AFTER_CUT, standing)));
    }

    /** By the readings, of which one at least must speak for it; what somebody saw is a second piece of evidence, never the first. */
    private List<Phrase> lacks(List<Work.CutEvidence> evidence) {
        CircuitAnswer answer = answer();
        if (!answer.isIt()) {
            return List.of(Phrase.of("pages.bay.cut.not-known"));
        }
        List<Phrase> lacks =
                new ArrayList<>(finding.filter(found -> !found.cut().allowed())
                        .map(found -> found.cut().lacks())
                        .orElse(List.of()));
        boolean hasSecond = !evidence.isEmpty();
        lacks.removeIf(lack -> lack.key().equals("meter.pieces") && hasSecond);
        return lacks;
    }

    private CutStand.End end(Touch.End end, List<Noted> standing) {
        String word = end == Touch.End.BEFORE_CUT ? "before-cut" : "after-cut";
        List<MeterRow> rows = expected.cut().stream()
                .filter(reading -> reading.at().end() == end && isTelling(reading))
                .map(reading -> row(reading, word))
                .toList();
        boolean isSaid = standing.stream()
                .anyMatch(one -> one.work() instanceof Work.EndProven proven
                        && proven.circuit().equals(circuit.id().value())
                        && proven.end().equals(word));
        boolean isProven = rows.isEmpty()
                ? isSaid
                : rows.stream()
                                .noneMatch(row -> !row.read().isEmpty()
                                        && !row.read().getLast().isAsExpected())
                        && rows.stream().anyMatch(row -> !row.read().isEmpty());
        return new CutStand.End(word, ReadingWords.at(new Touch(circuit.id(), end)), joins(end), rows, isProven);
    }

    /** True where the other end must show something else in the same situation. */
    private boolean isTelling(ExpectedReading reading) {
        return expected.cut().stream()
                .filter(other ->
                        other.at().end() != reading.at().end() && other.when().equals(reading.when()))
                .anyMatch(other -> Taken.areApart(reading, other));
    }

    /** The added wires that go to an end. */
    private List<CutStand.Join> joins(Touch.End end) {
        End place = end == Touch.End.BEFORE_CUT ? new End.CutBefore(circuit.id()) : new End.CutAfter(circuit.id());
        return plan.wires().stream()
                .filter(wire -> wire.from().equals(place) || wire.to().equals(place))
                .map(wire -> new CutStand.Join(wire.id(), wire.from().equals(place) ? wire.to() : wire.from()))
                .toList();
    }
}
