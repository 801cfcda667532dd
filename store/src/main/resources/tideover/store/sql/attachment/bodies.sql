SELECT digest, content FROM attachment_body
