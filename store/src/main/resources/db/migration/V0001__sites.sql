-- Times are ISO 8601 in UTC with milliseconds: they sort as texts, and a person can read them.

CREATE TABLE site (
    id TEXT NOT NULL PRIMARY KEY,
    created_at TEXT NOT NULL,
    archived_at TEXT
);

-- The canonical JSON of whole sites, deflated; what is the same is kept once.
CREATE TABLE site_body (
    digest TEXT NOT NULL PRIMARY KEY,    -- SHA-256 of the canonical JSON, hex
    format INTEGER NOT NULL,
    deflated ${bytes} NOT NULL
);

-- The columns from head on repeat what the newest revision says, for lists and search.
CREATE TABLE variant (
    id TEXT NOT NULL PRIMARY KEY,
    site_id TEXT NOT NULL REFERENCES site (id),
    ordinal INTEGER NOT NULL,
    name TEXT NOT NULL,
    head BIGINT NOT NULL,
    designation TEXT NOT NULL,
    country TEXT NOT NULL,
    changed_at TEXT NOT NULL,
    searched TEXT NOT NULL,              -- name and designation, folded
    UNIQUE (site_id, ordinal)
);

CREATE TABLE revision (
    variant_id TEXT NOT NULL REFERENCES variant (id),
    number BIGINT NOT NULL,              -- from 1, without a gap
    body_digest TEXT NOT NULL REFERENCES site_body (digest),
    kind TEXT NOT NULL,
    content_of BIGINT,                   -- the revision whose content this one repeats
    before_position BIGINT,              -- where undoing it leads to
    who TEXT NOT NULL,
    recorded_at TEXT NOT NULL,
    note TEXT NOT NULL,
    edits TEXT NOT NULL,                 -- JSON: path, before, after of each
    PRIMARY KEY (variant_id, number)
);

CREATE INDEX revision_body ON revision (body_digest);
CREATE INDEX variant_changed ON variant (changed_at);
