package org.loomproof.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.words.Messages;

/** Our messages in the shape in which the command line wants them. */
final class CommandWords extends ResourceBundle {

    private final Messages messages;

    CommandWords(Messages messages) {
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
