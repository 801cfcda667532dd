DELETE FROM contact WHERE customer_id = :customer
