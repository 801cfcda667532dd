SELECT variant_id, number, body_digest, kind, content_of, before_position, who, recorded_at, note, edits
FROM revision WHERE variant_id = :variant AND number > :base ORDER BY number
