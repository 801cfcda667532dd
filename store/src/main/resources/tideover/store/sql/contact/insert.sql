INSERT INTO contact (customer_id, ordinal, role, name, phone, mail)
VALUES (:customer, :ordinal, :role, :name, :phone, :mail)
