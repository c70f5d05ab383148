-- Questions of a group whose answer was short there, so that the whole of it can be read in
-- private. Forgotten after some days.
CREATE TABLE group_questions (
    chat INTEGER NOT NULL,
    message INTEGER NOT NULL,
    member_id INTEGER NOT NULL REFERENCES members (id),
    question TEXT NOT NULL,
    -- What it may lean on: what was asked before it.
    before TEXT,
    asked_at TEXT NOT NULL,
    PRIMARY KEY (chat, message)
) STRICT;

CREATE INDEX group_questions_of_member ON group_questions (member_id);
CREATE INDEX group_questions_age ON group_questions (asked_at);
