package org.loomproof.workshop.planner.rule;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Piece;
import org.loomproof.workshop.planner.coupling.Source;
import org.loomproof.workshop.planner.grammar.ReadingCatalogue;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * A button or sensor without a plug of its own: what its contact goes to is read by the grammar like any other source. A dry
 * contact gets the pole that its input reads; a sensor is fed all the time, its light blow goes to an input that warns first and
 * its hard one to an input that sounds at once. Where the box holds nothing of which that is said, nothing is joined.
 */
public record BareSenderRule(LeadRole role, Extra.Kind kind, Wish wish, Set<Wish> wishes) implements Rule {

    /** Speaks for leads of a role, and what of the box hangs there; the first wish is the one that it serves. */
    public static BareSenderRule of(LeadRole role, Extra.Kind kind, Wish wish, Wish... more) {
        Set<Wish> all = new HashSet<>(Set.of(more));
        all.add(wish);
        return new BareSenderRule(role, kind, wish, Set.copyOf(all));
    }

    @Override
    public Set<LeadRole> roles() {
        return Set.of(role);
    }

    @Override
    public List<Question> questions(Job job, List<Lead> leads) {
        List<Wish> asked = wishes.stream().filter(job::wants).sorted().toList();
        Optional<Lead> plugged =
                job.listLeads(role).stream().filter(PluggedRule::isPlugged).findFirst();
        Optional<Extra> sender = job.listExtras(kind).stream()
                .filter(extra -> extra.contact().isPresent())
                .findFirst();
        boolean serves = plugged.isEmpty() && sender.isPresent() && job.wants(wish) && !leads.isEmpty();
        List<Refusal> refusals = asked.stream()
                .filter(each -> plugged.isEmpty() && !(serves && each == wish))
                .map(each -> new Refusal(each, Phrase.of("refuse.no-plug"), Phrase.of("possible.no-plug")))
                .toList();
        Map<Lead, Source.Stage> stages = serves ? stages(job, sender.orElseThrow(), leads) : Map.of();
        return leads.stream()
                .map(lead -> new Question(
                        role.word() + " " + lead.id(),
                        Optional.ofNullable(stages.get(lead))
                                .map(stage -> ways(job, lead, stage, refusals))
                                .orElseGet(() -> List.of(new Option(
                                        List.of(aside(
                                                lead,
                                                asked,
                                                plugged.or(() ->
                                                        stages.keySet().stream().findFirst()))),
                                        refusals,
                                        List.of())))))
                .toList();
    }

    private Decision aside(Lead lead, List<Wish> asked, Optional<Lead> instead) {
        if (asked.isEmpty()) {
            return Aside.notAskedFor(lead, wish);
        }
        return instead.map(other -> Aside.another(lead, other)).orElseGet(() -> Aside.refused(lead, asked.getFirst()));
    }

    /** Which lead reads which contact: what sounds at once the hard blow, what warns first the light one. */
    private static Map<Lead, Source.Stage> stages(Job job, Extra sender, List<Lead> leads) {
        Map<Lead, Source.Stage> stages = new LinkedHashMap<>();
        Behaviour behaviour = job.brief().kit().behaviour();
        boolean two = sender.contact().orElseThrow().twoStage();
        Lead hard = leads.stream()
                .filter(lead -> behaviour.instantTriggers().contains(lead.id()))
                .findFirst()
                .orElse(leads.getFirst());
        stages.put(hard, new Source.Stage(sender, two ? "2" : "1", job.usualRun()));
        if (two) {
            leads.stream()
                    .filter(lead -> !lead.equals(hard))
                    .filter(lead -> behaviour.triggers().contains(lead.id()))
                    .filter(lead -> !behaviour.instantTriggers().contains(lead.id()))
                    .findFirst()
                    .ifPresent(light -> stages.put(light, new Source.Stage(sender, "1", job.usualRun())));
        }
        return stages;
    }

