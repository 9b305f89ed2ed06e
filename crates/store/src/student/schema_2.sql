-- A student's store, version 2: an optional PIN for shared tablets, and evenings a week.

-- The PIN itself is not stored, only what argon2id makes of it.
CREATE TABLE pin (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    salt BLOB NOT NULL,                 -- 16 random bytes
    hash BLOB NOT NULL,                 -- 32 bytes, argon2id
    memory_kib INTEGER NOT NULL,
    passes INTEGER NOT NULL,
    wrong_tries INTEGER NOT NULL DEFAULT 0  -- in a row
) STRICT;

ALTER TABLE student ADD COLUMN evenings INTEGER NOT NULL DEFAULT 5;
