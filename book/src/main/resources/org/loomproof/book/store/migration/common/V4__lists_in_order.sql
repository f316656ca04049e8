-- Lists read an index in the order in which they are shown, and stop after a page: what is due first, then by last change.
-- Of cards without a headline (their customer was erased) no list tells, and no count.
DROP INDEX card_by_stage;
DROP INDEX card_by_day;
CREATE INDEX card_in_order ON card (kind, (CASE WHEN due = '' THEN 1 ELSE 0 END), due, changed DESC, id)
    WHERE headline IS NOT NULL;
CREATE INDEX card_by_stage ON card (kind, stage, (CASE WHEN due = '' THEN 1 ELSE 0 END), due, changed DESC, id)
    WHERE headline IS NOT NULL;
CREATE INDEX card_by_due ON card (due);
CREATE INDEX card_by_begun ON card (begun);
