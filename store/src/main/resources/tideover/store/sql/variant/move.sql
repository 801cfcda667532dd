UPDATE variant
SET head = :head, designation = :designation, country = :country, changed_at = :changedAt, searched = :searched
WHERE id = :id
