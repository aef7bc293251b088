"""Relations of noise."""

from __future__ import annotations

WHY = (
    "A lane has one sound, however and whenever it is measured. A limit that the texture "
    "cannot keep fails without any fault of the contractor, and no blade mends it."
)
