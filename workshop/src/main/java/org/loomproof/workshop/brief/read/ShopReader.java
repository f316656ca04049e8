package org.loomproof.workshop.brief.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.MappingCursor.KeyedCursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code shop}: what the shop has decided. */
final class ShopReader {

    /** Bay and boot temperatures when the order is silent. Common practice, no published source. */
    private static final Celsius COLDEST = new Celsius(-20);

    private static final Celsius HOTTEST = new Celsius(85);

    /** The least class of insulation for which currents are published: 33 CFR 183.425 table 5 (read). */
    private static final Celsius LEAST_INSULATION = new Celsius(60);

    private final FigureReader figures;
    private final Optional<Sheet> sheet;

    ShopReader(FigureReader figures, Optional<Sheet> sheet) {
        this.figures = figures;
        this.sheet = sheet;
    }

    ShopChoices read(MappingCursor in) {
        Celsius coldest = figures.findValue(in, "coldest", Unit.CELSIUS).orElse(COLDEST);
        Celsius hottest = figures.findValue(in, "hottest", Unit.CELSIUS).orElse(HOTTEST);
        if (coldest.value() > hottest.value()) {
            in.problem(
                    ProblemKind.CONTRADICTION,
                    coldest + ", " + hottest,
                    Phrase.of("problem.wanted.coldest-under-hottest"),
                    Phrase.of("problem.hint.none"));
        }
        Optional<Celsius> insulation = figures.findValue(in, "insulation", Unit.CELSIUS);
        insulation
                .filter(bears -> bears.value() < LEAST_INSULATION.value() || bears.value() <= hottest.value())
                .ifPresent(bears -> in.problem(
                        ProblemKind.CONTRADICTION,
                        bears + ", " + hottest,
                        Phrase.of("problem.wanted.insulation-over-hottest", LEAST_INSULATION),
                        Phrase.of("problem.hint.none")));
        ShopChoices shop = new ShopChoices(
                in.wordOr("joint", ShopChoices.Joint.SOLDER),
                in.wordOr("sizes", ShopChoices.Sizes.MM2),
                coldest,
                hottest,
                insulation,
                runs(in.mappingOrEmpty("runs")),
                figures.orUsual(in, "usual-run", Unit.METRES, "shop.usual-run"));
        in.close();
        return shop;
    }

    private Map<CircuitId, Figure<Metres>> runs(MappingCursor in) {
        Map<String, CircuitId> circuits = new LinkedHashMap<>();
        sheet.ifPresent(known ->
                known.circuits().forEach(circuit -> circuits.put(circuit.id().value(), circuit.id())));
        Map<CircuitId, Figure<Metres>> runs = new LinkedHashMap<>();
        for (KeyedCursor run : in.listKeyed()) {
            Optional<CircuitId> circuit = sheet.isPresent()
                    ? run.key().reference(circuits)
                    : Optional.of(run.key().id()).map(CircuitId::new);
            Optional<Figure<Metres>> length = figures.of(run.value(), Unit.METRES);
            if (circuit.isPresent() && length.isPresent()) {
                runs.put(circuit.get(), length.get());
            }
        }
        return runs;
    }
}
