WITH text (site_id, searched) AS (
    SELECT site_id, searched FROM variant
    UNION ALL
    SELECT sc.site_id, c.searched FROM site_customer sc JOIN customer c ON c.id = sc.customer_id
),
chosen (id, created_at, archived_at, latest) AS (
    SELECT s.id, s.created_at, s.archived_at, MAX(v.changed_at)
    FROM site s JOIN variant v ON v.site_id = s.id
    WHERE (:shelf = 'BOTH' OR (:shelf = 'ARCHIVED' AND s.archived_at IS NOT NULL)
            OR (:shelf = 'IN_WORK' AND s.archived_at IS NULL))
        AND EXISTS (SELECT 1 FROM text t WHERE t.site_id = s.id AND t.searched LIKE :word1 ESCAPE '!')
        AND EXISTS (SELECT 1 FROM text t WHERE t.site_id = s.id AND t.searched LIKE :word2 ESCAPE '!')
        AND EXISTS (SELECT 1 FROM text t WHERE t.site_id = s.id AND t.searched LIKE :word3 ESCAPE '!')
        AND EXISTS (SELECT 1 FROM text t WHERE t.site_id = s.id AND t.searched LIKE :word4 ESCAPE '!')
    GROUP BY s.id, s.created_at, s.archived_at
    ORDER BY MAX(v.changed_at) DESC, s.id
    LIMIT :most
)
SELECT c.created_at, c.archived_at, v.id, v.site_id, v.name, v.head, v.designation, v.country, v.changed_at
FROM chosen c JOIN variant v ON v.site_id = c.id
ORDER BY c.latest DESC, c.id, v.ordinal
