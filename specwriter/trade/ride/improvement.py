"""Ride after grinding as a share of the ride before, and what has been published as reached."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Study:
    """Improvement of roughness that one source reports, as shares of the value before.

    ``drop`` is the mean, least and greatest fall of the index in in/mi, where it is printed.
    """

    least: float
    most: float
    mean: float
    source: str
    drop: tuple[float, float, float] | None = None


CALIFORNIA = Study(
    least=0.53,
    most=0.64,
    mean=0.578,
    source="California DOT technical advisory guide, chapter 5, training slides, about 2007, "
    "undated (second-hand): 53, 55, 56, 59, 60 and 64 percent",
)
TEXAS = Study(
    least=0.17,
    most=0.57,
    mean=0.40,
    drop=(60, 20, 122),
    source="paper abstract on the long-term performance of diamond grinding in Texas: 17 to 57 "
    "percent over eleven projects, about 40 on average",
)
STUDIES = (CALIFORNIA, TEXAS)

BEST = max(study.most for study in STUDIES)
"""Best published improvement: 0.64."""

USUAL_BEST = TEXAS.most
"""Best of the larger study: 0.57."""


def after(before: float, improvement: float) -> float:
    """Roughness after an ``improvement`` given as a share. Source: definition."""
    return before * (1 - improvement)


def crossover(cap: float, improvement: float) -> float:
    """Roughness before at which cap and improvement ask for the same; above it the cap is
    stricter, below it the improvement. Source: arithmetic."""
    return cap / (1 - improvement)
