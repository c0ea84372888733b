-- Who is in the crew of a box: folded from what was said of it.
CREATE TABLE crew_member (
    box TEXT NOT NULL,
    device TEXT NOT NULL,
    fields TEXT NOT NULL,    -- as it was let in
    accepted TEXT,           -- NULL: it is in; otherwise what is still accepted of it, by lane
    PRIMARY KEY (box, device)
) STRICT, WITHOUT ROWID;

-- Keys that were handed over when this phone was let in, still closed: only its own secret, which
-- lies in the phone's keychain, opens them. Those of later epochs stand in events.
CREATE TABLE handed_key (
    epoch TEXT NOT NULL PRIMARY KEY,
    box TEXT NOT NULL,
    lane TEXT NOT NULL,
    writer TEXT NOT NULL,    -- the one device that writes under it; empty: all
    letter BLOB NOT NULL
) STRICT, WITHOUT ROWID;

-- Sealed segments: what was taken in, and what this phone has written. Bytes stay until they are
-- known to be on the storage whole, and longer where they may be asked for again.
CREATE TABLE segment (
    epoch TEXT NOT NULL,
    device TEXT NOT NULL,
    sequence INTEGER NOT NULL CHECK (sequence > 0),
    box TEXT NOT NULL,       -- whose crew
    lane TEXT NOT NULL,
    hash TEXT NOT NULL,
    last_counter INTEGER NOT NULL CHECK (last_counter >= 0),
    shared_ms INTEGER,       -- when it was seen on the storage; NULL: still to be brought there
    bytes BLOB NOT NULL,
    -- What was erased since has been told again without it: to be taken off the storage.
    superseded INTEGER NOT NULL DEFAULT 0 CHECK (superseded IN (0, 1)),
    PRIMARY KEY (epoch, device, sequence)
) STRICT, WITHOUT ROWID;

CREATE INDEX segment_by_lane ON segment (box, lane, device);
