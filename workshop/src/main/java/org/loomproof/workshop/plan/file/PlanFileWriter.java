package org.loomproof.workshop.plan.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.YamlPrinter;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Writes a plan file. The same plan gives the same bytes; reasons are written in the language of the given words. */
public final class PlanFileWriter {

    static final String FORMAT = "loomproof plan 1";
    static final String COUPLING = "coupling.";
    static final String BY_HAND = "coupling.by-hand";

    /** What a part that lies at hand may have otherwise than the one that was planned. */
    private static final List<String> FIGURES =
            List.of("length", "size", "rating", "resistance", "coil", "make-rating", "break-rating");

    private final Messages words;

    public PlanFileWriter(Messages words) {
        this.words = words;
    }

    /** The file's text, with a few lines at its head that say what it is and how it is used. */
    public String write(PlanFile file) {
        Map<String, Object> entries = decided(file);
        entries.put("inputs", inputs(file));
        return comment("plan.file.head") + YamlPrinter.print(entries);
    }

    /** What was decided alone, to be changed by hand where the texts it was made from are kept elsewhere. */
    public String writeDecided(PlanFile file) {
        return writeDecided(file, Map.of());
    }

    /**
     * The same with other figures.
     *
     * @param figures by the name of a part or a wire, the entries that are written otherwise, as somebody typed them: they are read,
     *     and judged, with the text
     */
    public String writeDecided(PlanFile file, Map<String, Map<String, String>> figures) {
        Map<String, Object> entries = decided(file);
        for (String kind : List.of("parts", "wires")) {
            entries.computeIfPresent(
                    kind,
                    (name, all) -> ((List<?>) all)
                            .stream()
                                    .map(one -> otherwise((Map<?, ?>) one, figures))
                                    .toList());
        }
        return YamlPrinter.print(entries);
    }

    private static Map<Object, Object> otherwise(Map<?, ?> one, Map<String, Map<String, String>> figures) {
        Map<Object, Object> entry = new LinkedHashMap<>(one);
        figures.getOrDefault(String.valueOf(one.get("id")), Map.of()).forEach((name, typed) -> {
            if (entry.containsKey(name)) {
                entry.put(name, typed);
            }
        });
        return entry;
    }

    /** The figures of a part as they stand in the file, by entry. */
    public static Map<String, String> figures(AddedPart part) {
        return figures(part(part));
    }

    /** Those of a wire. */
    public static Map<String, String> figures(AddedWire wire) {
        return figures(wire(wire));
    }

    private static Map<String, String> figures(Map<String, Object> entry) {
        Map<String, String> figures = new LinkedHashMap<>();
        entry.forEach((name, value) -> {
            if (FIGURES.contains(name)) {
                figures.put(name, String.valueOf(value));
            }
        });
        return figures;
    }

