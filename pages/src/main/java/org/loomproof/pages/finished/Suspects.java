package org.loomproof.pages.finished;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.pages.desk.KeptFaults;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.meter.comeback.Comeback;
import org.loomproof.workshop.meter.comeback.ComebackWords;
import org.loomproof.workshop.meter.comeback.Finding;
import org.loomproof.workshop.meter.comeback.Look;
import org.loomproof.workshop.meter.comeback.NextLook;
import org.loomproof.workshop.meter.comeback.Probe;
import org.loomproof.workshop.meter.comeback.Shows;
import org.loomproof.workshop.meter.comeback.Suspect;
import org.loomproof.workshop.meter.comeback.Symptom;
import org.loomproof.workshop.meter.comeback.Taken;
import org.loomproof.workshop.meter.comeback.TakenReader;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.wiring.Situation;

/** What may be behind a comeback of one job's car, as it was planned. May be asked by several at once. */
public final class Suspects {

    /** Said of a measurement that cannot be made at this car; the word of a file of readings. */
    public static final String NOT_TAKEN = "not taken";

    /** Suspects less likely than this are counted and not listed. */
    private static final double LEAST_LISTED = 0.01;

    /** Seconds to get to what lies beside the controller. Common practice, no published source, as {@link Probe}'s. */
    private static final int CONTROLLER_SECONDS = 30;

    private final Brief brief;
    private final Plan plan;
    private final Comeback comeback;
    private final ComebackWords words;

    private Suspects(Brief given, Plan plan, KeptFaults faults) {
        this.brief = given.set(plan.settings());
        this.plan = plan;
        Map<String, Mishap> mishaps =
                Mishap.list(brief, plan).stream().collect(Collectors.toMap(Mishap::id, Function.identity()));
        Map<Mishap, Set<Symptom>> complaints = new LinkedHashMap<>();
        faults.wrongs()
                .forEach(wrong -> Optional.ofNullable(mishaps.get(wrong.id()))
                        .ifPresent(mishap -> complaints.put(mishap, wrong.complaints())));
        this.comeback = Comeback.of(brief, plan, complaints);
        this.words = new ComebackWords(brief);
    }

    /** Those of a plan whose faults were tried. */
    public static Suspects of(Brief given, Plan plan, KeptFaults faults) {
        return new Suspects(given, plan, faults);
    }

    /**
     * How a comeback stands.
     *
     * @param places where to look, in the order that finds it soonest
     * @param more suspects that are not listed, none above 1 %
     * @param next what to measure; empty when one is left, or when no meter on volts tells the rest apart
     * @param isSettled whether one suspect is left
     * @param readings what was measured
     */
    public record Standing(
            List<Place> places, int more, Optional<NextLook> next, boolean isSettled, List<Read> readings) {}

    /**
     * Suspects that are found at one place.
     *
     * @param panel behind which it lies; empty text for what lies beside the controller
     * @param isOutside true for what is nothing of the plan
     */
    public record Place(String panel, boolean isOutside, double probability, List<Suspect> suspects) {}

    /**
     * One reading.
     *
     * @param entry its name in the log
     * @param taken how it was understood; empty for what could not be measured
     * @param sound what a sound car shows there, in volts; empty where it is not held to any
     */
    public record Read(String entry, Work.ComebackReading said, Optional<Taken> taken, Optional<Double> sound) {}

    /** How it stands by these entries of a log, which are those of one comeback. */
    public synchronized Standing standing(Work.Complaint complaint, List<Noted> log) {
        List<Read> reads = new ArrayList<>();
        List<Taken> taken = new ArrayList<>();
        Set<Look> passed = new HashSet<>();
        for (Noted noted : log) {
            if (noted.work() instanceof Work.ComebackReading said) {
                Optional<Taken> understood = taken(said);
                understood.ifPresentOrElse(taken::add, () -> look(said).ifPresent(passed::add));
                Optional<Double> sound = understood.flatMap(this::sound);
                reads.add(new Read(noted.id(), said, understood, sound));
            }
        }
        Finding finding = comeback.find(symptoms(complaint), complaint.nowAndThen(), taken, passed);
        List<Suspect> listed = finding.suspects().stream()
                .filter(suspect -> suspect.probability() >= LEAST_LISTED)
                .toList();
        return new Standing(
                places(listed),
                finding.suspects().size() - listed.size(),
                finding.next(),
                finding.isSettled(),
                List.copyOf(reads));
    }

