INSERT INTO site (id, created_at) VALUES (:id, :createdAt)
