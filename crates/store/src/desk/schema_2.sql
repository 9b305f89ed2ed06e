-- The teacher's desk, version 2: what the teacher enters beside the hand-ins.

-- Ratings and results of a paper chart, typed in. They stand above what a
-- device says of the same seat, date and concept.
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

-- What the teacher saw: a rating on the students' own scale, or after a small
-- group only whether the student has it.
CREATE TABLE observation (
    class TEXT NOT NULL,
    seat INTEGER NOT NULL,
    school_date TEXT NOT NULL,
    concept TEXT NOT NULL,
    rating INTEGER,
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

-- What there is room for in small groups.
CREATE TABLE group_room (
    class TEXT PRIMARY KEY REFERENCES class (id) ON DELETE CASCADE,
    slots INTEGER NOT NULL,
    groups_at_once INTEGER NOT NULL,
    size_least INTEGER NOT NULL,
    size_most INTEGER NOT NULL
) STRICT;

-- Who must not, or should, sit together.
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
    PRIMARY KEY (class, school_date, place, seat),
    FOREIGN KEY (class, school_date, place)
        REFERENCES small_group (class, school_date, place) ON DELETE CASCADE,
    FOREIGN KEY (class, seat) REFERENCES seat (class, number) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- The sequence of the entry that the counts are of, so that a later hand-in
-- can be compared with what is here without opening the earlier ones again.
ALTER TABLE practice_count ADD COLUMN sequence INTEGER NOT NULL DEFAULT 0;

-- Bounds of practice at home, and a test to aim at.
ALTER TABLE class ADD COLUMN minutes_least INTEGER NOT NULL DEFAULT 4;
ALTER TABLE class ADD COLUMN minutes_most INTEGER NOT NULL DEFAULT 16;
ALTER TABLE class ADD COLUMN evenings_least INTEGER NOT NULL DEFAULT 1;
ALTER TABLE class ADD COLUMN evenings_most INTEGER NOT NULL DEFAULT 7;
ALTER TABLE class ADD COLUMN test_on TEXT;
