SELECT digest, format, deflated FROM site_body
