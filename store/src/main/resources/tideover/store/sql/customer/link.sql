INSERT INTO site_customer (site_id, customer_id) VALUES (:site, :customer)
ON CONFLICT (site_id, customer_id) DO NOTHING
