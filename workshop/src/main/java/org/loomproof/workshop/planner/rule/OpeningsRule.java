package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.explain.Terms;
import org.loomproof.workshop.words.Phrase;

/**
 * Every opening to be watched is read by the trigger input meant for it, or by another trigger input where the kit has none.
 * Of two inputs of opposite polarity the one that the car does not need is trimmed.
 */
public final class OpeningsRule implements Rule {

    private static final Wish WISH = Wish.WATCH_OPENINGS;
    private static final List<LeadRole> ROLES = List.of(LeadRole.DOOR_INPUT, LeadRole.HOOD_INPUT, LeadRole.TRUNK_INPUT);

    @Override
    public Set<LeadRole> roles() {
        return Set.copyOf(ROLES);
    }

    @Override
    public Set<Wish> wishes() {
        return Set.of(WISH);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        if (leads.isEmpty()) {
            return List.of();
        }
        if (!job.wants(WISH)) {
            return List.of(Question.settled(
                    "openings",
                    Option.of(
                            leads.stream().map(l -> Aside.notAskedFor(l, WISH)).toList())));
        }
        List<Operable> watched = job.brief().sheet().operables().stream()
                .filter(o -> o.isOpening() && job.brief().order().watched().contains(o.id()))
                .toList();
        List<Question> questions = new ArrayList<>();
        for (LeadRole role : ROLES) {
            List<Lead> inputs = ofRole(leads, role);
            List<Operable> here = watched.stream()
                    .filter(o -> inputFor(o, leads).filter(r -> r == role).isPresent())
                    .toList();
            if (!inputs.isEmpty()) {
                questions.add(new Question(
                        role.word(), here.isEmpty() ? List.of(nothingToWatch(job, inputs)) : ways(job, inputs, here)));
            }
        }
        List<Operable> blind =
                watched.stream().filter(o -> inputFor(o, leads).isEmpty()).toList();
        if (!blind.isEmpty()) {
            questions.add(Question.settled("openings-without-input", refusedFor(blind)));
        }
        return questions;
    }

    private static List<Lead> ofRole(List<Lead> leads, LeadRole role) {
        return leads.stream().filter(l -> l.role() == role).toList();
    }

    /** The role of the inputs that read an opening: its own where the kit has it, else the next best. */
    private static Optional<LeadRole> inputFor(Operable opening, List<Lead> leads) {
        List<LeadRole> order = switch (opening.kind()) {
            case DOOR -> List.of(LeadRole.DOOR_INPUT);
            case HOOD -> List.of(LeadRole.HOOD_INPUT, LeadRole.TRUNK_INPUT, LeadRole.DOOR_INPUT);
            case TRUNK -> List.of(LeadRole.TRUNK_INPUT, LeadRole.HOOD_INPUT, LeadRole.DOOR_INPUT);
            case KEY, CONTROL -> List.of();
        };
        return order.stream()
                .filter(role -> leads.stream().anyMatch(l -> l.role() == role && l.port() instanceof Port.Input))
                .findFirst();
    }

    /** An input for openings that the car does not have is never needed; one for openings nobody watches may be. */
    private static Option nothingToWatch(Job job, List<Lead> inputs) {
        return Option.of(inputs.stream()
                .map(l -> hasOpeningFor(job, l.role())
                        ? Aside.cap(l, Phrase.of("cap.nothing-to-watch"))
                        : Aside.trim(l, Phrase.of("trim.no-such-opening", Terms.leadRole(l.role()))))
                .toList());
    }

    private static boolean hasOpeningFor(Job job, LeadRole role) {
        return job.brief().sheet().operables().stream().anyMatch(o -> switch (o.kind()) {
            case DOOR -> role == LeadRole.DOOR_INPUT;
            case HOOD -> role == LeadRole.HOOD_INPUT;
            case TRUNK -> role == LeadRole.TRUNK_INPUT;
            case KEY, CONTROL -> false;
        });
    }

    private static Option refusedFor(List<Operable> blind) {
        List<String> names = blind.stream().map(o -> o.id().toString()).toList();
        return Option.refused(
                new Refusal(WISH, Phrase.of("refuse.no-input-for", names), Phrase.of("possible.no-input-for")),
                List.of());
    }

    private static List<Option> ways(Job job, List<Lead> inputs, List<Operable> openings) {
        Optional<Lead> low = find(job, inputs, Port.Active.LOW);
        Optional<Lead> high = find(job, inputs, Port.Active.HIGH);
        List<Lead> spare = inputs.stream()
                .filter(l -> !low.filter(l::equals).isPresent()
                        && !high.filter(l::equals).isPresent())
                .toList();
        Lead used = Stream.of(low, high).flatMap(Optional::stream).findFirst().orElseThrow();
        List<Decision> aside = spare.stream()
                .map(l -> l.port() instanceof Port.Input ? Aside.another(l, used) : Aside.misfit(l, WISH))
                .toList();
        return new TriggerInputs(job, low, high, aside).ways(openings);
    }

    /** The first input of that polarity; one that raises the alarm goes before one that does not. */
    private static Optional<Lead> find(Job job, List<Lead> inputs, Port.Active active) {
        Set<?> triggers = job.brief().kit().behaviour().triggers();
        List<Lead> fitting = inputs.stream()
                .filter(l -> l.port() instanceof Port.Input in && in.active() == active)
                .toList();
        return fitting.stream()
                .filter(l -> triggers.contains(l.id()))
                .findFirst()
                .or(() -> fitting.stream().findFirst());
    }
}
