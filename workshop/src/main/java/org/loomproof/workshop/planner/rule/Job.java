package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.planner.coupling.Feed;
import org.loomproof.workshop.planner.coupling.Supplies;
import org.loomproof.workshop.planner.survey.Finder;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.WireDraw;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.sizing.RelayChoice;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.Diodes;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.relay.Relays;
import org.loomproof.workshop.trade.wire.Conductors;

/**
 * What every rule may look at: the brief, and what has been read out of its sheet.
 *
 * @param brief what is given
 * @param finder looks for circuits
 * @param draw reckons what flows in wires
 */
public record Job(Brief brief, Finder finder, WireDraw draw) {

    /** The coils of relays on the constant supply hang behind one fuse. */
    private static final AddedPartId COIL_FUSE = new AddedPartId("coil-fuse");

    /** What hangs on the ignition hangs behind one fuse. */
    public static final AddedPartId IGNITION_FUSE = new AddedPartId("ignition-fuse");

    /** A diode in a 12 V car blocks at least this, spikes included. Common practice, no published source. */
    private static final Volts DIODE_BLOCKS = new Volts(400);

    /** The job of a brief. */
    public static Job of(Brief brief) {
        WireDraw draw = new WireDraw(brief.sheet());
        return new Job(brief, new Finder(brief.sheet(), draw), draw);
    }

    /** True when the order asks for it. */
    public boolean wants(Wish wish) {
        return wish == Wish.BASICS || brief.order().wishes().contains(wish);
    }

    /** The length of wire from the controller to a circuit. */
    public Metres run(Circuit circuit) {
        Figure<Metres> known = brief.order().shop().runs().get(circuit.id());
        return (known != null ? known : brief.order().shop().usualRun()).typical();
    }

    /** The length of wire from the controller to a place that no circuit names. */
    public Metres usualRun() {
        return brief.order().shop().usualRun().typical();
    }

    /** The factory wire's size; when it is not said, the thinnest that the factory fuse protects. */
    public SquareMillimetres factorySize(Circuit circuit) {
        Optional<SquareMillimetres> said = circuit.size().map(Figure::high);
        double fuse = Finder.findFuseAmps(circuit).orElse(0.0);
        return said.orElseGet(() -> Conductors.listMetric().stream()
                .filter(size -> size.fuseCeiling().value() >= fuse)
                .findFirst()
                .orElse(Conductors.listMetric().getLast())
                .area());
    }

    /** The constant supply, as a feed for relay coils. */
    public Feed coilFeed(Circuit constant) {
        return Feed.from(constant, COIL_FUSE, run(constant));
    }

    /**
     * The same for coils that leads work. An output that clamps into the controller's supply would feed a controller without its fuse
     * through the coil: those coils hang behind the controller's own fuse, and all are dead together.
     */
    public Feed coilFeed(Circuit constant, List<Lead> leads) {
        return leads.stream().anyMatch(lead -> lead.port() instanceof Port.LowSide out && out.clamp())
                ? brief.kit().leads().stream()
                        .filter(each -> each.port() instanceof Port.Supply)
                        .findFirst()
                        .map(supply -> Feed.from(constant, Supplies.fuseOf(supply), run(constant)))
                        .orElseGet(() -> coilFeed(constant))
                : coilFeed(constant);
    }

    /** The constant supply, as a feed of its own for what a lead switches. */
    public Feed loadFeed(Circuit constant, Lead lead) {
        return Feed.from(constant, new AddedPartId(lead.id() + " load-fuse"), run(constant));
    }

    /** The ignition, as a feed for what must be alive only while the key is on. */
    public Feed ignitionFeed(Circuit ignition) {
        return Feed.from(ignition, IGNITION_FUSE, run(ignition));
    }

    /** The constant supply, or what must be measured before there is one. */
    public Found constant() {
        return finder.constantSupply();
    }

