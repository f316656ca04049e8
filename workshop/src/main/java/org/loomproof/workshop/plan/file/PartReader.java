package org.loomproof.workshop.plan.file;

import java.util.Optional;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads one added part. */
final class PartReader {

    private enum Kind {
        RELAY,
        BUFFER,
        DIODE,
        ZENER,
        RESISTOR,
        FUSE,
        POLE,
        LOAD,
        STANDBY_BATTERY,
        SENDER,
        PIN_SWITCH
    }

    private final FigureReader figures;
    private final PlanNames names;

    PartReader(FigureReader figures, PlanNames names) {
        this.figures = figures;
        this.names = names;
    }

    /** The part; empty, with a problem noted, when its kind is not known. */
    Optional<AddedPart> read(MappingCursor in, String name) {
        AddedPartId id = new AddedPartId(name);
        Optional<AddedPart> part =
                in.need("kind").flatMap(at -> at.word(Words.all(Kind.class))).map(kind -> part(kind, id, in));
        if (part.isPresent()) {
            in.close();
        }
        return part;
    }

    private AddedPart part(Kind kind, AddedPartId id, MappingCursor in) {
        return switch (kind) {
            case RELAY -> relay(id, in);
            case BUFFER ->
                new AddedPart.Buffer(
                        id,
                        in.need("works-on")
                                .flatMap(at -> at.word(Words.all(Port.Active.class)))
                                .orElse(Port.Active.LOW),
                        figures.value(in, "input", Unit.OHMS),
                        figures.value(in, "switches-at", Unit.VOLTS),
                        figures.value(in, "lets-go-at", Unit.VOLTS),
                        figures.value(in, "closed", Unit.OHMS),
                        figures.value(in, "rating", Unit.AMPS));
            case DIODE ->
                new AddedPart.Diode(
                        id, figures.value(in, "rating", Unit.AMPS), figures.value(in, "reverse", Unit.VOLTS));
            case ZENER ->
                new AddedPart.Zener(id, figures.value(in, "rating", Unit.AMPS), figures.value(in, "volts", Unit.VOLTS));
            case RESISTOR -> new AddedPart.Resistor(id, figures.value(in, "resistance", Unit.OHMS));
            case FUSE -> new AddedPart.Fuse(id, figures.value(in, "rating", Unit.AMPS));
            case POLE ->
                new AddedPart.Pole(id, in.text("connector"), in.text("to"), figures.value(in, "rating", Unit.AMPS));
            case LOAD -> {
                String extra = in.need("extra").map(names::extra).orElse(Cursor.UNREADABLE);
                yield new AddedPart.Load(
                        id, extra, figures.value(in, "draws", Unit.AMPS), figures.findValue(in, "forward", Unit.VOLTS));
            }
            case STANDBY_BATTERY -> {
                String extra = in.need("extra").map(names::extra).orElse(Cursor.UNREADABLE);
                yield new AddedPart.StandbyBattery(
                        id, extra, figures.value(in, "charging", Unit.AMPS), figures.value(in, "charged", Unit.AMPS));
            }
            case SENDER -> {
                String extra = in.need("extra").map(names::extra).orElse(Cursor.UNREADABLE);
                yield new AddedPart.Sender(
                        id,
                        extra,
                        figures.findValue(in, "draws", Unit.AMPS),
                        in.word("closes", Extra.Closes.class),
                        in.yesNoOr("two-stage", false),
                        figures.value(in, "closed", Unit.OHMS));
            }
            case PIN_SWITCH -> {
                String opening = in.need("opening").map(names::opening).orElse(Cursor.UNREADABLE);
                yield new AddedPart.PinSwitch(id, new OperableId(opening));
            }
        };
    }

    private AddedPart relay(AddedPartId id, MappingCursor in) {
        AddedPart.Relay relay = new AddedPart.Relay(
                id,
                figures.value(in, "coil", Unit.OHMS),
                figures.value(in, "pull-in", Unit.VOLTS),
                figures.value(in, "drop-out", Unit.VOLTS),
                figures.value(in, "make-rating", Unit.AMPS),
                figures.value(in, "break-rating", Unit.AMPS));
        if (relay.pullIn().value() < relay.dropOut().value()) {
            in.find("drop-out")
                    .filter(at -> relay.pullIn().value() > 0)
                    .ifPresent(at ->
                            at.problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.drop-out-under-pull-in")));
        }
        return relay;
    }
}
