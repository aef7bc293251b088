"""What several rules ask of the times of a job: cure age of the house, hours of a window."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from specwriter.model import Job
from specwriter.model.conditions import WorkWindow
from specwriter.quantity import Quantity
from specwriter.rules.places import ASPHALT
from specwriter.rules.rule import given


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """A house setting with the name that a finding gives it."""

    name: str
    value: Quantity


def cure_setting(job: Job) -> Setting | None:
    """The age that the house has settled for the pavement of this job, if it has."""
    if job.settings is None or job.conditions.pavement is None:
        return None
    asphalt = job.conditions.pavement in ASPHALT
    name = "cure_age_asphalt" if asphalt else "cure_age_concrete"
    value = getattr(job.settings, name)
    return Setting(name=name, value=value) if value is not None else None


def hours(window: WorkWindow) -> Fraction:
    """How long a window with both times lasts; it may run through midnight."""
    minutes = _minutes(given(window.end)) - _minutes(given(window.start))
    return Fraction(minutes % (24 * 60), 60)


def crosses_midnight(window: WorkWindow) -> bool:
    """True when the window ends on the day after it starts."""
    return _minutes(given(window.end)) <= _minutes(given(window.start))


def _minutes(clock: str) -> int:
    hour, minute = clock.split(":")[:2]
    return int(hour) * 60 + int(minute)
