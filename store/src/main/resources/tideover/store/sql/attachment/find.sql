SELECT a.id, a.site_id, a.place, a.file_name, a.media_type, a.body_digest, b.size_bytes, a.privacy, a.who, a.added_at, a.note
FROM attachment a JOIN attachment_body b ON b.digest = a.body_digest
WHERE a.id = :id
