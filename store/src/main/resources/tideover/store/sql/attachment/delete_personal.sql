DELETE FROM attachment
WHERE privacy = 'PERSONAL' AND site_id IN (SELECT site_id FROM site_customer WHERE customer_id = :customer)
