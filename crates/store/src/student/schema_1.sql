-- A student's store, version 1. One database file a student.

-- The student. No hand-in holds the nickname or the avatar.
CREATE TABLE student (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    device TEXT NOT NULL,               -- random, made at joining
    signing_seed BLOB NOT NULL,         -- 32 bytes, Ed25519
    sealing_identity TEXT NOT NULL,     -- age X25519 identity of this student
    seat TEXT NOT NULL,                 -- seat token of the class
    nickname TEXT NOT NULL,
    avatar TEXT NOT NULL,
    language TEXT NOT NULL,             -- tag (BCP 47)
    minutes INTEGER NOT NULL,           -- of an evening
    exercises INTEGER                   -- of an evening; null if it ends by minutes
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

-- The files of the class packs, unchanged. The highest version counts.
CREATE TABLE class_pack (
    version INTEGER PRIMARY KEY,
    file BLOB NOT NULL,
    taken_on TEXT NOT NULL              -- school date
) STRICT;

-- Days of the rotation that the student said, where the class pack was behind. A pack that was
-- made on that date or later, with a higher version, settles them.
CREATE TABLE said_day (
    school_date TEXT PRIMARY KEY,
    day INTEGER NOT NULL CHECK (day > 0),   -- of the rotation, from 1
    pack_version INTEGER NOT NULL           -- of the class pack that the device had
) STRICT;

-- Check-ins, appended and never edited: what the device has of the concept and date
-- after each tap. `…_at` is the sequence of the tap that gave the value or took it
-- back; null if no tap did.
CREATE TABLE check_in (
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence_at INTEGER,
    confidence INTEGER CHECK (confidence BETWEEN 0 AND 3),
    outcome_at INTEGER,
    outcome TEXT CHECK (outcome IN ('right', 'wrong', 'not_done')),
    PRIMARY KEY (device, sequence)
) STRICT;
CREATE INDEX check_in_by_date ON check_in (school_date, concept);

-- Finished exercises, appended and never edited. No hand-in holds a response; it holds
-- counts only.
CREATE TABLE practice_answer (
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    level INTEGER NOT NULL CHECK (level BETWEEN 1 AND 3),
    generator_version INTEGER NOT NULL,
    seed INTEGER NOT NULL,
    confidence INTEGER CHECK (confidence BETWEEN 0 AND 3),
    result TEXT NOT NULL CHECK (result IN ('alone', 'with_help', 'wrong')),
    misconception TEXT,                 -- code of the one recognised
    seconds INTEGER NOT NULL,
    response TEXT NOT NULL,             -- JSON
    PRIMARY KEY (device, sequence)
) STRICT;
CREATE INDEX practice_answer_by_date ON practice_answer (school_date, concept);

-- The open exercise, kept so that closing the program loses nothing.
CREATE TABLE open_exercise (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    exercise TEXT NOT NULL,
    opened_on TEXT NOT NULL,
    concept TEXT NOT NULL,
    level INTEGER NOT NULL,
    seed INTEGER NOT NULL,
    reason TEXT NOT NULL,               -- JSON
    asked INTEGER NOT NULL,             -- 1 if the student asked for it from My path
    confidence INTEGER CHECK (confidence BETWEEN 0 AND 3),
    hints INTEGER NOT NULL DEFAULT 0,
    tries INTEGER NOT NULL DEFAULT 0,
    seconds INTEGER NOT NULL DEFAULT 0,
    misconception TEXT,
    response TEXT,
    draft TEXT                          -- JSON: what is filled in and not yet checked
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

-- An optional PIN for shared tablets.
-- The PIN itself is not stored, only what argon2id makes of it.
CREATE TABLE pin (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    salt BLOB NOT NULL,                 -- 16 random bytes
    hash BLOB NOT NULL,                 -- 32 bytes, argon2id
    memory_kib INTEGER NOT NULL,
    passes INTEGER NOT NULL,
    wrong_tries INTEGER NOT NULL DEFAULT 0  -- in a row
) STRICT;

-- The PIN signs of the student's slip, once they were typed together with the seat code, and those
-- of the slips of earlier classes. Only what argon2id makes of them is stored.
CREATE TABLE pin_signs (
    seat TEXT PRIMARY KEY,              -- token of the slip's seat
    salt BLOB NOT NULL,                 -- 16 random bytes
    hash BLOB NOT NULL,                 -- 32 bytes, argon2id
    memory_kib INTEGER NOT NULL,
    passes INTEGER NOT NULL
) STRICT;

-- Goals in the student's own words.
CREATE TABLE goal (
    place INTEGER PRIMARY KEY CHECK (place BETWEEN 0 AND 2),
    words TEXT NOT NULL,
    reached INTEGER NOT NULL DEFAULT 0 CHECK (reached IN (0, 1))
) STRICT;
