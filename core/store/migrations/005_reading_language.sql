-- The language in which each person of a home reads.
CREATE TABLE reads (
    home TEXT NOT NULL,
    person TEXT NOT NULL,
    language TEXT NOT NULL,
    PRIMARY KEY (home, person)
) STRICT, WITHOUT ROWID;
