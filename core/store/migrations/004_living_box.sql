-- Projections alone change here: the rows are folded again from the events (core/store/refold.h).
DROP TABLE box_item;
CREATE TABLE box_item (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    expected INTEGER NOT NULL CHECK (expected >= 0),
    low INTEGER NOT NULL CHECK (low >= 0),
    high INTEGER NOT NULL CHECK (high >= low),
    still_out INTEGER NOT NULL CHECK (still_out >= 0),
    dried_out INTEGER NOT NULL CHECK (dried_out IN (0, 1)),
    please_count INTEGER NOT NULL CHECK (please_count IN (0, 1)),
    counted_day INTEGER,
    checked_day INTEGER,
    keeps_days INTEGER,
    mouthed INTEGER NOT NULL CHECK (mouthed IN (0, 1)),
    mouthed_by TEXT NOT NULL,
    mouthed_day INTEGER NOT NULL,
    mouthed_part INTEGER NOT NULL,
    PRIMARY KEY (box, item)
) STRICT, WITHOUT ROWID;

-- The day on which each item was first on the lid list.
ALTER TABLE box_revision ADD COLUMN since TEXT NOT NULL DEFAULT '{}';

CREATE TABLE item_arrival (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    place INTEGER NOT NULL, -- oldest first
    round INTEGER,
    day INTEGER NOT NULL,
    pieces INTEGER NOT NULL CHECK (pieces >= 0),
    PRIMARY KEY (box, item, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE item_use (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    day INTEGER NOT NULL,
    kind TEXT NOT NULL,
    pieces INTEGER NOT NULL CHECK (pieces > 0),
    PRIMARY KEY (box, item, day, kind)
) STRICT, WITHOUT ROWID;

CREATE TABLE piece (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    piece TEXT NOT NULL,
    opened_day INTEGER,
    times_left_open INTEGER NOT NULL CHECK (times_left_open >= 0),
    PRIMARY KEY (box, item, piece)
) STRICT, WITHOUT ROWID;

CREATE TABLE request (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    round INTEGER NOT NULL CHECK (round >= 0),
    step TEXT NOT NULL,
    instead_of TEXT NOT NULL,
    asked_by TEXT NOT NULL,
    asked_day INTEGER NOT NULL,
    asked_part INTEGER NOT NULL,
    step_by TEXT NOT NULL,
    step_day INTEGER NOT NULL,
    step_part INTEGER NOT NULL,
    PRIMARY KEY (box, item, round)
) STRICT, WITHOUT ROWID;

CREATE TABLE question (
    box TEXT NOT NULL,
    item TEXT NOT NULL,
    id TEXT NOT NULL,
    fields TEXT NOT NULL,
    PRIMARY KEY (box, item, id)
) STRICT, WITHOUT ROWID;

-- Said at the same time by somebody else: both are shown.
CREATE TABLE box_place_too (
    box TEXT PRIMARY KEY,
    place TEXT NOT NULL,
    words TEXT NOT NULL,
    author TEXT NOT NULL,
    day INTEGER NOT NULL,
    part INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