    private Map<String, Object> decided(PlanFile file) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("format", FORMAT);
        entries.put("settings", settings(file));
        entries.put("hookups", file.plan().hookups().stream().map(this::hookup).toList());
        entries.put(
                "parts", file.plan().parts().stream().map(PlanFileWriter::part).toList());
        entries.put(
                "wires", file.plan().wires().stream().map(PlanFileWriter::wire).toList());
        entries.put(
                "refusals", file.plan().refusals().stream().map(this::refusal).toList());
        entries.put("cautions", texts(file.plan().cautions()));
        return entries;
    }

    /** The blank of a plan written by hand: every lead on hold, with the words for deciding them explained. */
    public String writeBlank(PlanFile blank) {
        return comment("plan.file.blank-guide") + write(blank);
    }

    private String comment(String key) {
        StringBuilder out = new StringBuilder();
        words.text(key)
                .lines()
                .forEach(line -> out.append(line.isEmpty() ? "#" : "# " + line).append('\n'));
        return out.toString();
    }

    private Map<String, Object> hookup(Hookup hookup) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("lead", hookup.lead().value());
        switch (hookup) {
            case Hookup.Connect connect -> {
                entry.put("do", HookupReader.CONNECT);
                entry.put("serves", connect.serves().word());
                entry.put("circuits", names(connect.circuits()));
                entry.put("coupling", coupling(connect.coupling()));
                entry.put("parts", names(connect.parts()));
                entry.put("wires", names(connect.wires()));
            }
            case Hookup.Trim trim -> entry.put("do", HookupReader.TRIM);
            case Hookup.CapAndKeep cap -> entry.put("do", HookupReader.CAP_AND_KEEP);
            case Hookup.Hold hold -> {
                entry.put("do", HookupReader.HOLD);
                entry.put("serves", hold.serves().word());
                Map<String, Object> until = new LinkedHashMap<>();
                until.put("name", hold.until().name());
                until.put("what", text(hold.until().what()));
                entry.put("until", until);
            }
        }
        entry.put("because", text(hookup.because()));
        entry.put("instead-of", texts(hookup.insteadOf()));
        return entry;
    }

    /** All options, so that a reader sees what can be set. */
    private static List<Map<String, Object>> settings(PlanFile file) {
        return file.given().brief().kit().standing(file.plan().settings()).stream()
                .map(choice -> {
                    Map<String, Object> entry = new LinkedHashMap<>();
                    entry.put("option", choice.option());
                    entry.put("set-to", choice.setting());
                    return entry;
                })
                .toList();
    }

    private static String coupling(String key) {
        return (key.startsWith(COUPLING) ? key : BY_HAND).substring(COUPLING.length());
    }

    private static Map<String, Object> part(AddedPart part) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("id", part.id().value());
        switch (part) {
            case AddedPart.Relay relay -> {
                entry.put("kind", "relay");
                entry.put("coil", QuantityWriter.write(relay.coil()));
                entry.put("pull-in", QuantityWriter.write(relay.pullIn()));
                entry.put("drop-out", QuantityWriter.write(relay.dropOut()));
                entry.put("make-rating", QuantityWriter.write(relay.makeRating()));
                entry.put("break-rating", QuantityWriter.write(relay.breakRating()));
            }
            case AddedPart.Buffer buffer -> {
                entry.put("kind", "buffer");
                entry.put("works-on", buffer.worksOn().name().toLowerCase(Locale.ROOT));
                entry.put("input", QuantityWriter.write(buffer.input()));
                entry.put("switches-at", QuantityWriter.write(buffer.switchesAt()));
                entry.put("lets-go-at", QuantityWriter.write(buffer.letsGoAt()));
                entry.put("closed", QuantityWriter.write(buffer.closed()));
                entry.put("rating", QuantityWriter.write(buffer.rating()));
            }
            case AddedPart.Diode diode -> {
                entry.put("kind", "diode");
                entry.put("rating", QuantityWriter.write(diode.rating()));
                entry.put("reverse", QuantityWriter.write(diode.reverse()));
            }
            case AddedPart.Zener zener -> {
                entry.put("kind", "zener");
                entry.put("rating", QuantityWriter.write(zener.rating()));
                entry.put("volts", QuantityWriter.write(zener.volts()));
            }
            case AddedPart.Resistor resistor -> {
                entry.put("kind", "resistor");
                entry.put("resistance", QuantityWriter.write(resistor.resistance()));
            }
            case AddedPart.Fuse fuse -> {
                entry.put("kind", "fuse");
                entry.put("rating", QuantityWriter.write(fuse.rating()));
            }
            case AddedPart.Pole pole -> {
                entry.put("kind", "pole");
                entry.put("connector", pole.connector());
                entry.put("to", pole.to());
                entry.put("rating", QuantityWriter.write(pole.rating()));
            }
            case AddedPart.Load load -> {
                entry.put("kind", "load");
                entry.put("extra", load.extra());
                entry.put("draws", QuantityWriter.write(load.draws()));
                load.forward().ifPresent(volts -> entry.put("forward", QuantityWriter.write(volts)));
            }
            case AddedPart.StandbyBattery battery -> {
                entry.put("kind", "standby-battery");
                entry.put("extra", battery.extra());
                entry.put("charging", QuantityWriter.write(battery.charging()));
                entry.put("charged", QuantityWriter.write(battery.charged()));
            }
            case AddedPart.Sender sender -> {
                entry.put("kind", "sender");
                entry.put("extra", sender.extra());
                sender.draws().ifPresent(amps -> entry.put("draws", QuantityWriter.write(amps)));
                entry.put("closes", sender.closes().name().toLowerCase(Locale.ROOT));
                if (sender.twoStage()) {
                    entry.put("two-stage", "yes");
                }
                entry.put("closed", QuantityWriter.write(sender.closed()));
            }
            case AddedPart.PinSwitch pin -> {
                entry.put("kind", "pin-switch");
                entry.put("opening", pin.opening().value());
            }
        }
        return entry;
    }

    private static Map<String, Object> wire(AddedWire wire) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("id", wire.id().value());
        entry.put("from", EndText.write(wire.from()));
        entry.put("to", EndText.write(wire.to()));
        entry.put("length", QuantityWriter.write(wire.length()));
        entry.put("size", QuantityWriter.write(wire.size()));
        return entry;
    }

    private Map<String, Object> refusal(Refusal refusal) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("wish", refusal.wish().word());
        entry.put("because", text(refusal.because()));
        entry.put("possible-if", text(refusal.possibleIf()));
        return entry;
    }

    private static Map<String, Object> inputs(PlanFile file) {
        Map<String, Object> inputs = new LinkedHashMap<>();
        inputs.put("sheet", input(file.given().sheet()));
        inputs.put("kit", input(file.given().kit()));
        inputs.put("order", input(file.given().order()));
        return inputs;
    }

    /** The folder is left out: it says where a file lay on one machine, and nothing about the job. */
    private static Map<String, Object> input(SourceText source) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put(
                "name",
                source.name()
                        .substring(Math.max(
                                        source.name().lastIndexOf('/'),
                                        source.name().lastIndexOf('\\'))
                                + 1));
        entry.put("sha256", TextSum.of(source.text()));
        entry.put("text", source.text());
        return entry;
    }

    private static List<String> names(List<?> ids) {
        return ids.stream().map(Object::toString).toList();
    }

    private List<String> texts(List<Phrase> phrases) {
        return phrases.stream().map(this::text).toList();
    }

    /** On one line: a reason is one paragraph. */
    private String text(Phrase phrase) {
        return words.text(phrase).replaceAll("\\s+", " ").strip();
    }
}
