package org.loomproof.workshop.brief.write;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.text.Words;

/** Writes one step of a path. Every part is written with its name, so that it keeps it. */
final class StepText {

    private final FigureText figures;

    StepText(FigureText figures) {
        this.figures = figures;
    }

    Object of(PathStep step) {
        return switch (step) {
            case PathStep.Supply supply -> "supply";
            case PathStep.Ground ground -> "ground";
            case PathStep.Here here -> "here";
            case PathStep.Point(var id) -> Map.of("point", id.value());
            case PathStep.Part part -> Map.of(word(part), entries(part));
        };
    }

    private static String word(PathStep.Part part) {
        return switch (part) {
            case PathStep.Fuse fuse -> "fuse";
            case PathStep.Wire wire -> "wire";
            case PathStep.Switch contact -> "switch";
            case PathStep.Coil coil -> "coil";
            case PathStep.Contact contact -> "contact";
            case PathStep.Lamp lamp -> "lamp";
            case PathStep.Load load -> "load";
            case PathStep.Resistor resistor -> "resistor";
            case PathStep.Diode diode -> "diode";
            case PathStep.Input input -> "input";
        };
    }

    private Map<String, Object> entries(PathStep.Part part) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("id", part.id().value());
        switch (part) {
            case PathStep.Fuse fuse -> {
                entries.put("rating", figures.of(fuse.rating()));
                entries.put("resistance", figures.of(fuse.coldResistance()));
            }
            case PathStep.Wire wire -> entries.put("resistance", figures.of(wire.resistance()));
            case PathStep.Switch contact -> {
                entries.put("operated-by", contact.operatedBy().value());
                entries.put("closed-at", List.copyOf(contact.closedAt()));
                entries.put("closed-resistance", figures.of(contact.closedResistance()));
            }
            case PathStep.Coil coil -> {
                entries.put("relay", coil.relay().value());
                entries.put("resistance", figures.of(coil.resistance()));
                entries.put("pull-in", figures.of(coil.pullIn()));
                entries.put("drop-out", figures.of(coil.dropOut()));
            }
            case PathStep.Contact contact -> {
                entries.put("relay", contact.relay().value());
                entries.put("closed", contact.closedWhenEnergised() ? "energised" : "released");
                entries.put("closed-resistance", figures.of(contact.closedResistance()));
            }
            case PathStep.Lamp lamp -> entries.put("power", figures.of(lamp.power()));
            case PathStep.Load load -> {
                entries.put("kind", Words.of(load.kind()));
                entries.put("resistance", figures.of(load.resistance()));
            }
            case PathStep.Resistor resistor -> entries.put("resistance", figures.of(resistor.resistance()));
            case PathStep.Diode diode -> entries.put("conducts", diode.forwards() ? "forwards" : "backwards");
            case PathStep.Input input -> {
                entries.put("pull-up", figures.of(input.pullUp()));
                entries.put("pull-up-to", figures.of(input.pullUpTo()));
                entries.put("pull-down", figures.of(input.pullDown()));
                entries.put("low-below", figures.of(input.lowBelow()));
                entries.put("high-above", figures.of(input.highAbove()));
            }
        }
        return entries;
    }
}
