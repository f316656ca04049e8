package org.loomproof.workshop.meter.role;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.path.TemplatePath;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.template.RoleTemplate;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** A car with one circuit, written from a template: key, engine, one opening and one switch. */
final class MiniSheet {

    static final OperableId ENGINE = new OperableId("engine");
    static final OperableId OPENING = new OperableId("opening");
    static final OperableId CONTROL = new OperableId("control");
    static final String STOPPED = "stopped";
    static final String REST = "rest";
    static final CircuitId WIRE = new CircuitId("wire");

    private static final Pattern CLOSED_AT = Pattern.compile("closed-at: \\[[^]]*]");
    private static final Basis USUAL = new Basis(Certainty.ASSUMED, Place.nowhere("wire"));

    private MiniSheet() {}

    /** The operables of a car in which the opening is of that kind and the switch has those positions. */
    private static List<Operable> operables(Operable.Kind opening, List<String> control) {
        List<Operable> all = new ArrayList<>();
        all.add(new Operable(Operable.KEY, Operable.Kind.KEY, Operable.KEY_POSITIONS));
        all.add(new Operable(ENGINE, Operable.Kind.CONTROL, List.of(STOPPED, "cranked", "running")));
        all.add(new Operable(OPENING, opening, Operable.OPENING_POSITIONS));
        all.add(new Operable(CONTROL, Operable.Kind.CONTROL, control));
        return all;
    }

    /**
     * The car.
     *
     * @param follows what works the circuit: {@code key}, {@code opening}, {@code control}, {@code engine} or nothing
     * @param control the positions of the switch; lock and unlock changed over where unlock stands before lock
     */
    static Sheet of(WireRole role, Optional<RoleTemplate> template, String rest, String follows, List<String> control) {
        List<Operable> operables = operables(kind(role), control);
        List<OperableId> followed = new ArrayList<>();
        if (!follows.isEmpty()) {
            followed.add(new OperableId(follows));
        }
        if (follows.equals(OPENING.value())
                && control.size() > 1
                && !control.getLast().equals("worked")) {
            followed.add(CONTROL);
        }
        Circuit bare = circuit(role, followed, List.of());
        List<List<PathStep>> paths = template.map(t -> paths(t, bare, rest, follows, control, operables))
                .orElse(List.of());
        return new Sheet(vehicle(), operables, List.of(circuit(role, followed, paths)));
    }

    private static List<List<PathStep>> paths(
            RoleTemplate template,
            Circuit circuit,
            String rest,
            String follows,
            List<String> control,
            List<Operable> operables) {
        List<RoleTemplate.Follower> followers = template.needsFollowers()
                ? List.of(new RoleTemplate.Follower(follows, closedAt(template, follows, control)))
                : List.of();
        String text = template.text(circuit.id().value(), rest, followers);
        boolean changedOver = control.indexOf("unlock") == 1 && control.size() > 2;
        SourceText source =
                new SourceText("usual path of a " + template.role(), changedOver ? changedOver(text) : text);
        return TemplatePath.read(source, circuit, operables, TradeDefaults.read());
    }

    private static List<String> closedAt(RoleTemplate template, String follows, List<String> control) {
        return switch (follows) {
            case "key" -> template.keyAt();
            case "opening" -> List.of(Operable.OPENING_POSITIONS.getLast());
            default -> control.subList(1, control.size());
        };
    }

    private static String changedOver(String text) {
        Matcher matcher = CLOSED_AT.matcher(text);
        return matcher.replaceAll(found -> found.group()
                .replace("unlock", "\u0001")
                .replace("lock", "unlock")
                .replace("\u0001", "lock"));
    }

    private static Operable.Kind kind(WireRole role) {
        return switch (role) {
            case HOOD_TRIGGER -> Operable.Kind.HOOD;
            case TRUNK_TRIGGER -> Operable.Kind.TRUNK;
            default -> Operable.Kind.DOOR;
        };
    }

    private static Circuit circuit(WireRole role, List<OperableId> follows, List<List<PathStep>> paths) {
        CircuitRole entered =
                role.circuits().isEmpty() ? CircuitRole.OTHER : role.circuits().getFirst();
        return new Circuit(
                WIRE,
                entered,
                new Where("", "", "", ""),
                Optional.empty(),
                Optional.empty(),
                new Switching(new Level.Open(), new Level.Open()),
                follows,
                paths,
                Access.MAY_BE_TAPPED,
                USUAL,
                "",
                "");
    }

    private static VehicleFacts vehicle() {
        return new VehicleFacts(
                "",
                new Volts(12),
                VehicleFacts.GroundPolarity.NEGATIVE,
                VehicleFacts.Gearbox.NOT_SAID,
                VehicleFacts.Drive.COMBUSTION,
                VehicleFacts.Start.KEY,
                VehicleFacts.Key.PLAIN,
                VehicleFacts.Steering.LEFT,
                "",
                "",
                "",
                Figure.exactly(new AmpHours(60), USUAL),
                Optional.empty(),
                Figure.exactly(new Amps(0.02), USUAL));
    }
}
