INSERT INTO site_body (digest, format, deflated)
VALUES (:digest, :format, :deflated)
ON CONFLICT (digest) DO NOTHING
