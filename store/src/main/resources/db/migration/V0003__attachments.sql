-- Photos and documents, cleaned; what is the same is kept once.
CREATE TABLE attachment_body (
    digest TEXT NOT NULL PRIMARY KEY,    -- SHA-256 of the content, hex
    size_bytes BIGINT NOT NULL,
    content ${bytes} NOT NULL
);

CREATE TABLE attachment (
    id TEXT NOT NULL PRIMARY KEY,
    site_id TEXT NOT NULL REFERENCES site (id),
    place TEXT NOT NULL,                 -- a thing or a fact; empty for the site as a whole
    file_name TEXT NOT NULL,
    media_type TEXT NOT NULL,
    body_digest TEXT NOT NULL REFERENCES attachment_body (digest),
    privacy TEXT NOT NULL,
    who TEXT NOT NULL,
    added_at TEXT NOT NULL,
    note TEXT NOT NULL
);

CREATE INDEX attachment_site ON attachment (site_id);
CREATE INDEX attachment_digest ON attachment (body_digest);
