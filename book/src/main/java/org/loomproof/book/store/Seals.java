package org.loomproof.book.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.loomproof.book.key.Key;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;

/** Names and texts, sealed and opened. Each seal is bound to the row it stands in and to what the row says in the clear. */
final class Seals {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<TreeMap<String, String>> TEXTS = new TypeReference<>() {};

    private Seals() {}

    static byte[] sealed(Key key, Map<String, String> texts, String about) {
        try {
            return key.seal(JSON.writeValueAsBytes(new TreeMap<>(texts)), about);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("names and texts cannot be written", e);
        }
    }

    static Map<String, String> opened(Key key, byte[] sealed, String about) {
        try {
            return JSON.readValue(bytes(key, sealed, about), TEXTS);
        } catch (IOException e) {
            throw new Refused(Refusal.DAMAGED, e);
        }
    }

    static byte[] bytes(Key key, byte[] sealed, String about) {
        return key.open(sealed, about).orElseThrow(() -> new Refused(Refusal.DAMAGED));
    }

    static String text(Key key, byte[] sealed, String about) {
        return new String(bytes(key, sealed, about), StandardCharsets.UTF_8);
    }

    static String aboutHeadline(String card) {
        return "headline " + card;
    }

    static String aboutEvent(String card, int version, long at, String who, String what) {
        return "event %s %d %d %s %s".formatted(card, version, at, who, what);
    }
}
