"""Requirements and relations of an area, solved together."""
