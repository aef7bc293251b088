"""Why checks could not look: each reason once, with its areas and how many checks wait for it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from specwriter.diagnostic import NotRun


@dataclass(frozen=True, slots=True, kw_only=True)
class Unchecked:
    """One reason; ``checks`` counts the checks, not the areas in which each of them waits."""

    because: str
    areas: tuple[str, ...]
    checks: int


def unchecked(not_run: Iterable[NotRun]) -> list[Unchecked]:
    """The reasons in the order in which they come first."""
    waiting: dict[str, list[NotRun]] = {}
    for each in not_run:
        waiting.setdefault(each.because, []).append(each)
    return [
        Unchecked(
            because=because,
            areas=tuple(dict.fromkeys(each.area for each in some if each.area)),
            checks=len({each.slug for each in some}),
        )
        for because, some in waiting.items()
    ]
