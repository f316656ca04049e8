package org.loomproof.workshop.brief.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/**
 * One security system.
 *
 * @param name what its box says
 * @param leastSupply the controller is without supply under this
 * @param mostSupply the most it bears
 * @param survives what its controller bears beyond that for a short while
 * @param standby what the controller draws when armed and idle
 * @param leads all of them, plug by plug
 * @param options what can be set
 * @param extras what else is in the box
 * @param behaviour how the controller behaves
 */
public record Kit(
        String name,
        Figure<Volts> leastSupply,
        Figure<Volts> mostSupply,
        Survival survives,
        Figure<Amps> standby,
        List<Lead> leads,
        List<KitOption> options,
        List<Extra> extras,
        Behaviour behaviour) {

    public Kit {
        leads = List.copyOf(leads);
        options = List.copyOf(options);
        extras = List.copyOf(extras);
    }

    /**
     * The kit with some of its options set; the others stay as they come.
     *
     * @throws IllegalArgumentException if the kit has no such option or setting
     */
    public Kit set(List<Choice> choices) {
        Map<LeadId, Port> ports = new HashMap<>();
        choices.forEach(choice -> ports.putAll(setting(choice).ports()));
        List<Lead> asSet = leads.stream()
                .map(lead -> lead.withPort(ports.getOrDefault(lead.id(), lead.port())))
                .toList();
        return withLeads(asSet);
    }

    /** The same with other leads. */
    public Kit withLeads(List<Lead> others) {
        return new Kit(name, leastSupply, mostSupply, survives, standby, others, options, extras, behaviour);
    }

    /** How every option stands when some are chosen: those, and the others as they come. */
    public List<Choice> standing(List<Choice> choices) {
        return options.stream()
                .map(option -> choices.stream()
                        .filter(choice -> choice.option().equals(option.name()))
                        .findFirst()
                        .orElse(new Choice(option.name(), option.usual().name())))
                .toList();
    }

    /** How the options that a lead depends on stand when some are chosen. */
    public List<Choice> standing(List<Choice> choices, LeadId lead) {
        return standing(choices).stream()
                .filter(choice -> option(choice.option()).concerns(lead))
                .toList();
    }

    private KitOption.Setting setting(Choice choice) {
        return option(choice.option())
                .find(choice.setting())
                .orElseThrow(
                        () -> new IllegalArgumentException(choice.option() + " has no setting " + choice.setting()));
    }

    private KitOption option(String name) {
        return options.stream()
                .filter(o -> o.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no option " + name + " on the kit"));
    }

    /** What comes in the box under that name, if anything does. */
    public Optional<Extra> findExtra(String extra) {
        return extras.stream().filter(e -> e.name().equals(extra)).findFirst();
    }

    /** The lead of that id; the id must be in the kit. */
    public Lead lead(LeadId id) {
        return leads.stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no lead " + id + " in the kit"));
    }
}
