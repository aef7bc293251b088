"""Rules on texture depth: measure and method, edition, direction, place, readings, scale."""
