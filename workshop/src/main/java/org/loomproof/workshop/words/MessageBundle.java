package org.loomproof.workshop.words;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;

/** Our messages in the shape in which the command line wants them. */
public final class MessageBundle extends ResourceBundle {

    private final Messages messages;

    public MessageBundle(Messages messages) {
        this.messages = messages;
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return messages.findPattern(key).orElse(null);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(messages.keys());
    }
}
