INSERT INTO attachment (id, site_id, place, file_name, media_type, body_digest, privacy, who, added_at, note)
VALUES (:id, :site, :place, :fileName, :mediaType, :body, :privacy, :who, :addedAt, :note)
