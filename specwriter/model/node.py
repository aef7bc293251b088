"""What all nouns of a job share: they know the path at which they stand."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Node:
    """A mapping of the job file; ``path`` is where it stands, such as ``areas.mainline.groove``."""

    path: str

    def path_to(self, key: str) -> str:
        """The path of one of its keys."""
        return f"{self.path}.{key}" if self.path else key
