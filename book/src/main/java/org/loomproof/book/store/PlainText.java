package org.loomproof.book.store;

import com.github.kagkarlsson.scheduler.serializer.Serializer;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** What a task is told is text, or nothing: no object of Java is ever read from a table. */
final class PlainText implements Serializer {

    @Override
    public byte @Nullable [] serialize(@Nullable Object data) {
        return data == null ? null : data.toString().getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public <T> @Nullable T deserialize(Class<T> type, byte @Nullable [] data) {
        return data == null || type != String.class ? null : type.cast(new String(data, StandardCharsets.UTF_8));
    }
}
