package org.loomproof.pages.bay;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;

/**
 * How the controls of a car that is tried out stand.
 *
 * @param situation key, openings, switches, battery, controller
 * @param wrong the mishap that is in the car, by its id; empty text for none
 */
public record Controls(Situation situation, String wrong) {

    /** What the remote and time can bring the controller to; without supply is what a lost feed leads to. */
    public static final List<ControllerState> STATES = List.of(
            ControllerState.DISARMED,
            ControllerState.ARMING,
            ControllerState.ARMED,
            ControllerState.WARNING,
            ControllerState.SOUNDING,
            ControllerState.OVERRIDE);

    private static final String OPERABLE = "at-";

    /** The name of the field of an operable. */
    public static String field(OperableId operable) {
        return OPERABLE + operable.value();
    }

    /**
     * The controls as fields tell them. What no field names, or names wrongly, is as in a parked car: at rest, disarmed, fed.
     *
     * @param fields the text of a field by its name; empty text where there is none
     */
    public static Controls in(Sheet sheet, UnaryOperator<String> fields) {
        SortedMap<OperableId, String> positions = new TreeMap<>();
        for (Operable each : sheet.operables()) {
            String said = fields.apply(field(each.id()));
            positions.put(each.id(), each.positions().contains(said) ? said : each.rest());
        }
        Situation situation = new Situation(
                positions,
                chosen(SupplyPoint.values(), fields.apply("supply")).orElse(SupplyPoint.REST),
                chosen(ControllerState.values(), fields.apply("state"))
                        .filter(STATES::contains)
                        .orElse(ControllerState.DISARMED),
                chosen(ControllerFeed.values(), fields.apply("feed")).orElse(ControllerFeed.WHOLE),
                chosen(Moment.values(), fields.apply("moment")).orElse(Moment.SETTLED));
        return new Controls(situation, fields.apply("wrong"));
    }

    /** The word of a value in fields and messages. */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E extends Enum<E>> Optional<E> chosen(E[] values, String word) {
        return Arrays.stream(values).filter(each -> word(each).equals(word)).findFirst();
    }
}
