UPDATE customer
SET name = '', street = '', postal_code = '', town = '', country = '', phone = '', mail = '', note = '', searched = '',
    forgotten_at = :forgottenAt
WHERE id = :id
