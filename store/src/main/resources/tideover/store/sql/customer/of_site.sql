SELECT c.id, c.name, c.street, c.postal_code, c.town, c.country, c.phone, c.mail, c.note, c.forgotten_at
FROM site_customer sc JOIN customer c ON c.id = sc.customer_id
WHERE sc.site_id = :site
ORDER BY c.searched, c.id
