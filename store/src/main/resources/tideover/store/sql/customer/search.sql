SELECT id, name, street, postal_code, town, country, phone, mail, note, forgotten_at
FROM customer
WHERE forgotten_at IS NULL AND searched LIKE :word1 ESCAPE '!' AND searched LIKE :word2 ESCAPE '!'
    AND searched LIKE :word3 ESCAPE '!' AND searched LIKE :word4 ESCAPE '!'
ORDER BY searched, id
