ALTER TABLE members ADD COLUMN latitude INTEGER;

CREATE TABLE sowings (
    -- Never used again, so that a button under an old message cannot mean another sowing.
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    member_id INTEGER NOT NULL REFERENCES members (id),
    crop TEXT NOT NULL,
    way TEXT NOT NULL,
    plants INTEGER,
    sown_on TEXT NOT NULL,
    room_c INTEGER,
    label TEXT NOT NULL,
    season INTEGER NOT NULL,
    came_up_on TEXT,
    failed_on TEXT,
    ended_on TEXT,
    -- The job of a reminder whose "done" it is.
    job TEXT
) STRICT;

CREATE INDEX sowings_of_member ON sowings (member_id);

-- What takes a member's changes back, the last ones of each member.
CREATE TABLE journal (
    member_id INTEGER NOT NULL REFERENCES members (id),
    -- Rises for each member and is never used again.
    number INTEGER NOT NULL,
    changed_at TEXT NOT NULL,
    -- NULL once it was taken back.
    put_back TEXT,
    PRIMARY KEY (member_id, number)
) STRICT;
