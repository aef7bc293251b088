"""What is taken away, and what is left of joints, slab, asphalt and cover."""

from __future__ import annotations

WHY = (
    "What is cut away does not come back. Where the cut that one clause allows goes deeper "
    "than another clause leaves room for, the limit is found broken when nothing can be done "
    "about it."
)
