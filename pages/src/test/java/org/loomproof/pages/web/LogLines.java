package org.loomproof.pages.web;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** What a class logs while this is open. */
final class LogLines extends Handler implements AutoCloseable {

    private final List<LogRecord> logged = new CopyOnWriteArrayList<>();
    private final Logger logger;

    LogLines(Class<?> whose) {
        logger = Logger.getLogger(whose.getName());
        logger.addHandler(this);
    }

    List<LogRecord> list() {
        return logged;
    }

    /** The sentences, filled in. */
    List<String> texts() {
        SimpleFormatter filled = new SimpleFormatter();
        return logged.stream().map(filled::formatMessage).toList();
    }

    @Override
    public void publish(LogRecord line) {
        logged.add(line);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {
        logger.removeHandler(this);
    }
}
