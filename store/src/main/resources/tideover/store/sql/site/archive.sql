UPDATE site SET archived_at = :archivedAt WHERE id = :site
