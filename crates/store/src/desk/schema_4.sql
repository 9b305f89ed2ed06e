-- The teacher's desk, version 4: what the teacher brings along, concepts and exercises.

-- Every import of such a file, with its account line by line.
CREATE TABLE own_import (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    number INTEGER NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('exercises', 'concepts')),
    made_on TEXT NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0,
    account TEXT NOT NULL,          -- JSON: each file with its lines
    PRIMARY KEY (class, number)
) STRICT;

CREATE TABLE own_exercise (
    class TEXT NOT NULL,
    id TEXT NOT NULL,               -- of all it says
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
