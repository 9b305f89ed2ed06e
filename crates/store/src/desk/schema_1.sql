-- The teacher's desk, version 1. No other store holds names.
-- "Sealed" is a cell that only the data key opens (cells.rs).

-- The data key. Without a lock it is here as it is. With one it is sealed by a key that argon2id
-- makes of the passphrase.
CREATE TABLE data_key (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    number BLOB NOT NULL,               -- 16 random bytes that tell this key from others
    secret BLOB NOT NULL,               -- 32 bytes, or those sealed
    salt BLOB,                          -- 16 random bytes; null: no lock
    memory_kib INTEGER,
    passes INTEGER,
    wrong_tries INTEGER NOT NULL DEFAULT 0, -- in a row
    idle_minutes INTEGER CHECK (idle_minutes > 0), -- null: the desk never locks itself
    replaces BLOB                       -- number of the key before, until no copy has it
) STRICT;

CREATE TABLE class (
    id TEXT PRIMARY KEY,
    title TEXT NOT NULL,
    made_on TEXT NOT NULL,
    sealing_identity BLOB NOT NULL,     -- sealed: age X25519 identity, opens hand-ins
    signing_seed BLOB NOT NULL,         -- sealed: 32 bytes, Ed25519, signs class packs
    class_signs TEXT NOT NULL,          -- a slow hash of the id, for the slips
    first_day TEXT NOT NULL,
    last_day TEXT NOT NULL,
    weekdays TEXT NOT NULL,             -- ISO weekday digits, e.g. 12345
    pack_version INTEGER NOT NULL DEFAULT 0,
    pack_stamp TEXT NOT NULL DEFAULT '', -- of the content of that pack
    content_version INTEGER NOT NULL DEFAULT 0, -- first pack with that content
    first_pack_on TEXT,                 -- date of the first pack that was made here
    days_version INTEGER NOT NULL DEFAULT 0, -- first pack with the year and rotation of that pack
    days_stamp TEXT NOT NULL DEFAULT '', -- of its year and rotation
    saves_packs INTEGER NOT NULL DEFAULT 1, -- 0: another computer saves the packs
    class_folder INTEGER NOT NULL DEFAULT 0 CHECK (class_folder IN (0, 1)), -- said in the pack
    -- Bounds of practice at home, and a test to aim at.
    minutes_least INTEGER NOT NULL DEFAULT 4,
    minutes_most INTEGER NOT NULL DEFAULT 16,
    evenings_least INTEGER NOT NULL DEFAULT 1,
    evenings_most INTEGER NOT NULL DEFAULT 7,
    test_on TEXT
) STRICT;

CREATE TABLE closure (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    school_date TEXT NOT NULL,
    PRIMARY KEY (class, school_date)
) STRICT;

-- The rotation: each concept with its day and its place on that day.
CREATE TABLE rotation_place (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    place INTEGER NOT NULL,
    concept TEXT NOT NULL,
    PRIMARY KEY (class, day, place),
    UNIQUE (class, concept)
) STRICT;

-- The date of a concept's first lesson. A concept without a row is not taught this year.
CREATE TABLE taught_from (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    concept TEXT NOT NULL,
    school_date TEXT NOT NULL,
    PRIMARY KEY (class, concept)
) STRICT;

CREATE TABLE seat (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    number INTEGER NOT NULL,
    token BLOB NOT NULL,                -- sealed: random; on the slip with its check character
    name BLOB,                          -- sealed
    first_device_in INTEGER,            -- import that brought its first device; null: never had one
    PRIMARY KEY (class, number)
) STRICT;

