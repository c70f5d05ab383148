-- What each person last asked in a chat (and topic of a group; 0 outside topics), for questions
-- that follow it.
CREATE TABLE subjects (
    chat INTEGER NOT NULL,
    thread INTEGER NOT NULL,
    member_id INTEGER NOT NULL REFERENCES members (id),
    subject TEXT NOT NULL,
    expires_at TEXT NOT NULL,
    PRIMARY KEY (chat, thread, member_id)
) STRICT;

CREATE INDEX subjects_expiry ON subjects (expires_at);
CREATE INDEX subjects_member ON subjects (member_id);
