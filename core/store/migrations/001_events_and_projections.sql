-- What this phone is, and what it needs to come back after a dead battery. Never shared.
CREATE TABLE device (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    id TEXT NOT NULL CHECK (id <> ''),
    person TEXT NOT NULL,
    role TEXT NOT NULL CHECK (role IN ('parent', 'caregiver', 'guest', 'therapist')),
    home TEXT NOT NULL
) STRICT;

CREATE TABLE local_state (
    key TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Every event, kept by lane and device. Without a rowid, so that the order of rows in one lane
-- says nothing about the moment of rows in another (a check-in must not be placed in time).
CREATE TABLE event (
    lane TEXT NOT NULL,
    device TEXT NOT NULL,
    counter INTEGER NOT NULL CHECK (counter > 0),
    identity TEXT NOT NULL CHECK (length(identity) = 64),
    instant_ms INTEGER NOT NULL CHECK (instant_ms >= 0),
    logical INTEGER NOT NULL CHECK (logical >= 0),
    day INTEGER NOT NULL,
    part INTEGER NOT NULL CHECK (part BETWEEN 0 AND 2),
    offset_minutes INTEGER NOT NULL CHECK (offset_minutes BETWEEN -840 AND 840),
    author TEXT NOT NULL,
    kind TEXT NOT NULL,
    subject TEXT NOT NULL,
    fields TEXT NOT NULL,
    PRIMARY KEY (lane, device, counter, identity)
) STRICT, WITHOUT ROWID;

CREATE INDEX event_by_subject ON event (lane, subject);

-- Projections: dropping and refolding them gives the same rows.
CREATE TABLE box (
    id TEXT PRIMARY KEY,
    child TEXT NOT NULL,
    alias TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE box_revision (
    box TEXT PRIMARY KEY,
    number INTEGER NOT NULL CHECK (number > 0),
    issued_day INTEGER NOT NULL,
    packed TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE box_place (
    box TEXT PRIMARY KEY,
    place TEXT NOT NULL,
    words TEXT NOT NULL,
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE box_item (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    expected INTEGER NOT NULL CHECK (expected >= 0),
    low INTEGER NOT NULL CHECK (low >= 0),
    high INTEGER NOT NULL CHECK (high >= low),
    still_out INTEGER NOT NULL CHECK (still_out >= 0),
    opened_day INTEGER,
    dried_out INTEGER NOT NULL CHECK (dried_out IN (0, 1)),
    please_count INTEGER NOT NULL CHECK (please_count IN (0, 1)),
    PRIMARY KEY (box, item)
) STRICT, WITHOUT ROWID;

CREATE TABLE loss (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    identity TEXT NOT NULL,
    pieces INTEGER NOT NULL CHECK (pieces >= 0),
    closed INTEGER NOT NULL CHECK (closed IN (0, 1)),
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL,
    PRIMARY KEY (box, item, identity)
) STRICT, WITHOUT ROWID;

CREATE TABLE outcome (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    play TEXT NOT NULL,
    used_up INTEGER NOT NULL CHECK (used_up >= 0),
    lost INTEGER NOT NULL CHECK (lost >= 0),
    broken INTEGER NOT NULL CHECK (broken >= 0),
    dried_out INTEGER NOT NULL CHECK (dried_out >= 0),
    still_in_use INTEGER NOT NULL CHECK (still_in_use >= 0),
    author TEXT NOT NULL,
    PRIMARY KEY (box, item, play)
) STRICT, WITHOUT ROWID;

CREATE INDEX outcome_by_play ON outcome (play);

CREATE TABLE fact (
    home TEXT NOT NULL,
    person TEXT NOT NULL,
    fact TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (home, person, fact)
) STRICT, WITHOUT ROWID;

CREATE TABLE permission (
    home TEXT NOT NULL,
    name TEXT NOT NULL,
    words TEXT NOT NULL,
    PRIMARY KEY (home, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE play (
    id TEXT PRIMARY KEY,
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    activity TEXT NOT NULL,
    version INTEGER NOT NULL CHECK (version > 0),
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL,
    started_ms INTEGER NOT NULL,
    ending TEXT,
    ended_by TEXT NOT NULL,
    phrases TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX play_by_child ON play (child, day);

CREATE TABLE offered (
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    activity TEXT NOT NULL,
    day INTEGER NOT NULL,
    day_before INTEGER, -- the last day earlier than that: today's menu must not change itself
    PRIMARY KEY (home, child, activity)
) STRICT, WITHOUT ROWID;

CREATE TABLE check_in (
    home TEXT NOT NULL,
    child TEXT NOT NULL,
    id TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL,
    before TEXT NOT NULL,
    shown_by TEXT NOT NULL,
    after TEXT,
    activity TEXT NOT NULL,
    PRIMARY KEY (home, child, id)
) STRICT, WITHOUT ROWID;

CREATE TABLE goal (
    id TEXT PRIMARY KEY,
    child TEXT NOT NULL,
    fields TEXT NOT NULL
) STRICT, WITHOUT ROWID;
