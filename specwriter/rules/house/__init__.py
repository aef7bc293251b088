"""Rules that hold a job against what its house has settled."""
