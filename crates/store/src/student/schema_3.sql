-- A student's store, version 3: how the screens look and sound for this student, and
-- goals in the student's own words. Nothing of either is in a hand-in.

ALTER TABLE student ADD COLUMN theme TEXT NOT NULL DEFAULT 'device'
    CHECK (theme IN ('device', 'light', 'dark', 'contrast'));
ALTER TABLE student ADD COLUMN text_percent INTEGER NOT NULL DEFAULT 100
    CHECK (text_percent IN (100, 125, 150, 175, 200));
ALTER TABLE student ADD COLUMN decimal_sign TEXT NOT NULL DEFAULT 'language'
    CHECK (decimal_sign IN ('language', 'comma', 'point'));
ALTER TABLE student ADD COLUMN less_motion INTEGER NOT NULL DEFAULT 0
    CHECK (less_motion IN (0, 1));          -- 0: as the system says
ALTER TABLE student ADD COLUMN reads_aloud INTEGER NOT NULL DEFAULT 0
    CHECK (reads_aloud IN (0, 1));          -- 1: an exercise is read as it opens

CREATE TABLE goal (
    place INTEGER PRIMARY KEY CHECK (place BETWEEN 0 AND 2),
    words TEXT NOT NULL,
    reached INTEGER NOT NULL DEFAULT 0 CHECK (reached IN (0, 1))
) STRICT;
