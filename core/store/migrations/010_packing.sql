-- The clinic's own (core/workbench): how items are bought, kinds of box, boxes packed together.
CREATE TABLE supply (
    item TEXT PRIMARY KEY,
    said TEXT NOT NULL         -- as the event's fields
) STRICT, WITHOUT ROWID;

CREATE TABLE design (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    said TEXT NOT NULL         -- as the event's fields
) STRICT, WITHOUT ROWID;

CREATE TABLE build (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    day INTEGER NOT NULL,
    boxes INTEGER NOT NULL CHECK (boxes >= 0)
) STRICT, WITHOUT ROWID;

-- Where a box stands between two families.
CREATE TABLE box_state (
    box TEXT PRIMARY KEY,      -- the code on its label
    standing TEXT NOT NULL,
    child TEXT NOT NULL,
    day INTEGER NOT NULL,
    said_by TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- As which builds it was ever packed and handed over.
CREATE TABLE box_build (
    box TEXT NOT NULL,
    build TEXT NOT NULL,
    PRIMARY KEY (box, build)
) STRICT, WITHOUT ROWID;

-- Which lot may lie in which box. Build empty: since it was handed over; else as it was packed.
CREATE TABLE lot_in_box (
    lot TEXT NOT NULL,         -- as it is looked for (core/workbench/lot.h)
    item TEXT NOT NULL,
    box TEXT NOT NULL,
    build TEXT NOT NULL,
    written TEXT NOT NULL,     -- as it was written
    whose TEXT NOT NULL,
    PRIMARY KEY (lot, item, box, build)
) STRICT, WITHOUT ROWID;
CREATE INDEX box_by_build ON box_build (build);
CREATE INDEX lot_by_build ON lot_in_box (build, box);
