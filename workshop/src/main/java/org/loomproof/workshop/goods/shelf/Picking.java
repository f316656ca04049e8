package org.loomproof.workshop.goods.shelf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;
import org.loomproof.workshop.sizing.JointChoice;
import org.loomproof.workshop.sizing.JointChoice.Method;
import org.loomproof.workshop.sizing.ResistorHeat;
import org.loomproof.workshop.trade.connector.PlugType;
import org.loomproof.workshop.trade.connector.Plugs;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.Diodes;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.diode.Zeners;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.Conductors;

/**
 * Counts what one plan needs. Parts and joints as the plan has them; what goes around them (sleeves, ties, screws) by rules
 * that are common practice without a published source.
 */
final class Picking {

    /** More wire than the run: it is never laid straight. */
    private static final BigDecimal WIRE_PER_RUN = new BigDecimal("1.10");

    private static final BigDecimal SLEEVE_A_JOINT_METRES = new BigDecimal("0.05");
    /** A tie every 30 cm of a bundle, and three wires lie in a bundle on the whole way. */
    private static final double RUN_A_TIE_METRES = 0.9;

    private static final int SCREWS_A_SOUNDER = 2;

    private final Brief brief;
    private final Plan plan;
    private final List<PlacedJoint> joints;
    private final List<Extra> box;
    private final Basket basket = new Basket();
    private final List<PlacedJoint> unsized = new ArrayList<>();
    private final Set<Tool> tools =
            EnumSet.of(Tool.METER, Tool.PANEL_LEVERS, Tool.STRIPPER, Tool.SIDE_CUTTER, Tool.MARKER);

    Picking(Brief brief, Plan plan) {
        this.brief = brief;
        this.plan = plan;
        this.joints = new Joints(brief, plan).list();
        this.box = new ArrayList<>(brief.kit().extras());
    }

    PickList count() {
        basket.add(new Article(Article.Kind.KIT, brief.kit().name()), 1, Item.From.BOX);
        plan.parts().forEach(this::part);
        connectors();
        box.forEach(extra -> basket.add(new Article(Article.Kind.EXTRA, extra.name()), 1, Item.From.BOX));
        plan.wires().forEach(this::wire);
        joints.forEach(this::joint);
        endCaps();
        ties();
        return new PickList(basket.list(), tools, unsized);
    }

    private void part(AddedPart part) {
        String name = part.id().value();
        switch (part) {
            case AddedPart.Relay relay -> {
                Article article =
                        new Article(Article.Kind.RELAY, amps(relay.makeRating()) + "/" + amps(relay.breakRating()));
                basket.add(article, 1, fromBox(e -> isThat(e, relay)) ? Item.From.BOX : Item.From.SHELF, name);
                basket.add(
                        Article.of(Article.Kind.RELAY_SOCKET),
                        1,
                        fromBox(e -> e.kind() == Extra.Kind.RELAY_SOCKET) ? Item.From.BOX : Item.From.SHELF,
                        name);
                screws(1, name);
            }
            case AddedPart.Buffer buffer -> {
                String size =
                        amps(buffer.rating()) + " " + buffer.worksOn().name().toLowerCase(Locale.ROOT);
                basket.add(new Article(Article.Kind.BUFFER, size), 1, Item.From.SHELF, name);
            }
            case AddedPart.Diode diode -> {
                Optional<String> type =
                        Diodes.findFor(diode.rating(), diode.reverse()).map(DiodeType::name);
                diode(type, diode, diode.reverse(), name);
            }
            case AddedPart.Zener zener ->
                diode(Zeners.find(zener.volts()).map(ZenerType::name), zener, zener.volts(), name);
            case AddedPart.Resistor resistor -> {
                Watts heat = ResistorHeat.most(resistor.resistance());
                String watts = Figures.withPrefix(ResistorHeat.size(heat).orElse(heat));
                basket.add(
                        new Article(Article.Kind.RESISTOR, Figures.withPrefix(resistor.resistance()) + " " + watts),
                        1,
                        Item.From.SHELF,
                        name);
            }
            case AddedPart.Fuse fuse -> {
                basket.add(new Article(Article.Kind.FUSE, amps(fuse.rating())), 1, Item.From.SHELF, name);
                basket.add(Article.of(Article.Kind.FUSE_HOLDER), 1, Item.From.SHELF, name);
            }
            // Poles are bought together: as a connector of both halves.
            case AddedPart.Pole pole -> {}
            case AddedPart.Load load -> extra(load.extra(), name);
            case AddedPart.Sender sender -> extra(sender.extra(), name);
            // It comes inside the sounder, which is picked as the load that it is.
            case AddedPart.StandbyBattery battery -> {}
            case AddedPart.PinSwitch pin -> {
                basket.add(Article.of(Article.Kind.PIN_SWITCH), 1, Item.From.SHELF, name);
                tools.add(Tool.DRILL);
                boolean hood = brief.sheet().operable(pin.opening()).kind() == Operable.Kind.HOOD;
                basket.add(Article.of(Article.Kind.GROMMET), hood ? 1 : 0, Item.From.SHELF, name);
            }
        }
    }

