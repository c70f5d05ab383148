CREATE TABLE varieties (
    -- Never used again; the highest of a crop is the variety that was told last.
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    member_id INTEGER NOT NULL REFERENCES members (id),
    crop TEXT NOT NULL,
    -- NULL for the one variety of a crop that has no name.
    name TEXT,
    packet TEXT NOT NULL
) STRICT;

CREATE INDEX varieties_of_member ON varieties (member_id);
