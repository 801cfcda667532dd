DELETE FROM attachment WHERE id = :id
