INSERT INTO attachment_body (digest, size_bytes, content) VALUES (:digest, :sizeBytes, :content)
ON CONFLICT (digest) DO NOTHING
