-- A student's store, version 4: an evening may end by a number of exercises, high contrast
-- may be dark, and what stands in the answer of the open exercise is kept as it is filled in.

-- SQLite changes no check in place, so the table is written anew.
CREATE TABLE student_anew (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    device TEXT NOT NULL,               -- random, made at joining
    signing_seed BLOB NOT NULL,         -- 32 bytes, Ed25519
    sealing_identity TEXT NOT NULL,     -- age X25519 identity of this student
    seat TEXT NOT NULL,                 -- seat token of the class
    nickname TEXT NOT NULL,
    picture TEXT NOT NULL,
    language TEXT NOT NULL,             -- en, es
    minutes INTEGER NOT NULL,           -- minutes of an evening
    exercises INTEGER                   -- exercises of an evening; none: it ends by minutes
        CHECK (exercises > 0),
    evenings INTEGER NOT NULL DEFAULT 5,
    theme TEXT NOT NULL DEFAULT 'device'
        CHECK (theme IN ('device', 'light', 'dark', 'contrast', 'contrast_dark')),
    text_percent INTEGER NOT NULL DEFAULT 100
        CHECK (text_percent IN (100, 125, 150, 175, 200)),
    decimal_sign TEXT NOT NULL DEFAULT 'language'
        CHECK (decimal_sign IN ('language', 'comma', 'point')),
    less_motion INTEGER NOT NULL DEFAULT 0
        CHECK (less_motion IN (0, 1)),      -- 0: as the system says
    reads_aloud INTEGER NOT NULL DEFAULT 0
        CHECK (reads_aloud IN (0, 1))       -- 1: an exercise is read as it opens
) STRICT;
INSERT INTO student_anew (id, device, signing_seed, sealing_identity, seat, nickname, picture, language, minutes,
    evenings, theme, text_percent, decimal_sign, less_motion, reads_aloud)
SELECT id, device, signing_seed, sealing_identity, seat, nickname, picture, language, minutes,
    evenings, theme, text_percent, decimal_sign, less_motion, reads_aloud
FROM student;
DROP TABLE student;
ALTER TABLE student_anew RENAME TO student;

ALTER TABLE open_exercise ADD COLUMN draft TEXT;    -- JSON
