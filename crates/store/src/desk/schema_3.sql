-- The teacher's desk, version 3: which share-safe tables were handed out, since
-- two tables of nearly the same class subtract.

CREATE TABLE share_release (
    class TEXT NOT NULL REFERENCES class (id) ON DELETE CASCADE,
    place INTEGER NOT NULL,
    made_on TEXT NOT NULL,
    PRIMARY KEY (class, place)
) STRICT;

-- The class of that day, one mark a seat: a digest of the seat's code, so that a
-- later student on the same number is another one. It stays when a seat goes.
CREATE TABLE share_release_seat (
    class TEXT NOT NULL,
    place INTEGER NOT NULL,
    seat_mark TEXT NOT NULL,
    PRIMARY KEY (class, place, seat_mark),
    FOREIGN KEY (class, place) REFERENCES share_release (class, place) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
