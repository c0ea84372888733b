-- The last day on which a guest may play here; NULL: no end.
ALTER TABLE device ADD COLUMN until INTEGER;
