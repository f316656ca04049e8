package org.loomproof.pages.web;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** Tests that share one real browser, started once for all of a class. */
abstract class InBrowser {

    private static @Nullable Browsers started;

    @BeforeAll
    static void start() {
        started = Browsers.start();
    }

    @AfterAll
    static void stop() {
        if (started != null) {
            started.close();
        }
    }

    static Browsers browsers() {
        if (started == null) {
            throw new IllegalStateException("the browser did not start");
        }
        return started;
    }
}
