-- "LPBK": by this number the file is known as a book of ours.
PRAGMA application_id = 1280328267;

CREATE TRIGGER card_event_stays BEFORE UPDATE ON card_event
BEGIN
    SELECT RAISE(ABORT, 'events are only ever added');
END;

CREATE TRIGGER card_event_remains BEFORE DELETE ON card_event
BEGIN
    SELECT RAISE(ABORT, 'events are only ever added');
END;
