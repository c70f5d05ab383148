-- The language that a member's app was set to when they last wrote, a BCP 47 tag. It is spoken
-- where neither they nor their club chose one.
ALTER TABLE members ADD COLUMN app_language TEXT;
