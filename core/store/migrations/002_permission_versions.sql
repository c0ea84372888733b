-- A lower floor is said for one version of an activity and ends when that rises.
ALTER TABLE permission ADD COLUMN months INTEGER NOT NULL DEFAULT 0;
ALTER TABLE permission ADD COLUMN version INTEGER NOT NULL DEFAULT 0;
