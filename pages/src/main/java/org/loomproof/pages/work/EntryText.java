package org.loomproof.pages.work;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** An entry as a line of JSON: what a device sends, and what the book seals. */
public final class EntryText {

    private static final String ID = "id";
    private static final String WHEN = "when";

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private EntryText() {}

    /** The entry in a text from outside; nothing when it is none. */
    public static Optional<Entry> read(String text) {
        try {
            JsonNode read = JSON.readTree(text);
            if (!(read instanceof ObjectNode node)
                    || !node.path(ID).isTextual()
                    || !(node.path(WHEN).isIntegralNumber() && node.path(WHEN).canConvertToLong())) {
                return Optional.empty();
            }
            String id = node.remove(ID).textValue();
            Instant when = Instant.ofEpochMilli(node.remove(WHEN).longValue());
            return Optional.of(new Entry(id, when, JSON.treeToValue(node, Work.class)));
        } catch (JsonProcessingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The entry as a line. */
    public static String of(Entry entry) {
        ObjectNode node = JSON.valueToTree(entry.work());
        node.put(ID, entry.id()).put(WHEN, entry.when().toEpochMilli());
        return node.toString();
    }
}
