SELECT s.created_at, s.archived_at, v.id, v.site_id, v.name, v.head, v.designation, v.country, v.changed_at
FROM site s JOIN variant v ON v.site_id = s.id
WHERE s.id = :site
ORDER BY v.ordinal
