package org.loomproof.pages.bay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.loomproof.pages.work.Noted;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.bay.BayOrder;
import org.loomproof.workshop.goods.bay.Station;
import org.loomproof.workshop.goods.bay.Visit;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.meter.advice.Costs;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.meter.finding.Identifier;
import org.loomproof.workshop.meter.finding.WireFinding;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;

/** The work of one planned job at the bench and in the bay, and what readings say of its wires. May be asked by several at once. */
public final class BayJob {

    private final Brief brief;
    private final Plan plan;
    private final List<BayStep> steps;
    private final Map<CircuitId, CircuitReadings> expected = new HashMap<>();
    private final Identifier identifier;

    public BayJob(Brief brief, Plan plan) {
        this.brief = brief;
        this.plan = plan;
        this.steps = steps(brief, plan);
        this.identifier = new Identifier(Optional.of(brief.sheet()), Costs.USUAL);
        ExpectedReadings.of(brief, plan).forEach(circuit -> expected.put(circuit.circuit(), circuit));
    }

    private static List<BayStep> steps(Brief brief, Plan plan) {
        List<BayStep> steps = new ArrayList<>();
        for (Station station : BayOrder.of(brief, plan).stations()) {
            for (Visit visit : station.visits()) {
                String sum = ShopAddress.sum(visit + " " + wires(plan, visit.wires()));
                steps.add(new BayStep(steps.size() + 1, place(visit), station, visit, sum));
            }
        }
        return List.copyOf(steps);
    }

    private static List<AddedWire> wires(Plan plan, List<WireId> names) {
        return plan.wires().stream().filter(wire -> names.contains(wire.id())).toList();
    }

    private static String place(Visit visit) {
        return switch (visit) {
            case Visit.Ground ground -> "@ground";
            case Visit.Tapped tapped -> tapped.circuit().value();
            case Visit.Cut cut -> cut.circuit().value();
            case Visit.Mounted(var part, var wires) -> "@" + part.value();
            case Visit.SupplyFuse(var part, var wires) -> "@" + part.value();
        };
    }

    /** What was given, completed. */
    public Brief brief() {
        return brief;
    }

    /** The plan. */
    public Plan plan() {
        return plan;
    }

    /** The steps in working order. */
    public List<BayStep> steps() {
        return steps;
    }

    /** The step at a place. */
    public Optional<BayStep> find(String place) {
        return steps.stream().filter(step -> step.place().equals(place)).findFirst();
    }

    /** What stands for all that is to be done with a lead: a tick for another sum does not count. */
    public String sum(LeadId lead) {
        return ShopAddress.sum(plan.findHookup(lead)
                .map(hookup -> hookup + " "
                        + plan.wires().stream()
                                .filter(wire -> wire.lead().equals(Optional.of(lead)))
                                .toList())
                .orElse("undecided"));
    }

    /** What stands for a joint as the plan has it: a picture of another sum shows another joint, whatever it was called. */
    public String sum(PlacedJoint joint) {
        return ShopAddress.sum(joint.place() + " " + wires(plan, joint.wires()));
    }

    /** Every joint of the plan. */
    public List<PlacedJoint> joints() {
        return new Joints(brief, plan).list();
    }

    /** The joints that are made at a step; none where all is joined already. */
    public List<PlacedJoint> joints(BayStep step) {
        return step.visit() instanceof Visit.SupplyFuse
                ? List.of()
                : new Joints(brief, plan).at(wires(plan, step.visit().wires()));
    }

    /** The first step behind another that is not done; nothing when all are. */
    public Optional<BayStep> after(BayStep step, Predicate<BayStep> isDone) {
        return steps.stream()
                .filter(other -> other.number() > step.number() && !isDone.test(other))
                .findFirst()
                .or(() -> steps.stream()
                        .filter(other -> other.number() < step.number() && !isDone.test(other))
                        .findFirst());
    }

    /** True for a circuit that the plan joins something to. */
    public boolean joins(CircuitId circuit) {
        return expected.containsKey(circuit);
    }

    /** What the readings of a work log say of a circuit that the plan joins something to. */
    public MeteredCircuit metered(CircuitId circuit, List<Noted> standing) {
        Taken taken = new Taken(brief.sheet(), standing);
        return new MeteredCircuit(brief, plan, expected(circuit), taken, finding(circuit, taken));
    }

    private CircuitReadings expected(CircuitId circuit) {
        return Optional.ofNullable(expected.get(circuit))
                .orElseThrow(() -> new IllegalArgumentException("nothing is joined to " + circuit));
    }

    /** The wire in the eyes of all readings together; the identifier keeps what it has solved and serves one at a time. */
    private Optional<WireFinding> finding(CircuitId circuit, Taken taken) {
        synchronized (identifier) {
            return identifier.identify(taken.whole()).stream()
                    .filter(finding -> finding.wire().equals(circuit.value()))
                    .findFirst();
        }
    }
}
