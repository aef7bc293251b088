"""Rules on what is missing: a requirement that cannot be tested, settled or read."""
