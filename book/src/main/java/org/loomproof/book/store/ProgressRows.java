package org.loomproof.book.store;

import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.loomproof.book.work.TaskProgress;

/** How far each task is, and whether somebody wants it stopped, where every server of the book can read it. */
final class ProgressRows {

    private static final String OF_ONE = " WHERE kind = :kind AND subject = :subject";

    private final Jdbi jdbi;

    ProgressRows(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /** A task that waits. */
    void begin(String kind, String subject) {
        execute(
                "INSERT INTO background_progress (kind, subject, stage, done, of_all, stopping)"
                        + " VALUES (:kind, :subject, '" + TaskProgress.WAITING + "', 0, 0, 0)"
                        + " ON CONFLICT (kind, subject) DO UPDATE SET stage = '" + TaskProgress.WAITING
                        + "', done = 0, of_all = 0, stopping = 0",
                kind,
                subject);
    }

    void write(String kind, String subject, TaskProgress progress) {
        jdbi.useHandle(handle -> handle.createUpdate(
                        "UPDATE background_progress SET stage = :stage, done = :done, of_all = :all" + OF_ONE)
                .bind("stage", progress.stage())
                .bind("done", progress.done())
                .bind("all", progress.all())
                .bind("kind", kind)
                .bind("subject", subject)
                .execute());
    }

    Optional<TaskProgress> find(String kind, String subject) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT stage, done, of_all FROM background_progress" + OF_ONE)
                        .bind("kind", kind)
                        .bind("subject", subject)
                        .map((row, context) ->
                                new TaskProgress(row.getString("stage"), row.getInt("done"), row.getInt("of_all")))
                        .findOne());
    }

    boolean isStopping(String kind, String subject) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT stopping FROM background_progress" + OF_ONE)
                        .bind("kind", kind)
                        .bind("subject", subject)
                        .mapTo(Integer.class)
                        .findOne())
                .filter(stopping -> stopping > 0)
                .isPresent();
    }

    void stop(String kind, String subject) {
        execute("UPDATE background_progress SET stopping = 1" + OF_ONE, kind, subject);
    }

    void fail(String kind, String subject) {
        execute("UPDATE background_progress SET stage = '" + TaskProgress.FAILED + "'" + OF_ONE, kind, subject);
    }

    void end(String kind, String subject) {
        execute("DELETE FROM background_progress" + OF_ONE, kind, subject);
    }

    private void execute(String sql, String kind, String subject) {
        jdbi.useHandle(handle -> handle.createUpdate(sql)
                .bind("kind", kind)
                .bind("subject", subject)
                .execute());
    }
}
