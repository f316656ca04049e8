package org.loomproof.book.work;

/** Hears from whoever does a task how far it is, and tells when to leave off. May be called from any thread. */
public interface TaskWatch {

    /** A new stage begins. */
    void stage(String name);

    /** So many of the stage are done. */
    void counted(int done, int all);

    /** True when the task was stopped, or the server is about to. */
    boolean isOver();

    /** Leaves the task by what it throws when {@link #isOver()}. A stopped task is gone; one that the server left comes back. */
    void goOn();
}
