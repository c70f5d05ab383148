-- A member of several clubs says which one is meant; where they never did, it is the one joined
-- first. Until now it was the one joined last.
ALTER TABLE memberships ADD COLUMN chosen_at TEXT;
UPDATE memberships SET chosen_at = joined_at;

-- Crops that a club's coordinators recommend under a name.
CREATE TABLE lists (
    -- Never used again, so that a button under an old message cannot mean another list.
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    club_id INTEGER NOT NULL REFERENCES clubs (id),
    name TEXT NOT NULL,
    note TEXT,
    -- Lets another club copy the list, once it is shared and as long as it is not archived.
    code TEXT NOT NULL UNIQUE,
    shared INTEGER NOT NULL,
    archived_at TEXT
) STRICT;

CREATE INDEX lists_of_club ON lists (club_id);

CREATE TABLE list_crops (
    -- Its order is the order of adding.
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    list_id INTEGER NOT NULL REFERENCES lists (id),
    crop TEXT NOT NULL,
    UNIQUE (list_id, crop)
) STRICT;

CREATE TABLE subscriptions (
    member_id INTEGER NOT NULL REFERENCES members (id),
    list_id INTEGER NOT NULL REFERENCES lists (id),
    subscribed_at TEXT NOT NULL,
    -- The crops as the member was last told of them; NULL where nothing changed since.
    told TEXT,
    PRIMARY KEY (member_id, list_id)
) STRICT;

CREATE INDEX subscriptions_to_list ON subscriptions (list_id);

-- Crops that a member leaves out whichever list names them.
CREATE TABLE skipped_crops (
    member_id INTEGER NOT NULL REFERENCES members (id),
    crop TEXT NOT NULL,
    PRIMARY KEY (member_id, crop)
) STRICT;

-- Members who may do in their club what its administrators may, but for naming others.
CREATE TABLE helpers (
    club_id INTEGER NOT NULL REFERENCES clubs (id),
    member_id INTEGER NOT NULL REFERENCES members (id),
    named_at TEXT NOT NULL,
    PRIMARY KEY (club_id, member_id)
) STRICT;

-- The changed lists that a reminder tells of, each with what had been told before.
ALTER TABLE outgoing ADD COLUMN told TEXT;
