package org.loomproof.papers.schematic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Volts;

/**
 * The schematic at one moment. Nothing moves: a conductor that stands at a voltage is drawn heavier, one that carries current
 * heaviest, and each added wire says its volts where its size stood.
 */
public final class LiveSchematic {

    /** Volts from which a conductor counts as standing at a voltage. Common practice, no published source. */
    public static final double LIVE_VOLTS = 1.0;

    /** Amps from which it counts as carrying: more than an input takes. Common practice, no published source. */
    public static final double CARRYING_AMPS = 0.01;

    private static final double DEAD = 0.9;
    private static final double LIVE = 2.2;
    private static final double CARRYING = 3.2;

    /**
     * What is on a conductor.
     *
     * @param volts against the body
     * @param amps through it, either way
     * @param isFloating whether nothing holds it, so that a meter would show what it likes
     */
    public record On(double volts, double amps, boolean isFloating) {

        /** Whether it stands at a voltage. */
        public boolean isLive() {
            return !isFloating && Math.abs(volts) >= LIVE_VOLTS;
        }

        /** Whether it carries current. */
        public boolean isCarrying() {
            return Math.abs(amps) >= CARRYING_AMPS;
        }

        private double width() {
            if (isCarrying()) {
                return CARRYING;
            }
            return isLive() ? LIVE : DEAD;
        }
    }

    private final Map<String, On> found;
    private final Wording words;
    private final Map<String, AddedWire> wires = new HashMap<>();

    private LiveSchematic(Plan plan, Map<String, On> found, Wording words) {
        this.found = found;
        this.words = words;
        plan.wires().forEach(wire -> wires.put(wire.id().value(), wire));
    }

    /**
     * The sheets of a plan at one moment.
     *
     * @param sheets as {@link Schematic#sheets} placed them
     * @param found what is on the conductors: added wires by their names, factory wires by {@link #circuit}
     */
    public static List<PlacedDrawing> of(List<PlacedDrawing> sheets, Plan plan, Map<String, On> found, Wording words) {
        LiveSchematic live = new LiveSchematic(plan, found, words);
        return sheets.stream()
                .map(sheet -> sheet.redrawn(live::pen, live::letters))
                .toList();
    }

    /** The name under which a factory wire is drawn, on the side that its path lists before it or after. */
    public static String circuit(CircuitId id, boolean before) {
        return "circuit " + id.value() + (before ? " before" : " after");
    }

    private Pen pen(Pen pen) {
        On on = found.get(pen.draws());
        return on == null ? pen : pen.wide(on.width());
    }

    /** A wire's tag says its volts in place of its size; everything else stays. */
    private Ink.Lettering letters(Ink.Lettering letters) {
        for (String word : letters.text().split(" ", -1)) {
            AddedWire wire = wires.get(word);
            On on = found.get(word);
            if (wire != null && on != null) {
                return letters.saying(letters.text().replace(words.wire(wire), volts(on)));
            }
        }
        return letters;
    }

    private String volts(On on) {
        return on.isFloating()
                ? words.of("schematic.floating")
                : words.figure(new Volts(Math.round(on.volts() * 10) / 10.0));
    }
}
