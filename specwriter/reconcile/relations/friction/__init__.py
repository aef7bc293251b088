"""Friction numbers of one surface: by tyre and by speed."""

from __future__ import annotations

WHY = (
    "Two limits on one surface are met together or not at all. Where they ask for two "
    "surfaces, the stricter one decides alone, and mostly nobody meant it to."
)