    private void connectors() {
        Map<String, List<AddedPart.Pole>> connectors = new LinkedHashMap<>();
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Pole pole) {
                connectors
                        .computeIfAbsent(pole.connector(), c -> new ArrayList<>())
                        .add(pole);
            }
        }
        connectors.forEach((name, poles) -> {
            PlugType plug = Plugs.of(poles.getFirst().rating(), poles.size());
            int count = Math.ceilDiv(poles.size(), plug.poles());
            basket.add(
                    new Article(Article.Kind.CONNECTOR, plug.poles() + " x " + amps(plug.carries())),
                    count,
                    Item.From.SHELF,
                    name);
            basket.add(Article.of(Article.Kind.GROMMET), count, Item.From.SHELF, name);
            tools.add(Tool.CRIMP_TOOL);
        });
    }

    private void extra(String extra, String name) {
        boolean inBox = fromBox(e -> e.name().equals(extra));
        basket.add(new Article(Article.Kind.EXTRA, extra), 1, inBox ? Item.From.BOX : Item.From.SHELF, name);
        brief.kit().findExtra(extra).ifPresent(known -> mounting(known, name));
    }

    /** A sounder's wire goes through the bulkhead, an actuator's into a door. */
    private void mounting(Extra extra, String name) {
        switch (extra.kind()) {
            case SOUNDER -> {
                basket.add(Article.of(Article.Kind.GROMMET), 1, Item.From.SHELF, name);
                screws(SCREWS_A_SOUNDER, name);
            }
            case ACTUATOR -> basket.add(Article.of(Article.Kind.GROMMET), 1, Item.From.SHELF, name);
            case INDICATOR, OVERRIDE_BUTTON, SHOCK_SENSOR, INTERRUPT_RELAY, RELAY_SOCKET, OTHER -> {}
        }
    }

    /** By its type number where it is one of the list, else by what it must bear. */
    private void diode(Optional<String> type, AddedPart.Junction diode, Volts bears, String name) {
        String size = type.orElseGet(() -> amps(diode.rating()) + " " + Figures.withPrefix(bears));
        basket.add(new Article(Article.Kind.DIODE, size), 1, Item.From.SHELF, name);
    }

    private void screws(int count, String name) {
        basket.add(Article.of(Article.Kind.SCREW), count, Item.From.SHELF, name);
        tools.add(Tool.DRILL);
    }

    private boolean fromBox(Predicate<Extra> wanted) {
        Optional<Extra> found = box.stream().filter(wanted).findFirst();
        found.ifPresent(box::remove);
        return found.isPresent();
    }

    private static boolean isThat(Extra extra, AddedPart.Relay relay) {
        return extra.kind() == Extra.Kind.INTERRUPT_RELAY
                && isAtLeast(extra.makeRating(), relay.makeRating())
                && isAtLeast(extra.breakRating(), relay.breakRating());
    }

    private static boolean isAtLeast(Optional<Figure<Amps>> has, Amps needs) {
        return has.filter(h -> h.low().value() >= needs.value()).isPresent();
    }

    /** A wire that begins at the kit's lead is that lead; nobody says how long it came, so wire to go on with is at hand. */
    private void wire(AddedWire wire) {
        String size = Conductors.find(wire.size())
                .map(Conductor::name)
                .orElse(wire.size().toString());
        basket.addMetres(
                new Article(Article.Kind.WIRE, size),
                BigDecimal.valueOf(wire.length().value()).multiply(WIRE_PER_RUN),
                wire.id().value());
    }

    private void joint(PlacedJoint joint) {
        String place = joint.name();
        if (joint.choice().isEmpty()) {
            unsized.add(joint);
            return;
        }
        JointChoice choice = joint.choice().get();
        switch (choice.method()) {
            case WRAP_AND_SOLDER, SOLDER_SPLICE -> {
                tools.add(Tool.SOLDERING_IRON);
                tools.add(Tool.HEAT_GUN);
                basket.addMetres(Article.of(Article.Kind.SLEEVE), SLEEVE_A_JOINT_METRES, place);
            }
            case TAP_CONNECTOR -> crimped(Article.Kind.TAP, choice, place);
            case CRIMP_SPLICE -> crimped(Article.Kind.SPLICE, choice, place);
            case PLUG_CONTACT -> tools.add(Tool.CRIMP_TOOL);
            case TERMINAL -> crimped(Article.Kind.TERMINAL, choice, place);
            case RING -> {
                crimped(Article.Kind.RING, choice, place);
                tools.add(Tool.SPANNER);
                screws(1, place);
            }
        }
    }

    private void crimped(Article.Kind kind, JointChoice choice, String place) {
        tools.add(choice.method() == Method.TAP_CONNECTOR ? Tool.SIDE_CUTTER : Tool.CRIMP_TOOL);
        String size = choice.sleeve()
                .map(s -> s.word())
                .orElseGet(() -> Figures.plain(choice.by().value()) + " mm²");
        basket.add(new Article(kind, size), 1, Item.From.SHELF, place);
    }

    private void endCaps() {
        for (Hookup hookup : plan.hookups()) {
            if (!(hookup instanceof Hookup.Connect)) {
                basket.add(
                        Article.of(Article.Kind.END_CAP),
                        1,
                        Item.From.SHELF,
                        hookup.lead().value());
            }
        }
    }

    /** Every joint is held, and so is every run. */
    private void ties() {
        if (plan.wires().isEmpty()) {
            return;
        }
        double metres =
                plan.wires().stream().mapToDouble(wire -> wire.length().value()).sum();
        int ties = joints.size() + (int) Math.ceil(metres / RUN_A_TIE_METRES);
        basket.add(Article.of(Article.Kind.TIE), ties, Item.From.SHELF);
        basket.add(Article.of(Article.Kind.TAPE), 1, Item.From.SHELF);
    }

    private static String amps(Amps amps) {
        return String.format(Locale.ROOT, "%s A", Figures.plain(amps.value()));
    }
}
