SELECT r.variant_id, r.number, r.body_digest, r.kind, r.content_of, r.before_position, r.who, r.recorded_at, r.note, r.edits
FROM variant v JOIN revision r ON r.variant_id = v.id AND r.number = v.head
WHERE v.id = :variant
