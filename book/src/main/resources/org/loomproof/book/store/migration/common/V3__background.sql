-- Long work in the background, in the clear: names of cards, kinds of work, moments, counts. Not part of a backup.
-- The columns of the first table are those that db-scheduler asks for.
CREATE TABLE background_task (
    task_name            TEXT      NOT NULL,
    task_instance        TEXT      NOT NULL,
    task_data            ${bytes},
    execution_time       ${moment} NOT NULL,
    picked               BOOLEAN   NOT NULL,
    picked_by            TEXT,
    last_success         ${moment},
    last_failure         ${moment},
    consecutive_failures INTEGER,
    last_heartbeat       ${moment},
    version              BIGINT    NOT NULL,
    priority             SMALLINT,
    PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX background_task_by_time ON background_task (execution_time);
CREATE INDEX background_task_by_heartbeat ON background_task (last_heartbeat);

CREATE TABLE background_progress (
    kind     TEXT    NOT NULL,
    subject  TEXT    NOT NULL,
    stage    TEXT    NOT NULL,
    done     INTEGER NOT NULL,
    of_all   INTEGER NOT NULL,
    stopping INTEGER NOT NULL,
    PRIMARY KEY (kind, subject)
);
