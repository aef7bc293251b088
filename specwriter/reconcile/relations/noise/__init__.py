"""Relations of noise."""
