SELECT role, name, phone, mail FROM contact WHERE customer_id = :customer ORDER BY ordinal
