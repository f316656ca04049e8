package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code options}: what can be set on the kit, and what each setting makes of a lead. */
final class OptionsReader {

    private final PortReader ports;
    private final Map<String, Lead> leads = new LinkedHashMap<>();
    private final Map<LeadId, String> setBy = new LinkedHashMap<>();

    OptionsReader(FigureReader figures, List<Lead> leads) {
        this.ports = new PortReader(figures);
        leads.forEach(lead -> this.leads.putIfAbsent(lead.id().value(), lead));
    }

    List<KitOption> read(List<Cursor> items) {
        References names = new References();
        List<KitOption> options = new ArrayList<>();
        for (Cursor item : items) {
            MappingCursor option = item.mapping();
            String name = option.text("name");
            option.find("name").ifPresent(at -> names.give(name, at));
            List<KitOption.Setting> settings = settings(option, name);
            option.close();
            if (!settings.isEmpty()) {
                options.add(new KitOption(name, settings));
            }
        }
        return options;
    }

    private List<KitOption.Setting> settings(MappingCursor option, String name) {
        References settingNames = new References();
        List<KitOption.Setting> settings = new ArrayList<>();
        for (Cursor item : option.itemsNeeded("settings")) {
            MappingCursor setting = item.mapping();
            String settingName = setting.text("name");
            setting.find("name").ifPresent(at -> settingNames.give(settingName, at));
            Map<LeadId, Port> becomes = becomes(setting, name);
            if (settings.isEmpty() && !becomes.isEmpty()) {
                // Two statements of what comes out of the box could differ.
                setting.find("ports")
                        .ifPresent(at -> at.problem(
                                ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.first-setting-as-it-comes")));
            }
            setting.close();
            settings.add(new KitOption.Setting(settingName, becomes));
        }
        return settings;
    }

    private Map<LeadId, Port> becomes(MappingCursor setting, String option) {
        References named = new References();
        Map<LeadId, Port> becomes = new LinkedHashMap<>();
        for (Cursor item : setting.items("ports")) {
            MappingCursor entry = item.mapping();
            Optional<Cursor> leadAt = entry.need("lead");
            Optional<Lead> lead = leadAt.flatMap(at -> at.reference(leads));
            Port port = ports.read(entry.mapping("port"), lead.map(Lead::role).orElse(LeadRole.OTHER));
            entry.close();
            if (leadAt.isPresent() && lead.isPresent()) {
                named.give(lead.get().id().value(), leadAt.get());
                if (entry.mappingOrEmpty("port")
                        .find("kind")
                        .filter(PortReader::isKind)
                        .isPresent()) {
                    check(leadAt.get(), lead.get(), port, option);
                }
                becomes.put(lead.get().id(), port);
            }
        }
        return becomes;
    }

    /** A setting turns a lead's polarity or its timing; it makes no output of an input, and no lead answers to two options. */
    private void check(Cursor at, Lead lead, Port port, String option) {
        if (way(lead.port()) == Way.FIXED || way(lead.port()) != way(port)) {
            at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.same-way-port"));
        }
        String other = setBy.putIfAbsent(lead.id(), option);
        if (other != null && !other.equals(option)) {
            at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.one-option-a-lead", other));
        }
    }

    private enum Way {
        IN,
        OUT,
        FIXED
    }

    private static Way way(Port port) {
        return switch (port) {
            case Port.Input input -> Way.IN;
            case Port.LowSide output -> Way.OUT;
            case Port.HighSide output -> Way.OUT;
            case Port.Supply supply -> Way.FIXED;
            case Port.Ground ground -> Way.FIXED;
            case Port.ToExtra extra -> Way.FIXED;
        };
    }
}
