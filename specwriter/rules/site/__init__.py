"""Rules on what the site brings: steel, bridges, loops, kerbs, water, neighbours, airfields."""