    /** Relays at hand: those in stock first, then the usual one, then the rest by contact rating. */
    public List<RelayType> listRelays() {
        return Relays.listRelays().stream()
                .filter(RelayType::isChangeover)
                .sorted(Comparator.comparing(
                                (RelayType r) -> !brief.order().stock().contains(r.name()))
                        .thenComparing(r -> !r.equals(Relays.usual())))
                .toList();
    }

    /** The relay that does for a load on its make contact and a driver for its coil, if there is one. */
    public Optional<RelayType> relayFor(Amps make, Port driver, int coils) {
        return RelayChoice.first(listRelays(), need(make, new Amps(0), driver, coils));
    }

    /** The relay that does for a load on its make contact and a buffer that works its coil, if there is one. */
    public Optional<RelayType> relayBehind(BufferType buffer, Amps make, int coils) {
        return RelayChoice.first(listRelays(), needBehind(buffer, make, new Amps(0), coils));
    }

    /** What is asked of a relay whose coil a buffer works. */
    public RelayChoice.Need needBehind(BufferType buffer, Amps make, Amps breaking, int coils) {
        Volts lost = new Volts(buffer.closed().value() * buffer.rating().value());
        return new RelayChoice.Need(
                make,
                breaking,
                new Amps(buffer.rating().value() / coils),
                lost,
                brief.order().shop().hottest());
    }

    /** What is asked of a relay whose coil an output drives. */
    public RelayChoice.Need need(Amps make, Amps breaking, Port driver, int coils) {
        return new RelayChoice.Need(
                make,
                breaking,
                new Amps(ratingOf(driver).value() / coils),
                saturationOf(driver),
                brief.order().shop().hottest());
    }

    /** What an output may carry at the least; a coil on something else than an output is not limited. */
    public static Amps ratingOf(Port port) {
        return switch (port) {
            case Port.LowSide out -> out.rating().low();
            case Port.HighSide out -> out.rating().low();
            case Port.Input in -> new Amps(Double.MAX_VALUE);
            case Port.Supply s -> new Amps(Double.MAX_VALUE);
            case Port.Ground g -> new Amps(Double.MAX_VALUE);
            case Port.ToExtra x -> new Amps(Double.MAX_VALUE);
        };
    }

    /** Whether current can get back through an output into a controller that has lost a feed. */
    static boolean leaks(Port port) {
        return switch (port) {
            case Port.LowSide out -> out.bodyDiode() || out.clamp();
            case Port.HighSide out -> out.bodyDiode();
            case Port.Supply s -> false;
            case Port.Ground g -> false;
            case Port.Input in -> false;
            case Port.ToExtra x -> false;
        };
    }

    private static Volts saturationOf(Port port) {
        return switch (port) {
            case Port.LowSide out -> out.saturation().high();
            case Port.HighSide out -> out.saturation().high();
            case Port.Input in -> new Volts(0);
            case Port.Supply s -> new Volts(0);
            case Port.Ground g -> new Volts(0);
            case Port.ToExtra x -> new Volts(0);
        };
    }

    /** The smallest diode that carries the current, those in stock first. */
    public Optional<DiodeType> findDiode(Amps carries) {
        return Diodes.listDiodes().stream()
                .filter(d ->
                        d.average().value() >= carries.value() && d.reverse().value() >= DIODE_BLOCKS.value())
                .min(Comparator.comparingDouble((DiodeType d) -> d.average().value())
                        .thenComparing(d -> !brief.order().stock().contains(d.name()))
                        .thenComparingDouble(d -> d.reverse().value()));
    }

    /** The diode for signals and coils. */
    public DiodeType signalDiode() {
        return findDiode(new Amps(1)).orElseThrow(() -> new IllegalStateException("no 1 A diode in the parts data"));
    }

    /** The kit's extras of a kind, in the kit's order. */
    public List<Extra> listExtras(Extra.Kind kind) {
        return brief.kit().extras().stream().filter(e -> e.kind() == kind).toList();
    }

    /** The kit's leads of a role, in the kit's order. */
    public List<Lead> listLeads(LeadRole role) {
        List<Lead> leads = new ArrayList<>(brief.kit().leads());
        leads.removeIf(lead -> lead.role() != role);
        return leads;
    }
}
