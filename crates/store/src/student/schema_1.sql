-- A student's store, version 1. One database file a student.

-- Who this is. Nickname and picture never leave the device.
CREATE TABLE student (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    device TEXT NOT NULL,               -- random, made at joining
    signing_seed BLOB NOT NULL,         -- 32 bytes, Ed25519
    sealing_identity TEXT NOT NULL,     -- age X25519 identity of this student
    seat TEXT NOT NULL,                 -- seat token of the class
    nickname TEXT NOT NULL,
    picture TEXT NOT NULL,
    language TEXT NOT NULL,             -- en, es
    minutes INTEGER NOT NULL            -- minutes of an evening
) STRICT;

-- The class packs taken, as they came. The highest version counts.
CREATE TABLE class_pack (
    version INTEGER PRIMARY KEY,
    file BLOB NOT NULL,
    taken_on TEXT NOT NULL              -- school date
) STRICT;

-- Check-ins, appended, never edited. Of (device, school_date, concept) the
-- highest sequence counts.
CREATE TABLE check_in (
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence INTEGER CHECK (confidence BETWEEN 0 AND 3),
    outcome TEXT CHECK (outcome IN ('right', 'wrong', 'not_done')),
    PRIMARY KEY (device, sequence)
) STRICT;
CREATE INDEX check_in_by_date ON check_in (school_date, concept);

-- Finished exercises, appended. The response stays on the device; a hand-in
-- holds counts only.
CREATE TABLE practice_answer (
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    level INTEGER NOT NULL CHECK (level BETWEEN 1 AND 3),
    generator_version INTEGER NOT NULL,
    seed INTEGER NOT NULL,
    sure INTEGER CHECK (sure BETWEEN 0 AND 3),
    result TEXT NOT NULL CHECK (result IN ('alone', 'with_help', 'wrong')),
    mistake TEXT,                       -- code of the recognised misconception
    seconds INTEGER NOT NULL,
    response TEXT NOT NULL,             -- JSON
    PRIMARY KEY (device, sequence)
) STRICT;
CREATE INDEX practice_answer_by_date ON practice_answer (school_date, concept);

-- The exercise that stands open, so that closing the program loses nothing.
CREATE TABLE open_exercise (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    exercise TEXT NOT NULL,
    opened_on TEXT NOT NULL,
    concept TEXT NOT NULL,
    level INTEGER NOT NULL,
    seed INTEGER NOT NULL,
    reason TEXT NOT NULL,               -- JSON
    asked INTEGER NOT NULL,             -- 1 when asked for from My path
    sure INTEGER CHECK (sure BETWEEN 0 AND 3),
    hints INTEGER NOT NULL DEFAULT 0,
    tries INTEGER NOT NULL DEFAULT 0,
    seconds INTEGER NOT NULL DEFAULT 0,
    mistake TEXT,
    response TEXT
) STRICT;

-- Concepts the student chose to work on.
CREATE TABLE focus (
    concept TEXT PRIMARY KEY,
    place INTEGER NOT NULL
) STRICT;

-- The hand-ins made.
CREATE TABLE hand_in (
    revision INTEGER PRIMARY KEY,
    made_on TEXT NOT NULL,
    last_sequence INTEGER NOT NULL      -- the newest event in it
) STRICT;
