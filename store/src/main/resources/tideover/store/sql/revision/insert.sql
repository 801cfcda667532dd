INSERT INTO revision
    (variant_id, number, body_digest, kind, content_of, before_position, who, recorded_at, note, edits)
VALUES
    (:variant, :number, :body, :kind, :contentOf, :beforePosition, :who, :recordedAt, :note, :edits)
