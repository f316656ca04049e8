package org.loomproof.cli;

/** The exit codes of every command, as the guide documents them. */
final class ExitCode {

    static final int OUR_FAULT = 1;
    static final int BAD_INPUT = 2;

    /** Something is open: a search was stopped before its end. */
    static final int STOPPED = 5;

    private ExitCode() {}
}
