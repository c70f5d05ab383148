-- Monday 1, Tuesday 2, Wednesday 4, up to Sunday 64.
ALTER TABLE members ADD COLUMN quiet_days INTEGER NOT NULL DEFAULT 0;
ALTER TABLE members ADD COLUMN at_weekends INTEGER NOT NULL DEFAULT 0;
-- The first day after a holiday.
ALTER TABLE members ADD COLUMN holiday_until TEXT;

-- Monday 1 to Sunday 7; NULL where the group gets no digest.
ALTER TABLE clubs ADD COLUMN digest_weekday INTEGER;
ALTER TABLE clubs ADD COLUMN digest_minutes INTEGER;
ALTER TABLE clubs ADD COLUMN digest_thread INTEGER;
-- The day that the last digest stood for.
ALTER TABLE clubs ADD COLUMN digest_made_for TEXT;
-- NULL for a club without a digest, and while the bot is out of the group.
ALTER TABLE clubs ADD COLUMN next_digest_at TEXT;

CREATE INDEX clubs_next_digest ON clubs (next_digest_at);
