package org.loomproof.workshop.brief.read;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code vehicle}: what is said of the vehicle as a whole. */
final class VehicleReader {

    private static final double OLDEST_BATTERY_YEARS = 50;

    private VehicleReader() {}

    static VehicleFacts read(MappingCursor in, FigureReader figures) {
        MappingCursor battery = in.mappingOrEmpty("battery");
        Figure<AmpHours> capacity = figures.orUsual(battery, "capacity", Unit.AMP_HOURS, "battery.capacity");
        Optional<Double> age = battery.find("age-years").map(VehicleReader::years);
        battery.close();
        VehicleFacts facts = new VehicleFacts(
                in.text("name"),
                figures.value(in, "system-voltage", Unit.VOLTS),
                in.word("ground", VehicleFacts.GroundPolarity.class),
                in.wordOr("gearbox", VehicleFacts.Gearbox.NOT_SAID),
                in.word("drive", VehicleFacts.Drive.class),
                in.word("start", VehicleFacts.Start.class),
                in.word("key", VehicleFacts.Key.class),
                in.word("steering", VehicleFacts.Steering.class),
                in.textOrEmpty("restraints"),
                in.textOrEmpty("data-bus"),
                in.textOrEmpty("factory-alarm"),
                capacity,
                age,
                figures.orUsual(in, "sleep-current", Unit.AMPS_OR_NONE, "vehicle.sleep-current"));
        in.close();
        return facts;
    }

    private static double years(Cursor at) {
        String text = at.text();
        double years = text.matches("\\d{1,3}(\\.\\d{1,3})?") ? Double.parseDouble(text) : -1;
        if (years < 0 && at.isText()) {
            at.problem(ProblemKind.NOT_A_NUMBER, Phrase.of("problem.wanted.years"));
        } else if (years > OLDEST_BATTERY_YEARS) {
            at.problem(ProblemKind.OUT_OF_RANGE, Phrase.of("problem.wanted.years"));
        }
        return years;
    }
}
