-- What is noted on one day is looked through to be taken back.
CREATE INDEX event_by_day ON event (lane, day);

-- A family's own way of playing an activity.
CREATE TABLE our_way (
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    activity TEXT NOT NULL,
    words TEXT NOT NULL,
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL,
    PRIMARY KEY (home, child, activity)
) STRICT, WITHOUT ROWID;

-- Notes to oneself; the owner is the scope of the notes lane.
CREATE TABLE own_note (
    owner TEXT NOT NULL,
    id TEXT NOT NULL,
    child TEXT NOT NULL,
    words TEXT NOT NULL,
    phrase TEXT NOT NULL,
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL,
    at_ms INTEGER NOT NULL,
    at_logical INTEGER NOT NULL,
    sent INTEGER NOT NULL CHECK (sent IN (0, 1)),
    removed_day INTEGER,
    PRIMARY KEY (owner, id)
) STRICT, WITHOUT ROWID;
