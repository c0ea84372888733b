-- A projection alone changes here: the rows are folded again from the events (core/store/refold.h).
DROP TABLE box_revision;
CREATE TABLE box_revision (
    box TEXT PRIMARY KEY,
    number INTEGER NOT NULL CHECK (number > 0),
    issued_day INTEGER NOT NULL,
    packed TEXT NOT NULL,      -- what belongs in the box now, and what is to be taken out
    heads INTEGER NOT NULL CHECK (heads > 0),
    began TEXT NOT NULL,       -- pieces by item when the box was handed over
    begun_day INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
