-- The name of the variety that was sown, as the member wrote it; NULL for none.
ALTER TABLE sowings ADD COLUMN variety TEXT;
-- The hot and the wet months of a club without frost: as they were written, and as understood.
ALTER TABLE clubs ADD COLUMN hot_and_wet TEXT;
ALTER TABLE clubs ADD COLUMN months TEXT;
