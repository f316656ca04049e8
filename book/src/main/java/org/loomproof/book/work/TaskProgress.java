package org.loomproof.book.work;

/**
 * How far a task has come, whichever server has it in hand.
 *
 * @param stage a word for what is being done
 * @param done how many of the stage
 * @param all how many the stage has; 0 while nobody knows
 */
public record TaskProgress(String stage, int done, int all) {

    /** The stage before any. */
    public static final String WAITING = "waiting";

    /** The stage of a task that was tried some times and given up. */
    public static final String FAILED = "failed";

    /** True when nobody goes on with it. */
    public boolean isFailed() {
        return stage.equals(FAILED);
    }
}
