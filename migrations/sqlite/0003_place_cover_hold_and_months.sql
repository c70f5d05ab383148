-- Where a member raises seedlings, and what covers their beds.
ALTER TABLE members ADD COLUMN place TEXT;
ALTER TABLE members ADD COLUMN cover TEXT;
-- A cold spell for which hardening off and setting out wait: its first day and the day on which
-- they go on, as YYYY-MM-DD/YYYY-MM-DD.
ALTER TABLE members ADD COLUMN hold TEXT;
ALTER TABLE clubs ADD COLUMN hold TEXT;
-- For a garden without frost, the months as they were understood; the text stays beside them.
ALTER TABLE members ADD COLUMN months TEXT;
