"""Ride: what joints, curl, wheelbase and existing roughness leave of a limit."""
