"""Properties that hold for every job, checked on generated ones."""
