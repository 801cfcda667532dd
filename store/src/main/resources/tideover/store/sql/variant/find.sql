SELECT id, site_id, name, head, designation, country, changed_at FROM variant WHERE id = :id
