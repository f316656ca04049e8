package org.loomproof.cli.report;

import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Messages;

/** One line a lead: what it is, what happens to it, and where it goes. */
final class LeadTable {

    private final Messages messages;

    LeadTable(Messages messages) {
        this.messages = messages;
    }

    void add(Lines lines, Kit kit, Plan plan) {
        lines.cut(messages.text("report.leads", plan.hookups().size()));
        int idWidth = 2
                + kit.leads().stream()
                        .mapToInt(l -> l.id().value().length())
                        .max()
                        .orElse(0);
        for (Lead lead : kit.leads()) {
            Hookup hookup = plan.findHookup(lead.id())
                    .orElseThrow(() -> new IllegalStateException("lead " + lead.id() + " is undecided"));
            lines.cut("  "
                    + Lines.column(lead.id().value(), Math.min(idWidth, 12))
                    + Lines.column(lead.colour().map(Object::toString).orElse(""), 7)
                    + Lines.column(lead.role().word(), 18)
                    + Lines.column(decision(hookup), 9)
                    + goal(hookup));
        }
    }

    private String decision(Hookup hookup) {
        return messages.text(
                switch (hookup) {
                    case Hookup.Connect ignored -> "decision.connect";
                    case Hookup.Trim ignored -> "decision.trim";
                    case Hookup.CapAndKeep ignored -> "decision.cap";
                    case Hookup.Hold ignored -> "decision.hold";
                });
    }

    private String goal(Hookup hookup) {
        return switch (hookup) {
            case Hookup.Connect connect -> connection(connect);
            case Hookup.Trim trim -> "";
            case Hookup.CapAndKeep cap -> "";
            case Hookup.Hold hold -> messages.text("report.until", hold.until().name());
        };
    }

    private String connection(Hookup.Connect connect) {
        String parts =
                String.join(" ", connect.parts().stream().map(Object::toString).toList());
        if (connect.circuits().isEmpty()) {
            String coupling = messages.text(connect.coupling());
            return parts.isEmpty() ? coupling : messages.text("report.with", coupling, parts);
        }
        String circuits = String.join(
                ", ", connect.circuits().stream().map(Object::toString).toList());
        return parts.isEmpty() ? circuits : messages.text("report.through", circuits, parts);
    }
}
