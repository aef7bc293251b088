"""What several rules ask of the times of a job: cure age, hours of a window, days in a text."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from specwriter.model import Job
from specwriter.model.conditions import WorkWindow
from specwriter.quantity import Quantity
from specwriter.rules.places import ASPHALT
from specwriter.rules.rule import given

_DAYS = {"day": 1, "week": 7, "month": 30, "season": 90, "winter": 90, "year": 365}
_NUMBERS = {
    **dict.fromkeys(("a", "an", "one", "the first", "the next", "the following"), 1),
    **{"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "nine": 9, "ten": 10, "twelve": 12},
    **{"fourteen": 14, "thirty": 30, "forty-five": 45, "sixty": 60, "ninety": 90},
}
_SPAN = re.compile(
    rf"(?<!last )(?<!past )\b(\d+|{'|'.join(_NUMBERS)})\)?[ -](?:(?:calendar|working|full) )?"
    rf"({'|'.join(_DAYS)})s?\b(?! (?:before|prior|old|earlier))",
    re.IGNORECASE,
)
_AFTER = re.compile(r"\b(?:after|of|from|following|since|under|in)\b", re.IGNORECASE)


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


def days_after(text: str) -> int:
    """The longest time after something that a text names, in days; 0 for none.

    A month is counted as 30 days, a season or a winter as 90.
    """
    if not _AFTER.search(text):
        return 0
    spans = _SPAN.findall(text)
    return max((_number(each) * _DAYS[unit.lower()] for each, unit in spans), default=0)


def _number(word: str) -> int:
    return int(word) if word.isdigit() else _NUMBERS[word.lower()]


def hours(window: WorkWindow) -> Fraction:
    """How long a window with both times lasts; it may run through midnight."""
    minutes = _minutes(given(window.end)) - _minutes(given(window.start))
    return Fraction(minutes % (24 * 60), 60)


def crosses_midnight(window: WorkWindow) -> bool:
    """True when the window ends on the day after it starts; one of no length does not."""
    return _minutes(given(window.end)) < _minutes(given(window.start))


def _minutes(clock: str) -> int:
    hour, minute = clock.split(":")[:2]
    return int(hour) * 60 + int(minute)
