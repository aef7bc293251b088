"""What is taken away, and what is left of joints, slab, asphalt and cover."""
