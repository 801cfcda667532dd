INSERT INTO customer (id, name, street, postal_code, town, country, phone, mail, note, searched)
VALUES (:id, :name, :street, :postalCode, :town, :country, :phone, :mail, :note, :searched)
