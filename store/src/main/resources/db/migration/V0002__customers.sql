-- People stand in these tables only, so that they can be forgotten without a revision changing.

CREATE TABLE customer (
    id TEXT NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    street TEXT NOT NULL,
    postal_code TEXT NOT NULL,
    town TEXT NOT NULL,
    country TEXT NOT NULL,
    phone TEXT NOT NULL,
    mail TEXT NOT NULL,
    note TEXT NOT NULL,
    searched TEXT NOT NULL,              -- name and town, folded
    forgotten_at TEXT
);

CREATE TABLE contact (
    customer_id TEXT NOT NULL REFERENCES customer (id),
    ordinal INTEGER NOT NULL,
    role TEXT NOT NULL,
    name TEXT NOT NULL,
    phone TEXT NOT NULL,
    mail TEXT NOT NULL,
    PRIMARY KEY (customer_id, ordinal)
);

CREATE TABLE site_customer (
    site_id TEXT NOT NULL REFERENCES site (id),
    customer_id TEXT NOT NULL REFERENCES customer (id),
    PRIMARY KEY (site_id, customer_id)
);

CREATE INDEX site_customer_customer ON site_customer (customer_id);
