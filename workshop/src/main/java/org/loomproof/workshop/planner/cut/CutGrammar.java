package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.cut.CutWord.Drive;
import org.loomproof.workshop.planner.grammar.Coil;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/**
 * Goes through every word within the bound. What a wire's contacts do to it does not depend on what lies in the other wires, nor
 * on what works the coils: each is judged by itself, and words that only combine what was judged are counted.
 */
public final class CutGrammar {

    /** The bound: what one lead may work. */
    public static final int MOST_RELAYS = 2;

    private static final Map<Cuts, Enumeration<CutWord>> WALKED = new ConcurrentHashMap<>();

    private CutGrammar() {}

    /** Choices for one place of a word, of which the first reason that applies leaves one out. */
    private record Judged<T>(List<T> offered, Map<LeftOut, Long> leftOut, long all) {

        static <T> Judged<T> of(List<T> choices, Function<T, Optional<LeftOut>> judge) {
            List<T> offered = new ArrayList<>();
            Map<LeftOut, Long> leftOut = new EnumMap<>(LeftOut.class);
            for (T choice : choices) {
                judge.apply(choice)
                        .ifPresentOrElse(reason -> leftOut.merge(reason, 1L, Long::sum), () -> offered.add(choice));
            }
            return new Judged<>(offered, leftOut, choices.size());
        }
    }

    /** All words for those wires and outputs, fewest parts first. */
    public static Enumeration<CutWord> of(Cuts cuts) {
        Enumeration<CutWord> known = WALKED.get(cuts);
        if (known == null) {
            known = walked(cuts);
            WALKED.put(cuts, known);
        }
        return known;
    }

    private static Enumeration<CutWord> walked(Cuts cuts) {
        int leads = cuts.outputs().size();
        if (cuts.wires().size() > MOST_RELAYS) {
            throw new IllegalArgumentException("more wires than relays: " + cuts);
        }
        List<Judged<?>> places = new ArrayList<>();
        List<List<List<Throw>>> wires = new ArrayList<>();
        for (CutWire wire : cuts.wires()) {
            Judged<List<Throw>> judged = Judged.of(chains(leads), chain -> CutJudge.leaveOut(wire, chain));
            places.add(judged);
            wires.add(judged.offered());
        }
        List<List<Drive>> drives = new ArrayList<>();
        for (Cuts.Output output : cuts.outputs()) {
            Judged<Drive> judged = Judged.of(drives(), drive -> CutJudge.leaveOut(output, drive));
            places.add(judged);
            drives.add(judged.offered());
        }
        List<CutWord> words = new ArrayList<>();
        for (List<List<Throw>> chosen : product(wires)) {
            product(drives).forEach(each -> words.add(new CutWord(chosen, each)));
        }
        words.sort(Comparator.comparingInt(CutWord::parts).thenComparing(CutWord::toString));
        return new Enumeration<>(
                places.stream().mapToLong(Judged::all).reduce(1, (a, b) -> a * b), leftOut(places), words);
    }

    /** How many words there are for so many wires and leads. */
    static long count(int wires, int leads) {
        long words = 1;
        for (int i = 0; i < wires; i++) {
            words *= chains(leads).size();
        }
        for (int i = 0; i < leads; i++) {
            words *= drives().size();
        }
        return words;
    }

    /** A word is left out for the first place that leaves it out, whatever stands in the places behind. */
    private static Map<LeftOut, Long> leftOut(List<Judged<?>> places) {
        Map<LeftOut, Long> leftOut = new EnumMap<>(LeftOut.class);
        long before = 1;
        for (int i = 0; i < places.size(); i++) {
            long behind = places.stream().skip(i + 1L).mapToLong(Judged::all).reduce(1, (a, b) -> a * b);
            for (Map.Entry<LeftOut, Long> each : places.get(i).leftOut().entrySet()) {
                long words = before * each.getValue() * behind;
                if (words > 0) {
                    leftOut.merge(each.getKey(), words, Long::sum);
                }
            }
            before *= places.get(i).offered().size();
        }
        return leftOut;
    }

    /** Tells every word for so many wires and leads, once each. */
    static void each(int wires, int leads, Consumer<CutWord> told) {
        List<List<List<Throw>>> chains = new ArrayList<>();
        List<List<Drive>> drives = new ArrayList<>();
        for (int i = 0; i < wires; i++) {
            chains.add(chains(leads));
        }
        for (int i = 0; i < leads; i++) {
            drives.add(drives());
        }
        List<List<Drive>> allDrives = product(drives);
        product(chains).forEach(chosen -> allDrives.forEach(each -> told.accept(new CutWord(chosen, each))));
    }

    /** What may lie in one wire: at most one contact of each lead, in any order. */
    static List<List<Throw>> chains(int leads) {
        List<List<Throw>> all = new ArrayList<>();
        all.add(List.of());
        List<List<Throw>> longest = List.of(List.of());
        for (int length = 1; length <= leads; length++) {
            List<List<Throw>> longer = new ArrayList<>();
            for (List<Throw> chain : longest) {
                for (int lead = 0; lead < leads; lead++) {
                    int worked = lead;
                    if (chain.stream().noneMatch(each -> each.lead() == worked)) {
                        for (Throw next : Throw.all(lead)) {
                            List<Throw> with = new ArrayList<>(chain);
                            with.add(next);
                            longer.add(List.copyOf(with));
                        }
                    }
                }
            }
            all.addAll(longer);
            longest = longer;
        }
        return all;
    }

    /** What may work the coils of one lead. */
    static List<Drive> drives() {
        List<Drive> all = new ArrayList<>();
        for (Side pole : Side.values()) {
            all.add(new Drive(new Coil(Coil.Driver.SOURCE, pole, false), Buffering.NONE));
            all.add(new Drive(new Coil(Coil.Driver.SOURCE, pole, true), Buffering.NONE));
        }
        Coil buffered = new Coil(Coil.Driver.BUFFER, Side.HIGH, false);
        all.add(new Drive(buffered, Buffering.ON_GROUND));
        all.add(new Drive(buffered, Buffering.ON_SUPPLY));
        return all;
    }

    private static <T> List<List<T>> product(List<List<T>> places) {
        List<List<T>> all = List.of(List.of());
        for (List<T> place : places) {
            List<List<T>> longer = new ArrayList<>();
            for (List<T> before : all) {
                for (T next : place) {
                    List<T> with = new ArrayList<>(before);
                    with.add(next);
                    longer.add(with);
                }
            }
            all = longer;
        }
        return all;
    }
}
