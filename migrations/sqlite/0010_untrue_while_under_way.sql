-- Set when a change made a reminder untrue while it was under way: should it come back, after a
-- failed try or after the program was ended in between, it is taken back and not sent again.
ALTER TABLE outgoing ADD COLUMN untrue INTEGER NOT NULL DEFAULT 0;
