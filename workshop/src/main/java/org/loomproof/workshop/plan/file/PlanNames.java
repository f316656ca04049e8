package org.loomproof.workshop.plan.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;

/**
 * The names a plan may use: of the kit and the sheet, and of its own parts and wires. When the brief could not be read its
 * names are unknown, and any are let pass: the brief's own problems are told first.
 */
final class PlanNames {

    private final Optional<Brief> brief;
    private final Map<String, Lead> leads = new LinkedHashMap<>();
    private final Map<String, Circuit> circuits = new LinkedHashMap<>();
    private final Map<String, Operable> openings = new LinkedHashMap<>();
    private final Map<String, Extra> extras = new LinkedHashMap<>();
    private final Map<String, KitOption> options = new LinkedHashMap<>();
    private final Map<String, AddedPart> parts = new LinkedHashMap<>();
    private final Map<String, AddedWire> wires = new LinkedHashMap<>();

    PlanNames(Optional<Brief> brief) {
        this.brief = brief;
        brief.ifPresent(given -> {
            given.kit().leads().forEach(lead -> leads.put(lead.id().value(), lead));
            given.sheet()
                    .circuits()
                    .forEach(circuit -> circuits.put(circuit.id().value(), circuit));
            given.sheet().operables().stream()
                    .filter(Operable::isOpening)
                    .forEach(opening -> openings.put(opening.id().value(), opening));
            given.kit().options().forEach(option -> options.put(option.name(), option));
            given.kit().extras().forEach(extra -> extras.putIfAbsent(extra.name(), extra));
        });
    }

    void add(AddedPart part) {
        parts.putIfAbsent(part.id().value(), part);
    }

    void add(AddedWire wire) {
        wires.putIfAbsent(wire.id().value(), wire);
    }

    List<Lead> listLeads() {
        return List.copyOf(leads.values());
    }

    Optional<Lead> findLead(String name) {
        return Optional.ofNullable(leads.get(name));
    }

    Optional<Circuit> findCircuit(String name) {
        return Optional.ofNullable(circuits.get(name));
    }

    Optional<AddedPart> findPart(String name) {
        return Optional.ofNullable(parts.get(name));
    }

    Map<String, Lead> leads() {
        return leads;
    }

    Map<String, Circuit> circuits() {
        return circuits;
    }

    Map<String, AddedPart> parts() {
        return parts;
    }

    /** The lead's id at the cursor. */
    String lead(Cursor at) {
        return given(at, leads);
    }

    /** The circuit's id at the cursor. */
    String circuit(Cursor at) {
        return given(at, circuits);
    }

    /** The opening's id at the cursor. */
    String opening(Cursor at) {
        return given(at, openings);
    }

    /** The extra's name at the cursor. */
    String extra(Cursor at) {
        return brief.isEmpty()
                ? at.text()
                : at.reference(extras).map(Extra::name).orElse(Cursor.UNREADABLE);
    }

    /** The kit's option at the cursor, when it has one of that name. */
    Optional<KitOption> option(Cursor at) {
        return brief.isEmpty() ? Optional.empty() : at.reference(options);
    }

    /** The added part's id at the cursor. */
    String part(Cursor at) {
        return at.reference(parts).isPresent() ? at.text() : Cursor.UNREADABLE;
    }

    /** The added wire's id at the cursor. */
    String wire(Cursor at) {
        return at.reference(wires).isPresent() ? at.text() : Cursor.UNREADABLE;
    }

    private String given(Cursor at, Map<String, ?> named) {
        if (brief.isEmpty()) {
            return at.id();
        }
        return at.reference(named).isPresent() ? at.text() : Cursor.UNREADABLE;
    }
}
