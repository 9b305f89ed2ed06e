-- The teacher's desk, version 1. Names stand here and nowhere else.

CREATE TABLE class (
    id TEXT PRIMARY KEY,
    title TEXT NOT NULL,
    made_on TEXT NOT NULL,
    sealing_identity TEXT NOT NULL,     -- age X25519 identity: opens hand-ins
    signing_seed BLOB NOT NULL,         -- 32 bytes, Ed25519: signs class packs
    first_day TEXT NOT NULL,
    last_day TEXT NOT NULL,
    weekdays TEXT NOT NULL,             -- ISO weekday digits, e.g. 12345
    pack_version INTEGER NOT NULL DEFAULT 0,
    pack_stamp TEXT NOT NULL DEFAULT '' -- of the content of that pack
) STRICT;

CREATE TABLE closure (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    school_date TEXT NOT NULL,
    PRIMARY KEY (class, school_date)
) STRICT;

-- The rotation: which concept stands on which day, in which place.
CREATE TABLE rotation_place (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    day INTEGER NOT NULL,
    place INTEGER NOT NULL,
    concept TEXT NOT NULL,
    PRIMARY KEY (class, day, place),
    UNIQUE (class, concept)
) STRICT;

-- The date of a concept's first lesson; none means not this year.
CREATE TABLE taught_from (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    concept TEXT NOT NULL,
    school_date TEXT NOT NULL,
    PRIMARY KEY (class, concept)
) STRICT;

CREATE TABLE seat (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    number INTEGER NOT NULL,
    token TEXT NOT NULL,                -- random; on the slip with its check character
    name TEXT,
    PRIMARY KEY (class, number),
    UNIQUE (class, token)
) STRICT;

-- Devices that handed in for a seat. The first key of a seat is accepted,
-- another one is held until the teacher decides.
CREATE TABLE device (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    signing_key TEXT NOT NULL,
    recipient TEXT NOT NULL,            -- age X25519, for personal assignments
    state TEXT NOT NULL CHECK (state IN ('accepted', 'held', 'put_aside')),
    first_seen_on TEXT NOT NULL,
    PRIMARY KEY (class, seat, device, signing_key),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT;

CREATE TABLE import (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    made_on TEXT NOT NULL,
    cancelled INTEGER NOT NULL DEFAULT 0,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;

-- The account of every file of an import.
CREATE TABLE import_file (
    import INTEGER NOT NULL REFERENCES import (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    file_name TEXT NOT NULL,
    verdict TEXT NOT NULL,              -- JSON
    class TEXT,
    seat INTEGER,
    new_entries INTEGER NOT NULL,
    flags TEXT NOT NULL,                -- JSON
    PRIMARY KEY (import, place)
) STRICT;

-- Hand-ins as opened. Reports are derived from these, so an import can be
-- undone and a held device accepted later.
CREATE TABLE hand_in (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    import INTEGER NOT NULL REFERENCES import (id),
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    signing_key TEXT NOT NULL,
    revision INTEGER NOT NULL,
    made_on TEXT NOT NULL,
    content_hash TEXT NOT NULL,
    content BLOB NOT NULL,              -- the JSON payload, deflated
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE,
    UNIQUE (class, seat, device, signing_key, content_hash)
) STRICT;

-- Derived: the check-in that counts of each (device, school date, concept).
CREATE TABLE check_in (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    sequence INTEGER NOT NULL,
    confidence INTEGER,
    outcome TEXT,
    PRIMARY KEY (class, seat, device, school_date, concept),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Derived: practice counts by how sure the student said to be (-1: not said).
CREATE TABLE practice_count (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    sure INTEGER NOT NULL,
    alone INTEGER NOT NULL,
    with_help INTEGER NOT NULL,
    wrong INTEGER NOT NULL,
    PRIMARY KEY (class, seat, device, school_date, concept, sure),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Derived: how often which mistake was made.
CREATE TABLE mistake_count (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    device TEXT NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    code TEXT NOT NULL,
    times INTEGER NOT NULL,
    PRIMARY KEY (class, seat, device, school_date, concept, code),
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
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
