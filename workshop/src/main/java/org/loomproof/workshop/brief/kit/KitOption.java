package org.loomproof.workshop.brief.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something on the kit that can be set, such as a jumper, a pulse length or an input's polarity.
 *
 * @param name what the kit calls it
 * @param settings what it may be set to, at least one; the first is how it comes out of the box
 */
public record KitOption(String name, List<Setting> settings) {

    /**
     * One of the ways an option can be set.
     *
     * @param name what the kit calls it
     * @param ports what leads become by it, where that is not what they are out of the box
     */
    public record Setting(String name, Map<LeadId, Port> ports) {
        public Setting {
            ports = Map.copyOf(ports);
        }
    }

    public KitOption {
        settings = List.copyOf(settings);
        if (settings.isEmpty()) {
            throw new IllegalArgumentException(name + " has no setting");
        }
    }

    /** How it comes out of the box. */
    public Setting usual() {
        return settings.getFirst();
    }

    /** The setting of that name, if there is one. */
    public Optional<Setting> find(String setting) {
        return settings.stream().filter(s -> s.name().equals(setting)).findFirst();
    }

    /** True when the lead's port depends on it. */
    public boolean concerns(LeadId lead) {
        return settings.stream().anyMatch(s -> s.ports().containsKey(lead));
    }
}
