"""Text of a job file → data with places, or faults with places."""
