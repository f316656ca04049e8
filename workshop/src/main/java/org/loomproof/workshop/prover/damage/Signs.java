package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.claim.Triggers;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** All signs of a job, each with its place, and how they are read off a point of rest. */
public final class Signs {

    /** A load that gets this share of its volts plainly works, and one that gets the lesser share plainly does not. */
    static final double WORKS_SHARE = 0.7;

    private static final double IDLE_SHARE = 0.15;

    /** Volts that differ by less than this share are the same to a load. */
    private static final double SAME_SHARE = 0.05;

    private static final double LEAST_AMPS = 1e-5;

    /** A drop that a technician calls one, and one that he calls none; common practice, no published source. */
    private static final double PLAIN_DROP_VOLTS = 1;

    private static final double SMALL_DROP_VOLTS = 0.5;

    private final List<Sign> all = new ArrayList<>();
    private final List<Trigger> triggers;

    /** The signs of a job: what the sheet's loads and inputs do, what is added, the alarm, the leads in use. */
    public Signs(Brief brief, Plan plan, Wired fitted) {
        this.triggers = Triggers.list(brief.kit());
        fitted.factory().loads().forEach((load, reach) -> all.add(new Sign.Works(load, fitted.words(reach.part()))));
        all.addAll(Turning.list(brief));
        fitted.factory()
                .inputs()
                .forEach((input, reach) -> all.add(new Sign.Ordered(input, fitted.words(reach.part()))));
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Load load) {
                all.add(new Sign.Sounds(load.id(), Phrase.of("sign.named", load.extra())));
            }
        }
        all.add(new Sign.Alarm());
        all.add(new Sign.Awake());
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                all.add(new Sign.AtPlug(connect.lead()));
            }
        }
        JoinedCircuits.cut(plan).forEach(cut -> all.add(new Sign.AcrossCut(cut)));
        all.add(new Sign.FeedDrop());
        all.add(new Sign.StandingCurrent());
    }

    /** All of them; the place in this list is the sign's place everywhere. */
    public List<Sign> list() {
        return List.copyOf(all);
    }

    /** The place of the sign that an ammeter gives. */
    int standingCurrent() {
        return all.size() - 1;
    }

    /** What is sure at every one of these points of rest. */
    Seen read(List<List<Pair>> pairs) {
        return pairs.stream()
                .map(withEachStock -> read(withEachStock.getFirst()))
                .reduce(Seen::or)
                .orElseThrow();
    }

    private Seen read(Pair pair) {
        List<Sureness> signs = all.stream().map(sign -> sure(sign, pair)).toList();
        Reading fitted = pair.fitted();
        double amps = Math.abs(fitted.point().amps(fitted.wired().battery()));
        return new Seen(signs, amps, amps);
    }

    /** How surely the sign is there; none where nobody can say, or nothing of it lies here. */
    private Sureness sure(Sign sign, Pair pair) {
        Reading fitted = pair.fitted();
        double supply = pair.supply().volts().value();
        return switch (sign) {
            case Sign.Works(ElementId load, var named) -> {
                Reach reach = fitted.wired().factory().loads().get(load);
                yield (reach == null || !fitted.has(reach.part()))
                        ? Sureness.NONE
                        : works(load, workingVolts(fitted, reach), pair);
            }
            case Sign.Turns(ElementId load, var named, var forwards, var backwards) -> {
                Reach reach = fitted.wired().factory().loads().get(load);
                yield (reach == null || !fitted.has(reach.part()))
                        ? Sureness.NONE
                        : Sureness.between(fitted.volts(reach), -WORKS_SHARE * supply, WORKS_SHARE * supply);
            }
            case Sign.Ordered(ElementId input, var named) -> {
                InputReach reach = fitted.wired().factory().inputs().get(input);
                yield (reach == null || !fitted.has(reach.part()) || fitted.isFloating(reach))
                        ? Sureness.NONE
                        : Sureness.between(fitted.volts(reach), reach.lowBelow(), reach.highAbove());
            }
            case Sign.Sounds(var part, var named) -> {
                Reach reach = fitted.wired().added().parts().get(part);
                yield (reach == null || !fitted.has(reach.part()))
                        ? Sureness.NONE
                        : share(workingVolts(fitted, reach), supply);
            }
            case Sign.Alarm() -> fitted.hasController() ? alarm(pair) : Sureness.NONE;
            case Sign.Awake() ->
                fitted.hasController() ? Sureness.between(fitted.aliveByVolts(), -Double.MIN_VALUE, 0) : Sureness.NONE;
            case Sign.AtPlug(LeadId lead) -> atPlug(fitted, lead, supply);
            case Sign.AcrossCut(CircuitId cut) -> acrossCut(fitted, cut);
            case Sign.FeedDrop() -> fitted.hasController() ? drop(supply - fitted.controllerVolts()) : Sureness.NONE;
            case Sign.StandingCurrent() -> Sureness.NONE;
            case Sign.Cold cold -> Sureness.NONE; // no situation of a living car: ColdLoom reads it
            case Sign.Kick kick -> Sureness.NONE; // no point of rest: the claim about the kick knows it
        };
    }

    /** A load that takes no current does nothing, whatever lies across it. */
    private static double workingVolts(Reading fitted, Reach load) {
        return Math.abs(fitted.amps(load)) < LEAST_AMPS ? 0 : Math.abs(fitted.volts(load));
    }

    /** What a load does with everything in the car as it came at rest is not working, unless it gets its full volts there. */
    private static Sureness works(ElementId load, double volts, Pair pair) {
        double supply = pair.supply().volts().value();
        double most = pair.working().volts(pair.supply(), load);
        double whole = most > IDLE_SHARE * supply ? most : supply;
        double resting = pair.working().restingVolts(pair.supply(), load);
        Sureness share = share(volts, whole);
        if (resting >= WORKS_SHARE * whole) {
            return share;
        }
        double asAtRest = resting + SAME_SHARE * whole - volts;
        return new Sureness(Math.min(share.there(), -asAtRest), Math.max(share.absent(), asAtRest));
    }

    private static Sureness share(double volts, double whole) {
        return Sureness.between(volts, IDLE_SHARE * whole, WORKS_SHARE * whole);
    }

    private Sureness alarm(Pair pair) {
        if (pair.doing().state() != ControllerState.ARMED) {
            return Sureness.NONE;
        }
        double alive = pair.fitted().aliveByVolts();
        double active = Double.NEGATIVE_INFINITY;
        double quiet = Double.POSITIVE_INFINITY;
        for (Trigger trigger : triggers) {
            active = Math.max(active, trigger.activeBy(pair.fitted()));
            quiet = Math.min(quiet, trigger.restingBy(pair.fitted()));
        }
        return alive < 0
                ? new Sureness(Math.min(active, alive), -alive)
                : new Sureness(Math.min(active, alive), active >= 0 ? -active : quiet);
    }

    private static Sureness acrossCut(Reading fitted, CircuitId cut) {
        Node before = fitted.wired().factory().before().get(cut);
        Node after = fitted.wired().factory().after().get(cut);
        if (before == null
                || after == null
                || !fitted.wired().network().hasNode(before)
                || !fitted.wired().network().hasNode(after)
                || fitted.point().isFloating(after)) {
            return Sureness.NONE;
        }
        return drop(Math.abs(fitted.point().volts(before, after)));
    }

    private static Sureness drop(double volts) {
        return Sureness.between(volts, SMALL_DROP_VOLTS, PLAIN_DROP_VOLTS);
    }

    private static Sureness atPlug(Reading fitted, LeadId lead, double supply) {
        Map<LeadId, Node> leads = fitted.wired().controller().orElseThrow().leads();
        Node node = leads.get(lead);
        if (node == null
                || !fitted.wired().network().hasNode(node)
                || fitted.point().isFloating(node)) {
            return Sureness.NONE;
        }
        return share(fitted.volts(node), supply);
    }
}
