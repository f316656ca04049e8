package org.loomproof.workshop.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.words.Messages;

/** The planner's first choice for a job, spoken of as a technician would. */
public final class Planned {

    private static final Messages ENGLISH = Messages.english();

    private final Brief brief;
    private final Candidates candidates;
    private final Plan plan;

    private Planned(Brief brief) {
        this.brief = brief;
        this.candidates = Planner.plan(brief);
        this.plan = candidates.plans().getFirst();
    }

    public static Planned of(AVehicle vehicle, AKit kit, AnOrder order) {
        return of(new Brief(vehicle.sheet(), kit.kit(), order.order()));
    }

    public static Planned of(Brief brief) {
        return new Planned(brief);
    }

    public Plan plan() {
        return plan;
    }

    public Candidates candidates() {
        return candidates;
    }

    public Hookup hookup(String lead) {
        return plan.findHookup(new LeadId(lead)).orElseThrow();
    }

    public Hookup.Connect connect(String lead) {
        assertThat(hookup(lead)).as(reason(lead)).isInstanceOf(Hookup.Connect.class);
        return (Hookup.Connect) hookup(lead);
    }

    /** The coupling of a connected lead, by its message key. */
    public String coupling(String lead) {
        return connect(lead).coupling();
    }

    /** {@code connect}, {@code trim}, {@code cap} or the measurement that the lead waits for. */
    public String decision(String lead) {
        return switch (hookup(lead)) {
            case Hookup.Connect c -> "connect";
            case Hookup.Trim t -> "trim";
            case Hookup.CapAndKeep c -> "cap";
            case Hookup.Hold hold -> hold.until().name();
        };
    }

    public String reason(String lead) {
        return ENGLISH.text(hookup(lead).because());
    }

    public List<String> insteadOf(String lead) {
        return hookup(lead).insteadOf().stream().map(ENGLISH::text).toList();
    }

    /** The key of the reason why a wish is refused; empty when it is not. */
    public Optional<String> refusal(Wish wish) {
        return plan.refusals().stream()
                .filter(r -> r.wish() == wish)
                .map(r -> r.because().key())
                .findFirst();
    }

    public List<String> cautionKeys() {
        return plan.cautions().stream().map(c -> c.key()).toList();
    }

    /** The one part of that class. */
    public <P extends AddedPart> P only(Class<P> kind) {
        List<P> all = listParts(kind);
        assertThat(all).hasSize(1);
        return all.getFirst();
    }

    public <P extends AddedPart> List<P> listParts(Class<P> kind) {
        return plan.parts().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    public AddedPart part(String id) {
        return plan.findPart(new AddedPartId(id)).orElseThrow();
    }

    /** The added wire between two ends, written as in a plan file, in either order. */
    public AddedWire wire(String from, String to) {
        return plan.wires().stream()
                .filter(w -> (text(w.from()).equals(from) && text(w.to()).equals(to))
                        || (text(w.from()).equals(to) && text(w.to()).equals(from)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no wire " + from + " - " + to + " among " + wires()));
    }

    /** All added wires as text. */
    public List<String> wires() {
        return plan.wires().stream()
                .map(w -> text(w.from()) + " - " + text(w.to()))
                .toList();
    }

    private static String text(End end) {
        return switch (end) {
            case End.OfLead(var lead) -> "lead " + lead;
            case End.OfPart(var part, var terminal) -> part + " " + terminal;
            case End.Tap(var circuit) -> "circuit " + circuit + " tap";
            case End.CutBefore(var circuit) -> "circuit " + circuit + " before";
            case End.CutAfter(var circuit) -> "circuit " + circuit + " after";
            case End.Body body -> "body";
        };
    }

    /** Everything a reader is told, in English; fails when a phrase has no words or an empty hole. */
    public String told() {
        StringBuilder out = new StringBuilder();
        for (Hookup hookup : plan.hookups()) {
            out.append(hookup.lead())
                    .append(' ')
                    .append(decision(hookup.lead().value()))
                    .append(": ");
            out.append(ENGLISH.text(hookup.because())).append('\n');
            if (hookup instanceof Hookup.Connect c) {
                out.append("    through ")
                        .append(ENGLISH.text(c.coupling()))
                        .append(c.parts())
                        .append(c.wires());
                out.append('\n');
            }
            if (hookup instanceof Hookup.Hold hold) {
                out.append("    ").append(ENGLISH.text(hold.until().what())).append('\n');
            }
            hookup.insteadOf()
                    .forEach(p -> out.append("    not ").append(ENGLISH.text(p)).append('\n'));
        }
        plan.parts().forEach(p -> out.append(p).append('\n'));
        plan.wires()
                .forEach(w -> out.append(w.id() + " " + text(w.from()) + " - " + text(w.to()) + " " + w.length() + " "
                        + w.size() + "\n"));
        for (Refusal refusal : plan.refusals()) {
            out.append("refused ").append(refusal.wish()).append(": ").append(ENGLISH.text(refusal.because()));
            out.append(" / ").append(ENGLISH.text(refusal.possibleIf())).append('\n');
        }
        plan.cautions().forEach(c -> out.append("! ").append(ENGLISH.text(c)).append('\n'));
        candidates
                .bounds()
                .forEach(c -> out.append("bound ").append(ENGLISH.text(c)).append('\n'));
        assertThat(out.toString()).doesNotContainPattern("\\{[0-9]");
        assertThat(plan.hookups()).hasSameSizeAs(brief.kit().leads());
        return out.toString();
    }
}
