DELETE FROM site_customer WHERE site_id = :site AND customer_id = :customer
