DELETE FROM attachment_body
WHERE NOT EXISTS (SELECT 1 FROM attachment a WHERE a.body_digest = attachment_body.digest)
