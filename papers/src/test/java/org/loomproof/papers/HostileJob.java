package org.loomproof.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** The hand-written job with every name that a person may choose replaced by something nasty. */
record HostileJob(String nasty) {

    Brief brief() {
        Brief tame = SampleJob.brief();
        Order order = tame.order();
        return new Brief(
                sheet(tame.sheet()),
                kit(tame.kit()),
                new Order(
                        nasty,
                        order.wishes(),
                        order.watched(),
                        Optional.of(nasty),
                        order.ruleSet(),
                        order.longestUnusedDays(),
                        order.shop(),
                        order.stock()));
    }

    private Sheet sheet(Sheet tame) {
        VehicleFacts v = tame.vehicle();
        VehicleFacts vehicle = new VehicleFacts(
                nasty,
                v.systemVoltage(),
                v.groundPolarity(),
                v.gearbox(),
                v.drive(),
                v.start(),
                v.key(),
                v.steering(),
                nasty,
                nasty,
                nasty,
                v.batteryCapacity(),
                v.batteryAgeYears(),
                v.sleepCurrent());
        List<Circuit> circuits = new ArrayList<>();
        for (Circuit c : tame.circuits()) {
            circuits.add(new Circuit(
                    renamed(c.id()),
                    c.role(),
                    new Where(nasty, nasty, nasty, nasty),
                    c.colour(),
                    c.size(),
                    c.switching(),
                    c.follows(),
                    c.paths(),
                    c.access(),
                    c.basis(),
                    nasty,
                    nasty));
        }
        return new Sheet(vehicle, tame.operables(), circuits);
    }

    private Kit kit(Kit tame) {
        List<Lead> leads = new ArrayList<>();
        for (Lead l : tame.leads()) {
            leads.add(new Lead(
                    l.id(),
                    l.plug() + nasty,
                    l.position(),
                    l.colour(),
                    l.size(),
                    l.role(),
                    l.port(),
                    l.alwaysUsed(),
                    nasty,
                    l.basis()));
        }
        return new Kit(
                nasty,
                tame.leastSupply(),
                tame.mostSupply(),
                tame.survives(),
                tame.standby(),
                leads,
                tame.options().stream()
                        .map(o -> new KitOption(
                                nasty,
                                List.of(
                                        new KitOption.Setting(nasty, Map.of()),
                                        o.settings().getLast())))
                        .toList(),
                tame.extras(),
                tame.behaviour());
    }

    Plan plan() {
        Plan tame = SampleJob.plan();
        List<Hookup> hookups = tame.hookups().stream().map(this::renamed).toList();
        List<AddedWire> wires = tame.wires().stream()
                .map(w -> new AddedWire(w.id(), renamed(w.from()), renamed(w.to()), w.length(), w.size()))
                .toList();
        return new Plan(hookups, tame.parts(), wires, tame.refusals(), List.of(SampleJob.written(nasty)));
    }

    private CircuitId renamed(CircuitId id) {
        return new CircuitId(id.value() + nasty);
    }

    private Hookup renamed(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect h ->
                new Hookup.Connect(
                        h.lead(),
                        h.serves(),
                        h.circuits().stream().map(this::renamed).toList(),
                        nasty,
                        h.parts(),
                        h.wires(),
                        SampleJob.written(nasty),
                        List.of(SampleJob.written(nasty)));
            case Hookup.Trim h -> new Hookup.Trim(h.lead(), SampleJob.written(nasty), List.of());
            case Hookup.CapAndKeep h -> new Hookup.CapAndKeep(h.lead(), SampleJob.written(nasty), List.of());
            case Hookup.Hold h -> new Hookup.Hold(h.lead(), h.serves(), h.until(), SampleJob.written(nasty), List.of());
        };
    }

    private End renamed(End end) {
        return switch (end) {
            case End.Tap e -> new End.Tap(renamed(e.circuit()));
            case End.CutBefore e -> new End.CutBefore(renamed(e.circuit()));
            case End.CutAfter e -> new End.CutAfter(renamed(e.circuit()));
            case End.OfLead e -> e;
            case End.OfPart e -> e;
            case End.Body e -> e;
        };
    }
}
