package org.loomproof.book.work;

/** Does tasks. */
@FunctionalInterface
public interface Worker {

    /** Does one. What it throws has the task tried again, and given up in the end. */
    void work(Task task, TaskWatch watch);
}
