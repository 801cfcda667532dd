INSERT INTO variant (id, site_id, ordinal, name, head, designation, country, changed_at, searched)
SELECT :id, :site, COUNT(*) + 1, :name, 1, :designation, :country, :changedAt, :searched
FROM variant WHERE site_id = :site