    private List<Option> ways(Job job, Lead lead, Source.Stage stage, List<Refusal> refusals) {
        if (!(lead.port() instanceof Port.Input input)) {
            return List.of(new Option(List.of(Aside.misfit(lead, wish)), refusals, List.of()));
        }
        Extra.Closes closes = stage.extra().contact().orElseThrow().closes();
        Port.Active pole = switch (closes) {
            case DRY -> input.active();
            case GROUND -> Port.Active.LOW;
            case SUPPLY -> Port.Active.HIGH;
        };
        InputWords words = new InputWords(job, lead, List.of(Read.stage(stage, pole)), InputWords.constant(job));
        boolean fed = closes != Extra.Closes.DRY || pole == Port.Active.HIGH;
        if ((fed || words.wantsSupply()) && !(job.constant() instanceof Found.Usable)) {
            return List.of(AddedLoads.without(lead, wish, job.constant()));
        }
        if (fed && closes != Extra.Closes.DRY && stage.extra().draws().isEmpty()) {
            return AddedLoads.unstated(lead, wish, stage.extra());
        }
        Draft mounted = mounted(job, stage, pole);
        return words.list().stream()
                .map(way -> new Option(
                                List.of(new Decision.Join(
                                        lead,
                                        wish,
                                        List.of(),
                                        way.draft().and(mounted, key(way)),
                                        because(stage, pole, way),
                                        List.of())),
                                refusals,
                                PluggedRule.where(wish))
                        .searched(words.searched()))
                .toList();
    }

    private static String key(InputWords.Way way) {
        return ReadingCatalogue.hasActivePart(way.words().getFirst())
                        || way.draft().pieces().stream().anyMatch(Piece.Resistor.class::isInstance)
                ? way.draft().key()
                : "coupling.added-contact";
    }

    private static Phrase because(Source.Stage stage, Port.Active pole, InputWords.Way way) {
        Extra extra = stage.extra();
        boolean turned = ReadingCatalogue.hasActivePart(way.words().getFirst());
        Extra.Contact contact = extra.contact().orElseThrow();
        String key = turned
                ? "rule.added-contact-turned"
                : contact.closes() == Extra.Closes.DRY
                        ? pole == Port.Active.LOW ? "rule.added-contact-to-body" : "rule.added-contact-to-supply"
                        : !contact.twoStage()
                                ? "rule.added-sensor"
                                : stage.terminal().equals("2") ? "rule.added-sensor-hard" : "rule.added-sensor-light";
        return Phrase.of(key, extra.name());
    }

    /** The thing itself: the other side of a dry contact, or feed and ground. */
    private static Draft mounted(Job job, Source.Stage stage, Port.Active pole) {
        Extra extra = stage.extra();
        Draft.Builder draft = Draft.of("coupling.added-contact").with(new Piece.Sender(stage.part(), extra));
        if (extra.contact().orElseThrow().closes() == Extra.Closes.DRY) {
            if (pole == Port.Active.LOW) {
                draft.run(Draft.at(stage.part(), "2"), Draft.body(), Draft.BESIDE, SIGNAL, AllowedDrop.SIGNAL);
            } else {
                feed(job).to(Draft.at(stage.part(), "2"), SIGNAL, AllowedDrop.SIGNAL, draft);
            }
            return draft.build();
        }
        Amps draws = extra.draws().orElseThrow().high();
        feed(job).to(Draft.at(stage.part(), "+"), draws, AllowedDrop.SIGNAL, draft);
        draft.run(Draft.at(stage.part(), "-"), Draft.body(), Draft.BESIDE, draws, AllowedDrop.SIGNAL);
        return draft.build();
    }

    /** An input's own pull lets some milliamps flow. Common practice, no published source. */
    private static final Amps SIGNAL = new Amps(0.005);

    private static Feed feed(Job job) {
        return job.coilFeed(((Found.Usable) job.constant()).first());
    }
}