-- Devices that handed in for a seat. A device is known by its id and its key, because
-- anybody can write another device's id into a file. A seat's first device is accepted, and
-- so is another one with an accepted key; all others are quarantined until the teacher
-- decides.
CREATE TABLE device (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    signing_key TEXT NOT NULL,
    recipient TEXT NOT NULL,            -- age X25519, for personal assignments
    state TEXT NOT NULL CHECK (state IN ('accepted', 'quarantined', 'rejected')),
    first_seen_on TEXT NOT NULL,
    moved INTEGER NOT NULL DEFAULT 0,   -- 1: the teacher moved it to this seat from another
    UNIQUE (class, seat, device, signing_key),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT;

CREATE TABLE import (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    made_on TEXT NOT NULL,
    cancelled INTEGER NOT NULL DEFAULT 0,
    undone INTEGER NOT NULL DEFAULT 0,
    transfer INTEGER NOT NULL DEFAULT 0 -- 1: a transfer, which is undone by removing its seat
) STRICT;

-- Files of the class folder that were imported, as long as they are there. The digests of their
-- content say nothing of names. They are here, so that a restored desk imports again what it lacks.
CREATE TABLE folder_file (
    digest TEXT PRIMARY KEY             -- the first 16 bytes of SHA-256 over its content, in hex
) STRICT, WITHOUT ROWID;

-- The import report, a line for each file.
CREATE TABLE import_file (
    import INTEGER NOT NULL REFERENCES import (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    file_name BLOB NOT NULL,            -- sealed: it may name a student
    verdict TEXT NOT NULL,              -- JSON
    class TEXT,
    seat INTEGER,
    new_entries INTEGER NOT NULL,
    flags TEXT NOT NULL,                -- JSON
    -- rank 0: the teacher must look at it, 1: brought something, 2: changed nothing.
    kind TEXT AS (verdict ->> 'kind') STORED,
    rank INTEGER AS (CASE
        WHEN kind IN ('refused', 'quarantined') OR flags <> '[]' THEN 0
        WHEN kind IN ('new', 'updated') THEN 1
        ELSE 2 END) STORED,
    PRIMARY KEY (import, place)
) STRICT;

-- For one page of a report without its other lines, and for its counts.
CREATE INDEX import_file_shown ON import_file (import, rank, place, kind);

-- Hand-ins as opened. Reports are derived from these, so an import can be
-- undone and a quarantined device accepted later.
CREATE TABLE hand_in (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    import INTEGER NOT NULL REFERENCES import (id),
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device INTEGER NOT NULL REFERENCES device (id) ON DELETE CASCADE,
    revision INTEGER NOT NULL,
    made_on TEXT NOT NULL,
    entries INTEGER NOT NULL,
    pack_version INTEGER NOT NULL,      -- of the class pack that its device had
    content_hash TEXT NOT NULL,
    content BLOB NOT NULL,              -- the JSON payload, deflated and sealed
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE,
    UNIQUE (device, content_hash)
) STRICT;

-- Derived: the union of the check-ins of each (device, school date, concept), apart for each
-- signing key: `brought_by` is the first device of the seat with that key. So nobody replaces
-- what came by another key. The device says whose they are, so these rows do not.
CREATE TABLE check_in (
    brought_by INTEGER NOT NULL REFERENCES device (id) ON DELETE CASCADE,
    device TEXT NOT NULL,               -- on which the student made the entry
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence_at INTEGER,              -- sequence of the tap that gave it; null: never
    confidence INTEGER,
    outcome_at INTEGER,
    outcome TEXT,
    PRIMARY KEY (brought_by, device, school_date, concept)
) STRICT, WITHOUT ROWID;

-- Derived: practice counts by how sure the student said to be (-1: not said).
CREATE TABLE practice_count (
    brought_by INTEGER NOT NULL REFERENCES device (id) ON DELETE CASCADE,
    device TEXT NOT NULL,               -- on which the student made the entry
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence INTEGER NOT NULL,
    alone INTEGER NOT NULL,
    with_help INTEGER NOT NULL,
    wrong INTEGER NOT NULL,
    sequence INTEGER NOT NULL,          -- of the entry that these counts are part of
    PRIMARY KEY (brought_by, device, school_date, concept, confidence)
) STRICT, WITHOUT ROWID;

-- Derived: how often which misconception was recognised.
CREATE TABLE misconception_count (
    brought_by INTEGER NOT NULL REFERENCES device (id) ON DELETE CASCADE,
    device TEXT NOT NULL,               -- on which the student made the entry
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    code TEXT NOT NULL,
    times INTEGER NOT NULL,
    PRIMARY KEY (brought_by, device, school_date, concept, code)
) STRICT, WITHOUT ROWID;

CREATE TABLE assignment (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    id TEXT NOT NULL,
    items_each INTEGER NOT NULL,
    from_date TEXT NOT NULL,
    due_date TEXT NOT NULL,
    whole_class INTEGER NOT NULL,
    withdrawn INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (class, id)
) STRICT;

CREATE TABLE assignment_concept (
    class TEXT NOT NULL,
    assignment TEXT NOT NULL,
    place INTEGER NOT NULL,
    concept TEXT NOT NULL,
    PRIMARY KEY (class, assignment, place),
    FOREIGN KEY (class, assignment) REFERENCES assignment (class, id) ON DELETE CASCADE
) STRICT;

CREATE TABLE assignment_seat (
    class TEXT NOT NULL,
    assignment TEXT NOT NULL,
    seat INTEGER NOT NULL,
    PRIMARY KEY (class, assignment, seat),
    FOREIGN KEY (class, assignment) REFERENCES assignment (class, id) ON DELETE CASCADE
) STRICT;

-- Ratings and results of a paper chart, typed in. They override what a
-- device says of the same seat, date and concept, field by field.
CREATE TABLE paper_check_in (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence INTEGER,
    outcome TEXT,
    PRIMARY KEY (class, seat, school_date, concept),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Observations: the confidence that the teacher saw, or after a small group only
-- whether the student can do it.
CREATE TABLE observation (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    confidence INTEGER,
    has_it INTEGER NOT NULL,
    PRIMARY KEY (class, seat, school_date, concept),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Concepts that were discussed with the whole class.
CREATE TABLE talked_about (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    PRIMARY KEY (class, school_date, concept)
) STRICT, WITHOUT ROWID;

-- What the teacher chose for the warm-up. A concept without a row has the usual exercise of its
-- pass.
CREATE TABLE warm_up_choice (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    pass INTEGER NOT NULL,              -- complete passes before it
    concept TEXT NOT NULL,
    swaps INTEGER NOT NULL,             -- how often the exercise was swapped for another
    level INTEGER CHECK (level BETWEEN 1 AND 3), -- null: the level of the phase
    own_exercise TEXT,                  -- id of the own exercise in its place
    left_out INTEGER NOT NULL CHECK (left_out IN (0, 1)),
    PRIMARY KEY (class, pass, concept)
) STRICT, WITHOUT ROWID;

-- The room for small groups.
CREATE TABLE group_room (
    class TEXT PRIMARY KEY REFERENCES class (id) ON DELETE CASCADE,
    slots INTEGER NOT NULL,
    groups_at_once INTEGER NOT NULL,
    size_least INTEGER NOT NULL,
    size_most INTEGER NOT NULL,
    with_partner INTEGER NOT NULL DEFAULT 0 -- 1: each group gets a student who has the concept
) STRICT;

-- Pairs of seats to keep apart or together.
CREATE TABLE seat_pair (
    class TEXT NOT NULL,
    kept TEXT NOT NULL CHECK (kept IN ('apart', 'together')),
    seat INTEGER NOT NULL,
    other_seat INTEGER NOT NULL,
    PRIMARY KEY (class, kept, seat, other_seat),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE,
    FOREIGN KEY (class, other_seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE absence (
    class TEXT NOT NULL,
    school_date TEXT NOT NULL,
    seat INTEGER NOT NULL,
    PRIMARY KEY (class, school_date, seat),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- The small groups of a date as the teacher kept them.
CREATE TABLE small_group (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    school_date TEXT NOT NULL,
    place INTEGER NOT NULL,
    slot INTEGER NOT NULL,
    concept TEXT NOT NULL,
    PRIMARY KEY (class, school_date, place)
) STRICT;

CREATE TABLE small_group_seat (
    class TEXT NOT NULL,
    school_date TEXT NOT NULL,
    place INTEGER NOT NULL,
    seat INTEGER NOT NULL,
    is_partner INTEGER NOT NULL DEFAULT 0, -- 1: has the concept and explains it to the others
    PRIMARY KEY (class, school_date, place, seat),
    FOREIGN KEY (class, school_date, place)
        REFERENCES small_group (class, school_date, place) ON DELETE CASCADE,
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Concepts that were taught again, with the seats of those who were taught.
CREATE TABLE taught_again (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    came_from TEXT NOT NULL CHECK (came_from IN ('talk', 'group', 'assignment', 'hand')),
    whole_class INTEGER NOT NULL,       -- 1: everybody who was there
    note BLOB                           -- sealed: what was done, in the teacher's words
) STRICT;

CREATE TABLE taught_again_seat (
    class TEXT NOT NULL,
    entry INTEGER NOT NULL REFERENCES taught_again (id) ON DELETE CASCADE,
    seat INTEGER NOT NULL,
    PRIMARY KEY (class, entry, seat),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- The share-safe tables that were handed out. They are kept because tables that are added
-- and subtracted could reveal the ratings of a few students.
CREATE TABLE share_release (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    made_on TEXT NOT NULL,
    PRIMARY KEY (class, place)
) STRICT;

-- The ratings that each row of such a table counted. The marks are keyed digests: of the
-- seat's token; of concept and date; and of the rating with its sequence. When the seat is
-- removed, random values replace them, and `low` is kept or turned round by chance, alike for
-- the same concept and date.
CREATE TABLE share_release_rating (
    class TEXT NOT NULL,
    place INTEGER NOT NULL,
    row TEXT NOT NULL,                  -- concept or strand, or empty for the class
    seat_mark TEXT NOT NULL,
    day_mark TEXT NOT NULL,
    mark TEXT NOT NULL,
    low INTEGER NOT NULL,
    PRIMARY KEY (class, place, row, seat_mark, day_mark),
    FOREIGN KEY (class, place) REFERENCES share_release (class, place) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- The imports of own exercises and concepts.
CREATE TABLE own_import (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    number INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('exercises', 'concepts')),
    made_on TEXT NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0,
    report BLOB NOT NULL,           -- sealed: JSON, each file with its lines
    PRIMARY KEY (class, number)
) STRICT;

CREATE TABLE own_exercise (
    class TEXT NOT NULL,
    id TEXT NOT NULL,               -- a digest of its content
    concept TEXT NOT NULL,
    import INTEGER NOT NULL,
    content TEXT NOT NULL,          -- JSON, as in the class pack
    PRIMARY KEY (class, id),
    FOREIGN KEY (class, import) REFERENCES own_import (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE own_concept (
    class TEXT NOT NULL,
    id TEXT NOT NULL,
    import INTEGER NOT NULL,
    content TEXT NOT NULL,          -- JSON: words, strand, grade, prerequisites, codes
    PRIMARY KEY (class, id),
    FOREIGN KEY (class, import) REFERENCES own_import (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
