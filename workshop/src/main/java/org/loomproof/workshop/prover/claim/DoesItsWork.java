package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.words.Phrase;

/**
 * Each connected output does what it is there for: while it is on, an added load gets most of the battery's volts, and the
 * loads of its circuit most of what their own switch would give them.
 */
final class DoesItsWork implements Claim {

    @Override
    public String name() {
        return "does-its-work";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup hookup : fitting.plan().hookups()) {
            switch (hookup) {
                case Hookup.Connect connect -> {
                    if (isOutput(fitting, connect.lead()) && connect.serves() != Wish.STARTER_INTERRUPT) {
                        all.addAll(connected(fitting, connect));
                    }
                }
                case Hookup.Hold hold -> {
                    if (isOutput(fitting, hold.lead()) && hold.serves() != Wish.STARTER_INTERRUPT) {
                        all.add(Fitting.open(name() + " " + hold.lead(), statement(hold.lead()), hold));
                    }
                }
                case Hookup.Trim trim -> {}
                case Hookup.CapAndKeep cap -> {}
            }
        }
        for (Wish wish : Wish.values()) {
            if (fitting.isWanted(wish) && !isJudgedElsewhere(wish) && !fitting.isServed(wish)) {
                Phrase statement = Phrase.of("claim.wish-works", wish.word());
                all.add(Fitting.open(
                        name() + " " + wish.word(), statement, Phrase.of("open.nothing-serves", wish.word())));
            }
        }
        return all;
    }

    private static boolean isJudgedElsewhere(Wish wish) {
        return wish == Wish.BASICS || wish == Wish.WATCH_OPENINGS || wish == Wish.STARTER_INTERRUPT;
    }

    private static Phrase statement(LeadId lead) {
        return Phrase.of("claim.does-its-work", lead);
    }

    static boolean isOutput(Fitting fitting, LeadId lead) {
        return fitting.output(lead).isPresent();
    }

    private List<Claimed> connected(Fitting fitting, Hookup.Connect connect) {
        String id = name() + " " + connect.lead();
        List<Claimed> all = new ArrayList<>();
        Acting acting = Acting.of(fitting.brief().kit().behaviour(), connect.lead());
        if (acting.isNever()) {
            return List.of(Fitting.open(id, statement(connect.lead()), Phrase.of("open.never-acts", connect.lead())));
        }
        List<FactoryWork> motors = loads(fitting, connect).stream()
                .map(load -> new FactoryWork(id, fitting, connect, acting, load))
                .toList();
        for (AddedPartId part : connect.parts()) {
            if (fitting.plan().findPart(part).orElse(null) instanceof AddedPart.Load load) {
                all.add(new Claimed.ToShow(
                        load.forward().isPresent()
                                ? lit(id, fitting, connect, acting, load)
                                : new AddedWork(id, fitting, connect, acting, part, motors, "claim.added-load-works")));
            }
            if (fitting.plan().findPart(part).orElse(null) instanceof AddedPart.StandbyBattery) {
                all.add(new Claimed.ToShow(new AddedWork(
                        id, fitting, connect, Acting.ALWAYS, part, List.of(), "claim.battery-is-charged")));
            }
        }
        motors.forEach(work -> all.add(new Claimed.ToShow(work)));
        for (ElementId input : inputs(fitting, connect)) {
            PartId about = Objects.requireNonNull(
                            fitting.stock().wired().factory().inputs().get(input))
                    .part();
            Phrase statement = Phrase.of(
                    "claim.factory-load-works", fitting.stock().wired().words(about), connect.lead());
            all.add(new Claimed.ToShow(new WorkedInput(
                    id + " " + input, statement, input, about, ownCircuit(fitting, connect, input), acting)));
        }
        if (all.isEmpty()) {
            all.add(Fitting.open(id, statement(connect.lead()), Phrase.of("open.no-load", connect.lead())));
        }
        return all;
    }

    private static LitWork lit(
            String id, Fitting fitting, Hookup.Connect connect, Acting acting, AddedPart.Load light) {
        PartId about = Objects.requireNonNull(
                        fitting.fitted().wired().added().parts().get(light.id()))
                .part();
        Phrase statement =
                Phrase.of("claim.light-is-seen", fitting.fitted().wired().words(about), connect.lead());
        return new LitWork(id + " " + light.id(), statement, about, acting, light);
    }

    /**
     * The loads that the lead is there to work: of those in its circuits' paths what the circuits' own switches work, or all
     * that they work where none stands in the paths; all in the paths where no switch of the car works any.
     */
    static List<ElementId> loads(Fitting fitting, Hookup.Connect connect) {
        List<ElementId> named = named(
                fitting, connect, fitting.stock().wired().factory().loads().keySet());
        Set<ElementId> worked = new LinkedHashSet<>();
        connect.circuits().forEach(circuit -> worked.addAll(fitting.loadsWorkedBy(circuit)));
        if (!named.isEmpty()) {
            worked.retainAll(named);
        }
        return worked.isEmpty() ? named : List.copyOf(worked);
    }

    /** The inputs in the paths of its circuits, and every other that tells the level which the circuits' own switches give. */
    private static List<ElementId> inputs(Fitting fitting, Hookup.Connect connect) {
        Set<ElementId> inputs = new LinkedHashSet<>(named(
                fitting, connect, fitting.stock().wired().factory().inputs().keySet()));
        connect.circuits().forEach(circuit -> inputs.addAll(fitting.inputsWorkedBy(circuit)));
        return List.copyOf(inputs);
    }

    /** Of the circuits that a lead acts on, the one whose own switches tell the input its level, or in whose paths it stands. */
    private static CircuitId ownCircuit(Fitting fitting, Hookup.Connect connect, ElementId input) {
        return connect.circuits().stream()
                .filter(circuit -> fitting.inputsWorkedBy(circuit).contains(input))
                .findFirst()
                .or(() -> connect.circuits().stream()
                        .filter(circuit ->
                                !named(fitting, circuit, Set.of(input)).isEmpty())
                        .findFirst())
                .orElseThrow();
    }

    /** Those of the elements that stand in the paths of the circuits the lead acts on. */
    private static List<ElementId> named(Fitting fitting, Hookup.Connect connect, Set<ElementId> among) {
        Set<ElementId> named = new LinkedHashSet<>();
        connect.circuits().forEach(circuit -> named.addAll(named(fitting, circuit, among)));
        return List.copyOf(named);
    }

    private static Set<ElementId> named(Fitting fitting, CircuitId circuit, Set<ElementId> among) {
        Set<ElementId> named = new LinkedHashSet<>();
        for (List<PathStep> path : fitting.brief().sheet().circuit(circuit).paths()) {
            for (PathStep step : path) {
                if (step instanceof PathStep.Part part && among.contains(part.id())) {
                    named.add(part.id());
                }
            }
        }
        return named;
    }
}
