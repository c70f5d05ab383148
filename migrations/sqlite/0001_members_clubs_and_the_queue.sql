-- Instants are RFC 3339 texts in UTC, dates are YYYY-MM-DD; both are bound by the program and
-- compare as text in their order of time. Booleans are 0 and 1.

CREATE TABLE members (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    user_id INTEGER NOT NULL UNIQUE,
    name TEXT NOT NULL,
    reachable INTEGER NOT NULL,
    frost TEXT,
    zone TEXT,
    language TEXT,
    units TEXT,
    reminder_minutes INTEGER NOT NULL,
    hot_and_wet TEXT,
    -- NULL for a member the bot may not write to first.
    next_reminder_at TEXT,
    first_seen_at TEXT NOT NULL
) STRICT;

CREATE INDEX members_next_reminder ON members (next_reminder_at);

CREATE TABLE clubs (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    -- Kept when the club is closed, so that the same group finds its club again.
    chat INTEGER UNIQUE,
    title TEXT NOT NULL,
    frost TEXT,
    zone TEXT,
    language TEXT,
    join_token TEXT NOT NULL UNIQUE,
    opened_at TEXT NOT NULL,
    closed_at TEXT,
    -- Set when a group's move showed that two clubs are one; the join tokens of both still work.
    merged_into INTEGER REFERENCES clubs (id)
) STRICT;

CREATE INDEX clubs_merged_into ON clubs (merged_into);

CREATE TABLE memberships (
    club_id INTEGER NOT NULL REFERENCES clubs (id),
    member_id INTEGER NOT NULL REFERENCES members (id),
    joined_at TEXT NOT NULL,
    left_at TEXT,
    PRIMARY KEY (club_id, member_id)
) STRICT;

CREATE INDEX memberships_of_member ON memberships (member_id);

CREATE TABLE member_crops (
    -- Its order is the order of adding.
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    member_id INTEGER NOT NULL REFERENCES members (id),
    crop TEXT NOT NULL,
    UNIQUE (member_id, crop)
) STRICT;

CREATE TABLE job_marks (
    member_id INTEGER NOT NULL REFERENCES members (id),
    job TEXT NOT NULL,
    mark TEXT,
    mark_on TEXT,
    named_on TEXT,
    PRIMARY KEY (member_id, job)
) STRICT;

CREATE TABLE expectations (
    chat INTEGER NOT NULL,
    member_id INTEGER NOT NULL REFERENCES members (id),
    expected TEXT NOT NULL,
    expires_at TEXT NOT NULL,
    PRIMARY KEY (chat, member_id)
) STRICT;

CREATE INDEX expectations_expiry ON expectations (expires_at);

CREATE TABLE seen_updates (
    bot INTEGER NOT NULL,
    update_id INTEGER NOT NULL,
    seen_at TEXT NOT NULL,
    PRIMARY KEY (bot, update_id)
) STRICT;

CREATE INDEX seen_updates_age ON seen_updates (seen_at);

CREATE TABLE outgoing (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    -- NULL for the answer to a press.
    chat INTEGER,
    -- 0 the answer to a press, 1 a reply, 2 a reminder.
    priority INTEGER NOT NULL,
    payload TEXT NOT NULL,
    member_id INTEGER REFERENCES members (id),
    -- Set for reminders only, and taken off when one is cancelled, so that it can be made anew.
    kind TEXT,
    local_date TEXT,
    -- The jobs that a reminder names, each with the date that stood there before.
    named TEXT,
    created_at TEXT NOT NULL,
    not_before TEXT NOT NULL,
    expires_at TEXT,
    attempts INTEGER NOT NULL,
    -- NULL while it waits.
    outcome TEXT,
    ended_at TEXT,
    platform_message_id INTEGER,
    error TEXT,
    UNIQUE (member_id, local_date, kind)
) STRICT;

CREATE INDEX outgoing_order ON outgoing (priority, id) WHERE outcome IS NULL;
CREATE INDEX outgoing_of_chat ON outgoing (chat, priority, id) WHERE outcome IS NULL;
CREATE INDEX outgoing_wake ON outgoing (not_before) WHERE outcome IS NULL;
CREATE INDEX outgoing_expiry ON outgoing (expires_at) WHERE outcome IS NULL;
CREATE INDEX outgoing_ended ON outgoing (ended_at) WHERE outcome IS NOT NULL;
