"""Ride: what joints, curl, wheelbase and existing roughness leave of a limit."""

from __future__ import annotations

WHY_TWO_LIMITS = (
    "Two limits on the ride that ask for two different surfaces send lanes that pass one of "
    "them to the grinder for the other. Whoever priced the looser one claims the difference."
)
WHY_STEPS = (
    "A joint that is within its tolerance is still a bump. Where the bumps that are allowed "
    "use up another limit of the ride, work that passes joint by joint fails as a lane."
)