    /** What the owner complains of, as far as the words are ours. */
    public static Set<Symptom> symptoms(Work.Complaint complaint) {
        Map<String, Symptom> words = Words.all(Symptom.class);
        return Stream.of(complaint.symptoms().split(" ", -1))
                .map(words::get)
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Of these words those of symptoms. */
    public static List<String> known(List<String> words) {
        Set<String> ours = Words.all(Symptom.class).keySet();
        return words.stream().filter(ours::contains).distinct().toList();
    }

    private Optional<Double> sound(Taken taken) {
        return comeback.sound(List.of(taken)).getFirst() instanceof Shows.At(double volts)
                ? Optional.of(volts)
                : Optional.empty();
    }

    private Optional<Taken> taken(Work.ComebackReading said) {
        return read(said) instanceof Checked.Good<List<Taken>>(List<Taken> taken)
                ? taken.stream().findFirst()
                : Optional.empty();
    }

    /** A reading as it is understood, or every problem of it. */
    public synchronized Checked<List<Taken>> read(Work.ComebackReading said) {
        String line = Stream.of(said.place(), said.step(), said.value(), "V", said.battery())
                .map(cell -> cell.replaceAll("[;\"\\r\\n\\t]", " ").strip())
                .collect(Collectors.joining(";"));
        return new TakenReader(comeback)
                .read(new SourceText("reading", "wire;step;value;unit;battery\n" + line + "\n"));
    }

    /** The measurement that a reading is of; empty where there is none such at this car. */
    public synchronized Optional<Look> look(Work.ComebackReading said) {
        return comeback.words()
                .read(said.step())
                .flatMap(when -> comeback.looks().stream()
                        .filter(look -> look.at().name().equals(said.place())
                                && look.when().equals(when))
                        .findFirst());
    }

    /** Where a measurement may be made. */
    public synchronized List<Probe> probes() {
        return comeback.looks().stream().map(Look::at).distinct().toList();
    }

    /** The steps at which a measurement may be made, as they are written. */
    public synchronized List<String> steps() {
        return comeback.words().accepted();
    }

    /** A step as it is written. */
    public synchronized String step(Situation when) {
        return comeback.words().word(when);
    }

    /** Words for what to do. */
    public ComebackWords words() {
        return words;
    }

    /** The places, that first where the most is found for the least time: so the cause is found soonest on average. */
    private List<Place> places(List<Suspect> suspects) {
        Map<String, List<Suspect>> byPanel = new LinkedHashMap<>();
        List<Suspect> outside = new ArrayList<>();
        for (Suspect suspect : suspects) {
            if (suspect.causes().getFirst().isElsewhere()) {
                outside.add(suspect);
            } else {
                byPanel.computeIfAbsent(panel(suspect), panel -> new ArrayList<>())
                        .add(suspect);
            }
        }
        List<Place> places = new ArrayList<>();
        byPanel.forEach((panel, members) -> places.add(new Place(panel, false, sum(members), members)));
        places.sort(Comparator.comparingDouble((Place place) -> place.probability() / seconds(place.panel()))
                .reversed());
        if (!outside.isEmpty()) {
            places.add(new Place("", true, sum(outside), outside));
        }
        return List.copyOf(places);
    }

    private static double sum(List<Suspect> suspects) {
        return suspects.stream().mapToDouble(Suspect::probability).sum();
    }

    private static int seconds(String panel) {
        return panel.isEmpty() ? CONTROLLER_SECONDS : CONTROLLER_SECONDS + Probe.PANEL_SECONDS;
    }

    /** The panel that comes off for a suspect; empty text for what lies beside the controller. */
    private String panel(Suspect suspect) {
        Set<String> names = new LinkedHashSet<>();
        suspect.causes().getFirst().mishaps().getFirst().names().forEach(name -> names.add(name.toString()));
        Stream<CircuitId> named = brief.sheet().circuits().stream()
                .map(circuit -> circuit.id())
                .filter(id -> names.contains(id.toString()));
        Stream<CircuitId> joined = plan.wires().stream()
                .filter(wire -> names.contains(wire.id().toString()))
                .flatMap(Suspects::circuits);
        return Stream.concat(named, joined)
                .map(id -> brief.sheet().circuit(id))
                .map(circuit -> circuit.where().panel().isBlank()
                        ? circuit.id().toString()
                        : circuit.where().panel())
                .findFirst()
                .orElse("");
    }

    private static Stream<CircuitId> circuits(AddedWire wire) {
        return Stream.of(wire.from(), wire.to()).flatMap(end -> switch (end) {
            case End.Tap(CircuitId circuit) -> Stream.of(circuit);
            case End.CutBefore(CircuitId circuit) -> Stream.of(circuit);
            case End.CutAfter(CircuitId circuit) -> Stream.of(circuit);
            case End.OfLead lead -> Stream.empty();
            case End.OfPart part -> Stream.empty();
            case End.Body body -> Stream.empty();
        });
    }
}
