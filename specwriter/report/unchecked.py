"""Why checks could not look: each reason once, with its areas and how many checks wait for it.

A key of the job file is told in words of the trade.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from specwriter.diagnostic import NotRun
from specwriter.model.labels import label_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Unchecked:
    """What is not given; ``checks`` counts checks, not the areas in which each waits."""

    what: str
    areas: tuple[str, ...]
    checks: int


def unchecked(not_run: Iterable[NotRun]) -> list[Unchecked]:
    """What is not given, area by area, what most checks wait for first."""
    waiting: dict[str, list[NotRun]] = {}
    for each in not_run:
        what = label_of(each.lacks) if each.lacks else _without_ending(each.because)
        waiting.setdefault(what, []).append(each)
    told = [
        Unchecked(
            what=what,
            areas=tuple(sorted({each.area for each in some if each.area})),
            checks=len({each.slug for each in some}),
        )
        for what, some in waiting.items()
    ]
    return sorted(told, key=lambda each: (each.areas, -each.checks))


def reason(each: NotRun) -> str:
    """Why a check could not look: ``not given: number of profiler runs (smoothness.runs)``."""
    return f"not given: {label_of(each.lacks)} ({each.lacks})" if each.lacks else each.because


def _without_ending(because: str) -> str:
    """A reason as what it names, in a list that says itself that nothing of it is given."""
    return because.removesuffix(" is not given").removesuffix(" are not given")
