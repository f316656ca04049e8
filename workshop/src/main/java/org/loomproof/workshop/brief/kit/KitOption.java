package org.loomproof.workshop.brief.kit;

import java.util.List;

/**
 * Something on the kit that can be set, such as a jumper, a pulse length or an input's polarity.
 *
 * @param name what the kit calls it
 * @param settings what it may be set to; the first is how it comes out of the box
 * @param leads the leads whose port depends on it
 */
public record KitOption(String name, List<String> settings, List<LeadId> leads) {

    public KitOption {
        settings = List.copyOf(settings);
        leads = List.copyOf(leads);
    }
}
