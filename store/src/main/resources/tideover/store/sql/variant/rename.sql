UPDATE variant SET name = :name, searched = :searched WHERE id = :id
