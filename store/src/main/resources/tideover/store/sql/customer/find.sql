SELECT id, name, street, postal_code, town, country, phone, mail, note, forgotten_at
FROM customer WHERE id = :id
