SELECT site_id FROM site_customer WHERE customer_id = :customer ORDER BY site_id
