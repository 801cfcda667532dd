SELECT format, deflated FROM site_body WHERE digest = :digest
