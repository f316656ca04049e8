package org.loomproof.shop.job;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.LookAlike;
import org.loomproof.workshop.meter.expected.ReadingWords;
import org.loomproof.workshop.words.Messages;

/** What a meter must show, as JSON for other programs; {@code docs/schemas/readings.schema.json}. */
public final class ReadingsJson {

    private final ObjectMapper mapper = new ObjectMapper();
    private final JsonWords words;

    /** Words come from these messages. */
    public ReadingsJson(Messages messages) {
        this.words = new JsonWords(messages);
    }

    /** The whole. */
    public String of(CarReadings car) {
        ReadingWords said = new ReadingWords(car.brief());
        ObjectNode root = mapper.createObjectNode().put("format", "loomproof readings 1");
        ArrayNode circuits = root.putArray("circuits");
        for (CircuitReadings circuit : car.circuits()) {
            ObjectNode node =
                    circuits.addObject().put("circuit", circuit.circuit().value());
            readings(node.putArray("readings"), circuit.whole(), said);
            readings(node.putArray("cut"), circuit.cut(), said);
            ArrayNode alike = node.putArray("alike");
            circuit.alike().forEach(each -> alike(alike.addObject(), each, said));
        }
        return words.written(root);
    }

    private void readings(ArrayNode into, List<ExpectedReading> readings, ReadingWords said) {
        readings.forEach(reading -> into.add(reading(reading, said)));
    }

    private ObjectNode reading(ExpectedReading reading, ReadingWords said) {
        double battery = reading.batteryVolts();
        ObjectNode node = mapper.createObjectNode()
                .put("at", Words.of(reading.at().end()))
                .put("when", words.text(said.when(reading)))
                .put("battery", battery)
                .put("low", reading.band().low(battery))
                .put("high", reading.band().high(battery))
                .put("floats", reading.floats())
                .put("method", Words.of(reading.method()))
                .put("shows", words.text(ReadingWords.shows(reading)));
        node.set("situation", words.situation(reading.when()));
        return node;
    }

    private void alike(ObjectNode node, LookAlike alike, ReadingWords said) {
        node.put("circuit", alike.other().value());
        alike.split().ifPresent(split -> node.set("split", reading(split, said)));
    }
}
