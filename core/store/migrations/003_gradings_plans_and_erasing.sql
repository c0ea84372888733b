-- How an activity was played last, and how a therapist asks for it to be played.
CREATE TABLE grading (
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    activity TEXT NOT NULL,
    way TEXT NOT NULL,
    lever TEXT NOT NULL,
    PRIMARY KEY (home, child, activity)
) STRICT, WITHOUT ROWID;

CREATE TABLE grading_pin (
    box TEXT NOT NULL,
    activity TEXT NOT NULL,
    way TEXT NOT NULL,
    lever TEXT NOT NULL,
    PRIMARY KEY (box, activity)
) STRICT, WITHOUT ROWID;

-- What adults have said about a day of the week plan.
CREATE TABLE planned (
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    day INTEGER NOT NULL,
    wish TEXT NOT NULL,
    activity TEXT NOT NULL,
    PRIMARY KEY (home, child, day)
) STRICT, WITHOUT ROWID;

-- An erased event keeps its identity, so that a second delivery changes nothing, and no more.
ALTER TABLE event ADD COLUMN erased INTEGER NOT NULL DEFAULT 0 CHECK (erased IN (0, 1));
