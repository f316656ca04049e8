package org.loomproof.workshop.brief.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Survival;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Phrase;

/** Reads a kit: its leads, what can be set, what else is in the box, and how its controller behaves. */
final class KitReader {

    static final String FORMAT = "loomproof kit 1";

    private static final Figure<Volts> STAND_IN =
            Figure.exactly(new Volts(0), new Basis(Certainty.ASSUMED, Place.nowhere("kit.supply")));

    private final MappingCursor in;
    private final FigureReader figures;
    private final References leadNames = new References();
    private final References extraNames = new References();

    private KitReader(MappingCursor in, FigureReader figures) {
        this.in = in;
        this.figures = figures;
    }

    static Kit read(MappingCursor in, FigureReader figures) {
        return new KitReader(in, figures).kit();
    }

    private Kit kit() {
        MappingCursor facts = in.mapping("kit");
        String name = facts.text("name");
        Optional<Cursor> said = facts.find("supply");
        if (said.isEmpty()) {
            facts.missing("supply", Phrase.of("problem.wanted.supply-range"));
        }
        Figure<Volts> supply = said.flatMap(this::supplyRange).orElse(STAND_IN);
        Figure<Amps> standby = figures.orUsual(facts, "standby", Unit.AMPS, "kit.standby");
        Survival survives = survival(facts.mappingOrEmpty("survives"));
        facts.close();
        List<Extra> extras = extras();
        List<Lead> leads = new ArrayList<>();
        LeadReader leadReader = new LeadReader(figures, leadNames);
        for (Cursor item : in.itemsNeeded("leads")) {
            leads.add(leadReader.read(item));
            MappingCursor port = item.isMapping() ? item.mapping().mappingOrEmpty("port") : item.withNothingSaid();
            port.find("extra").ifPresent(extraNames::use);
        }
        List<KitOption> options = new OptionsReader(figures, leads).read(in.items("options"));
        Behaviour behaviour = new BehaviourReader(leads).read(in.mapping("behaviour"), figures);
        in.close();
        leadNames.close();
        extraNames.close();
        return new Kit(
                name,
                Figure.exactly(supply.low(), supply.basis()),
                Figure.exactly(supply.high(), supply.basis()),
                survives,
                standby,
                leads,
                options,
                extras,
                behaviour);
    }

    private Survival survival(MappingCursor said) {
        Survival survival = new Survival(
                figures.find(said, "cranking", Unit.VOLTS),
                figures.find(said, "load-dump", Unit.VOLTS),
                figures.find(said, "reversed", Unit.VOLTS));
        said.close();
        return survival;
    }

    private Optional<Figure<Volts>> supplyRange(Cursor at) {
        Optional<Figure<Volts>> range = figures.of(at, Unit.VOLTS);
        if (range.isPresent() && !range.get().isRange()) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.supply-range"));
        }
        return range;
    }

    private List<Extra> extras() {
        List<Extra> extras = new ArrayList<>();
        for (Cursor item : in.items("extras")) {
            MappingCursor extra = item.mapping();
            String name = extra.text("name");
            extra.find("name").ifPresent(at -> extraNames.give(name, at));
            extras.add(new Extra(
                    name,
                    extra.word("kind", Extra.Kind.class),
                    figures.find(extra, "draws", Unit.AMPS),
                    figures.find(extra, "coil", Unit.OHMS),
                    figures.find(extra, "make-rating", Unit.AMPS),
                    figures.find(extra, "break-rating", Unit.AMPS),
                    figures.find(extra, "sound", Unit.DECIBELS),
                    figures.find(extra, "forward", Unit.VOLTS),
                    battery(extra),
                    contact(extra)));
            extra.close();
        }
        return extras;
    }

    /** The contact of a button or sensor on bare leads; its other figures mean nothing by themselves. */
    private Optional<Extra.Contact> contact(MappingCursor extra) {
        if (extra.find("contact").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Extra.Contact(
                extra.word("contact", Extra.Closes.class),
                extra.yesNoOr("two-stage", false),
                figures.orUsual(extra, "closed", Unit.OHMS, "switch.closed-resistance")));
    }

    /** The battery in a sounder; what it draws once full means nothing by itself. */
    private Optional<Extra.Battery> battery(MappingCursor extra) {
        Optional<Figure<Amps>> charged = figures.find(extra, "charged", Unit.AMPS);
        return figures.find(extra, "charging", Unit.AMPS).map(charging -> new Extra.Battery(charging, charged));
    }
}
