package org.loomproof.workshop.meter.comeback;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** Chooses what to measure next: the look that is expected to lessen what is not known by most bits a second. */
final class Choice {

    /** One suspect is left when it is there with this probability. */
    private static final double SETTLED = 0.95;

    /** A look that tells less than this is not worth the walk. */
    private static final double LEAST_BITS = 0.08;

    /** Suspects less likely than this all together are left out when looks are weighed. */
    private static final double TAIL = 0.02;

    /** Answers that lie closer than so many volts count as one. */
    private static final double APART_VOLTS = 1.0;

    private static final double BATTERY = SupplyPoint.REST.volts().value();

    private final Looks looks;
    private final List<Weighed> ranked;
    private final List<Weighed> likely;
    private final Set<Symptom> said;
    private final List<Taken> taken;
    private final Set<Look> passed;

    Choice(Looks looks, List<Weighed> ranked, Set<Symptom> said, List<Taken> taken, Set<Look> passed) {
        this.looks = looks;
        this.ranked = ranked;
        this.said = Set.copyOf(said);
        this.taken = taken;
        this.passed = Set.copyOf(passed);
        this.likely = likely(ranked);
    }

    private static List<Weighed> likely(List<Weighed> ranked) {
        List<Weighed> kept = new ArrayList<>();
        double sum = 0;
        for (Weighed each : ranked) {
            if (sum < 1 - TAIL) {
                kept.add(each);
                sum += each.probability();
            }
        }
        return kept;
    }

    Finding finding() {
        List<Suspect> suspects =
                ranked.stream().map(each -> each.suspect(taken)).toList();
        boolean settled = !taken.isEmpty() && isThere(ranked.getFirst().causes()) >= SETTLED;
        return new Finding(suspects, settled && explainsAll() ? Optional.empty() : next(), settled);
    }

    /** Whether the likeliest causes do all that the owner complains of; what they do not do speaks for one more. */
    private boolean explainsAll() {
        List<Cause> causes = ranked.getFirst().causes();
        return causes.getFirst().isElsewhere()
                || said.stream()
                        .allMatch(symptom -> causes.stream()
                                .anyMatch(cause -> cause.symptoms().contains(symptom)));
    }

    /** How likely these causes are there, whatever else is there too. */
    private double isThere(List<Cause> causes) {
        return ranked.stream()
                .filter(each -> each.causes().containsAll(causes))
                .mapToDouble(Weighed::probability)
                .sum();
    }

    private Optional<NextLook> next() {
        Set<Probe> reached = Looks.reached(taken);
        return looks.list().stream()
                .filter(look -> !passed.contains(look))
                .filter(look -> taken.stream().noneMatch(each -> each.look().equals(look)))
                .map(look -> weigh(look, looks.seconds(look, reached)))
                .filter(next -> next.bits() >= LEAST_BITS)
                .max(Comparator.comparingDouble(next -> next.bits() / next.seconds()));
    }

    /** Suspects of which the meter shows about the same. */
    private static final class Group {
        private final double low;
        private double high;
        private double probability;
        private final List<Weighed> members = new ArrayList<>();

        Group(double low) {
            this.low = low;
            this.high = low;
        }

        void add(Weighed each, double volts) {
            high = volts;
            probability += each.probability();
            members.add(each);
        }

        NextLook.Answer answer(double all) {
            Suspect likeliest = members.stream()
                    .max(Comparator.comparingDouble(Weighed::probability))
                    .orElseThrow()
                    .suspect(List.of());
            return new NextLook.Answer(low, high, probability / all, likeliest);
        }
    }

    private record Placed(Weighed suspect, double volts) {}

    private NextLook weigh(Look look, double seconds) {
        List<Placed> placed = new ArrayList<>();
        for (Weighed each : likely) {
            switch (each.car().shows(look, BATTERY)) {
                case Shows.At(double volts) -> placed.add(new Placed(each, volts));
                case Shows.Floating floating -> placed.add(new Placed(each, 0));
                case Shows.Anything anything -> {}
            }
        }
        placed.sort(Comparator.comparingDouble(Placed::volts));
        List<Group> groups = new ArrayList<>();
        for (Placed each : placed) {
            if (groups.isEmpty() || each.volts() - groups.getLast().high > APART_VOLTS) {
                groups.add(new Group(each.volts()));
            }
            groups.getLast().add(each.suspect(), each.volts());
        }
        double all = likely.stream().mapToDouble(Weighed::probability).sum();
        double bits = groups.stream()
                .mapToDouble(group -> entropy(group.probability / all))
                .sum();
        List<NextLook.Answer> answers = groups.stream()
                .map(group -> group.answer(all))
                .sorted(Comparator.comparingDouble(NextLook.Answer::probability).reversed())
                .toList();
        return new NextLook(look, seconds, groups.size() < 2 ? 0 : bits, answers);
    }

    private static double entropy(double p) {
        return p <= 0 ? 0 : -p * Math.log(p) / Math.log(2);
    }
}
