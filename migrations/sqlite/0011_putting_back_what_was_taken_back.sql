-- What puts a change back that was taken back; NULL once anything else changed.
ALTER TABLE journal ADD COLUMN put_forward TEXT;
