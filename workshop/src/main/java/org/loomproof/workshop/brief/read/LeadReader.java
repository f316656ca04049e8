package org.loomproof.workshop.brief.read;

import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.References;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads one lead of a kit. */
final class LeadReader {

    private final FigureReader figures;
    private final References names;
    private final References positions = new References();

    LeadReader(FigureReader figures, References names) {
        this.figures = figures;
        this.names = names;
    }

    Lead read(Cursor at) {
        MappingCursor in = at.mapping();
        LeadId id = new LeadId(in.id("id"));
        in.find("id").ifPresent(cursor -> names.give(id.value(), cursor));
        String plug = in.textOrEmpty("plug");
        String position = in.textOrEmpty("position");
        if (!plug.isEmpty() && !position.isEmpty()) {
            // Two leads cannot come out of one hole.
            in.find("position").ifPresent(cursor -> positions.give(plug + " " + position, cursor));
        }
        LeadRole role = in.word("role", LeadRole.class);
        Lead lead = new Lead(
                id,
                plug,
                position,
                in.find("colour").flatMap(ColourText::read),
                figures.orUsual(in, "size", Unit.SQUARE_MILLIMETRES, "lead.size"),
                role,
                new PortReader(figures).read(in.mapping("port"), role),
                in.yesNoOr("always-used", false),
                in.textOrEmpty("note"),
                figures.basis(in.place()));
        in.close();
        checkFeed(in, lead);
        return lead;
    }

    /** A lead that is meant to feed the controller must be able to. */
    private static void checkFeed(MappingCursor in, Lead lead) {
        boolean fits = switch (lead.role()) {
            case SUPPLY -> lead.port() instanceof Port.Supply;
            case GROUND -> lead.port() instanceof Port.Ground;
            default -> true;
        };
        // Without words that can be read, role and port are stand-ins.
        if (!fits
                && in.mappingOrEmpty("port")
                        .find("kind")
                        .filter(PortReader::isKind)
                        .isPresent()) {
            in.find("role")
                    .filter(at -> at.found().equals(lead.role().word()))
                    .ifPresent(at -> at.problem(
                            ProblemKind.CONTRADICTION,
                            Phrase.of("problem.wanted.feed-port", lead.role().word())));
        }
    }
}
