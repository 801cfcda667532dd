UPDATE customer
SET name = :name, street = :street, postal_code = :postalCode, town = :town, country = :country,
    phone = :phone, mail = :mail, note = :note, searched = :searched
WHERE id = :id
