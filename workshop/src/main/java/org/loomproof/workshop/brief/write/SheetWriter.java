package org.loomproof.workshop.brief.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.brief.sheet.Where;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.brief.text.YamlPrinter;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * Writes a sheet as a file that reads back as the same sheet, but for where things stand in the text. Of a completed sheet
 * every assumed figure is written out as its range with the word {@code assumed} behind it.
 */
public final class SheetWriter {

    private SheetWriter() {}

    /** The sheet's text. */
    public static String write(Sheet sheet) {
        return write(vehicle(sheet.vehicle()), sheet.operables(), sheet.circuits());
    }

    /** The text of a sheet of which perhaps not all of the vehicle is known yet; {@code vehicle} is printed as given. */
    public static String write(Map<String, ?> vehicle, List<Operable> operables, List<Circuit> circuits) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("format", "loomproof sheet 1");
        entries.put("vehicle", vehicle);
        entries.put(
                "openings",
                operables.stream()
                        .filter(Operable::isOpening)
                        .map(SheetWriter::opening)
                        .toList());
        entries.put(
                "controls",
                operables.stream()
                        .filter(operable -> operable.kind() == Operable.Kind.CONTROL)
                        .map(SheetWriter::control)
                        .toList());
        entries.put("circuits", circuits.stream().map(SheetWriter::circuit).toList());
        return YamlPrinter.print(entries);
    }

    private static Map<String, Object> vehicle(VehicleFacts facts) {
        FigureText figures = new FigureText(Certainty.STATED);
        Map<String, Object> battery = new LinkedHashMap<>();
        battery.put("capacity", figures.of(facts.batteryCapacity()));
        battery.put(
                "age-years", facts.batteryAgeYears().map(SheetWriter::number).orElse(""));
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("name", facts.name());
        entries.put("system-voltage", QuantityWriter.write(facts.systemVoltage()));
        entries.put("ground", Words.of(facts.groundPolarity()));
        entries.put("gearbox", Words.of(facts.gearbox()));
        entries.put("drive", Words.of(facts.drive()));
        entries.put("start", Words.of(facts.start()));
        entries.put("key", Words.of(facts.key()));
        entries.put("steering", Words.of(facts.steering()));
        entries.put("restraints", facts.restraints());
        entries.put("data-bus", facts.dataBus());
        entries.put("factory-alarm", facts.factoryAlarm());
        entries.put("battery", battery);
        entries.put("sleep-current", figures.of(facts.sleepCurrent()));
        return entries;
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }

    private static Map<String, Object> opening(Operable opening) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("id", opening.id().value());
        entries.put("kind", Words.of(opening.kind()));
        return entries;
    }

    private static Map<String, Object> control(Operable control) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("id", control.id().value());
        entries.put("positions", control.positions());
        entries.put(
                "moves-with-locks",
                control.movesWithLocks().map(moves -> moves ? "yes" : "no").orElse(""));
        return entries;
    }

    private static Map<String, Object> circuit(Circuit circuit) {
        FigureText figures = new FigureText(circuit.basis().certainty());
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("id", circuit.id().value());
        entries.put("role", circuit.role().word());
        entries.put("where", where(circuit.where()));
        entries.put("colour", circuit.colour().map(SheetWriter::colour).orElse(""));
        entries.put("size", figures.of(circuit.size()));
        entries.put("rest", level(circuit.switching().rest()));
        entries.put("active", level(circuit.switching().active()));
        entries.put("lingers", figures.of(circuit.switching().lingers()));
        entries.put("pulsed", figures.of(circuit.switching().pulsed()));
        entries.put("follows", circuit.follows().stream().map(OperableId::value).toList());
        entries.put("access", Words.of(circuit.access()));
        entries.put("certainty", Words.of(circuit.basis().certainty()));
        entries.put("origin", circuit.origin());
        entries.put("note", circuit.note());
        List<List<Object>> paths = paths(circuit.paths(), new StepText(figures));
        if (!paths.isEmpty()) {
            entries.put("path", paths.getFirst());
            entries.put("branches", paths.subList(1, paths.size()));
        }
        return entries;
    }

    private static List<List<Object>> paths(List<List<PathStep>> paths, StepText steps) {
        List<List<Object>> written = new ArrayList<>();
        for (List<PathStep> path : paths) {
            written.add(path.stream().map(steps::of).toList());
        }
        return written;
    }

    private static Map<String, Object> where(Where where) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("panel", where.panel());
        entries.put("connector", where.connector());
        entries.put("cavity", where.cavity());
        entries.put("note", where.note());
        where.carriedBy().ifPresent(carrier -> entries.put("carried-by", Words.of(carrier)));
        return entries;
    }

    /** The colour as a sheet writes it. Shades are kept as one text, the tracer's behind a stroke: {@code dark/light}. */
    public static String colour(WireColour colour) {
        String[] shades = (colour.shade() + "/").split("/", -1);
        String base = (shades[0] + " " + colour.base().code()).strip();
        return base
                + colour.tracer()
                        .map(tracer -> "/" + (shades[1] + " " + tracer.code()).strip())
                        .orElse("");
    }

    /** The level as a sheet writes it. */
    public static String level(Level level) {
        return switch (level) {
            case Level.Ground ground -> "ground";
            case Level.Supply supply -> "supply";
            case Level.Open open -> "open";
            case Level.Resistance(var ohms) -> QuantityWriter.write(ohms);
            case Level.Voltage(var volts) -> QuantityWriter.write(volts);
            case Level.Reversing reversing -> "reversing";
            case Level.Data data -> "data";
        };
    }
}
