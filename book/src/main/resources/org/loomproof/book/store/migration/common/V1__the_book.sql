-- Text in the clear: names of cards drawn by chance, kinds, stages, days, times, counts. Everything else is sealed.
-- docs/security.md says what the clear columns and the marks of words tell somebody who has the file and not the passphrase.

-- One row: how the passphrase is stretched, and the book's key sealed by what comes out.
CREATE TABLE book_lock (
    one        INTEGER PRIMARY KEY CHECK (one = 1),
    format     INTEGER NOT NULL,
    memory_kib INTEGER NOT NULL,
    passes     INTEGER NOT NULL,
    lanes      INTEGER NOT NULL,
    salt       ${bytes} NOT NULL,
    book_key   ${bytes} NOT NULL,
    shop       TEXT    NOT NULL
);

-- The key of each customer, and of the shop for what is its own; erasing a customer empties it.
CREATE TABLE customer_key (
    customer TEXT PRIMARY KEY,
    wrapped  ${bytes},
    erased   BIGINT
);

CREATE TABLE card (
    id       TEXT    PRIMARY KEY,
    kind     TEXT    NOT NULL,
    customer TEXT    NOT NULL REFERENCES customer_key (customer),
    version  INTEGER NOT NULL,
    stage    TEXT    NOT NULL,
    due      TEXT    NOT NULL,
    begun    TEXT    NOT NULL,
    changed  BIGINT  NOT NULL,
    headline ${bytes}
);
CREATE INDEX card_by_stage ON card (kind, stage, due, changed, id);
CREATE INDEX card_by_day ON card (kind, due, changed, id);
CREATE INDEX card_by_customer ON card (customer);

-- Only ever added to; triggers hold that.
CREATE TABLE card_event (
    card    TEXT    NOT NULL REFERENCES card (id),
    version INTEGER NOT NULL,
    at      BIGINT  NOT NULL,
    who     TEXT    NOT NULL,
    what    TEXT    NOT NULL,
    body    ${bytes} NOT NULL,
    PRIMARY KEY (card, version)
);

-- Words by which a card is found, as marks under a key.
CREATE TABLE card_word (
    mark ${bytes} NOT NULL,
    card TEXT    NOT NULL REFERENCES card (id),
    PRIMARY KEY (mark, card)
);
CREATE INDEX card_word_by_card ON card_word (card);

-- Photos, papers, signatures.
CREATE TABLE attachment (
    id    TEXT   PRIMARY KEY,
    card  TEXT   NOT NULL REFERENCES card (id),
    at    BIGINT NOT NULL,
    who   TEXT   NOT NULL,
    label ${bytes} NOT NULL,
    body  ${bytes} NOT NULL
);
CREATE INDEX attachment_by_card ON attachment (card, at);

-- Only in a backup: how many rows it holds and the hash of them all.
CREATE TABLE backup_seal (
    one     INTEGER PRIMARY KEY CHECK (one = 1),
    counted BIGINT  NOT NULL,
    hash    TEXT    NOT NULL
);
