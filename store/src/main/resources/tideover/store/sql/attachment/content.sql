SELECT content FROM attachment_body WHERE digest = :digest
