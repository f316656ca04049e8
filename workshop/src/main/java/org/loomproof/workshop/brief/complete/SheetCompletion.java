package org.loomproof.workshop.brief.complete;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.path.TemplatePath;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.trade.template.RoleTemplate;
import org.loomproof.workshop.trade.template.RoleTemplates;

/**
 * Completes a sheet: a circuit without a path gets the usual one of its role and its way of switching, with one contact for
 * everything it follows. Where the trade has no usual path, or nothing is known that works the circuit, it stays without: the
 * planner then waits for a reading.
 */
public final class SheetCompletion implements UnaryOperator<Sheet> {
    private final PartDefaults usual;

    /** @param usual figures that the usual paths leave out */
    public SheetCompletion(PartDefaults usual) {
        this.usual = usual;
    }

    @Override
    public Sheet apply(Sheet sheet) {
        List<Circuit> completed = new ArrayList<>();
        for (Circuit circuit : sheet.circuits()) {
            List<List<PathStep>> paths = circuit.paths().isEmpty() ? usualPaths(circuit, sheet) : circuit.paths();
            completed.add(circuit.withPaths(paths));
        }
        return new Sheet(sheet.vehicle(), sheet.operables(), completed);
    }

    private List<List<PathStep>> usualPaths(Circuit circuit, Sheet sheet) {
        Optional<RoleTemplate> template = RoleTemplates.find(
                circuit.role().word(),
                word(circuit.switching().rest()),
                word(circuit.switching().active()));
        if (template.isEmpty()) {
            return List.of();
        }
        List<RoleTemplate.Follower> followers = followers(circuit, sheet, template.get());
        boolean nothingWorksIt = followers.isEmpty() && template.get().needsFollowers();
        boolean somethingUnknownDoes = followers.size() < circuit.follows().size();
        if (nothingWorksIt || somethingUnknownDoes) {
            return List.of();
        }
        String text = template.get()
                .text(circuit.id().value(), stated(circuit.switching().rest()), followers);
        SourceText source = new SourceText("usual path of " + circuit.id(), text);
        return TemplatePath.read(source, circuit, sheet.operables(), usual);
    }

    private static List<RoleTemplate.Follower> followers(Circuit circuit, Sheet sheet, RoleTemplate template) {
        List<RoleTemplate.Follower> followers = new ArrayList<>();
        for (OperableId id : circuit.follows()) {
            List<String> closedAt = closedAt(sheet.operable(id), template);
            if (!closedAt.isEmpty()) {
                followers.add(new RoleTemplate.Follower(id.value(), closedAt));
            }
        }
        return followers;
    }

    /** Where the contact that an operable works is usually closed; empty when it usually works none in such a circuit. */
    private static List<String> closedAt(Operable operable, RoleTemplate template) {
        return switch (operable.kind()) {
            case KEY -> template.keyAt();
            case DOOR, HOOD, TRUNK -> List.of(Operable.OPENING_POSITIONS.getLast());
            case CONTROL -> operable.positions().subList(1, operable.positions().size());
        };
    }

    private static String word(Level level) {
        return switch (level) {
            case Level.Ground ground -> "ground";
            case Level.Supply supply -> "supply";
            case Level.Open open -> "open";
            case Level.Resistance resistance -> "resistance";
            case Level.Voltage voltage -> "voltage";
            case Level.Reversing reversing -> "reversing";
            case Level.Data data -> "data";
        };
    }

    private static String stated(Level level) {
        return level instanceof Level.Voltage(var volts) ? volts.value() + " V" : word(level);
    }
}
