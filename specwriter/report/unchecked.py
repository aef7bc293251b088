"""Why checks could not look: each reason once, with its areas and how many checks wait for it.

A key of the job file is told in words of the trade.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from specwriter.compare.labels import label_of
from specwriter.diagnostic import NotRun

_NAMES = {
    "also_stated": "what another document states",
    "blade": "blades",
    "conditions": "site conditions",
    "conditions.arresting_gear": "arresting gear",
    "conditions.bridges_within": "whether bridges lie within the limits",
    "conditions.clear_within": "time to clear the pavement",
    "conditions.coarse_aggregate.hardness": "hardness of the coarse aggregate",
    "conditions.existing_mri": "existing MRI",
    "conditions.in_pavement_lights": "in-pavement lights",
    "conditions.noise_sensitive_neighbours": "noise-sensitive neighbours",
    "conditions.open_between_shifts": "whether traffic returns between shifts",
    "conditions.pavement": "kind of pavement",
    "conditions.pavement_age": "age of the pavement",
    "conditions.repairs_before": "repairs before the work",
    "conditions.two_wheelers": "two-wheelers",
    "conditions.work_windows": "work windows",
    "coverage": "what is textured and what is left",
    "friction.measure": "measure of friction",
    "friction.speed": "speed of the friction test",
    "friction.tyre": "tyre of the friction test",
    "limits": "limits of the work",
    "noise.measure": "measure of noise",
    "noise.speed": "speed of the noise test",
    "residue": "handling of the residue",
    "sequence": "order of work",
    "settings": "house settings",
    "settings.duty_verb": "house style of shall and must",
    "settings.governing_units": "governing units",
    "settings.number_style": "house style of numbers",
    "smoothness": "ride",
    "smoothness.localized": "localized roughness",
    "smoothness.pay_adjustment": "pay adjustment for ride",
    "smoothness.pay_adjustment.bands": "rows of the pay table",
    "submittals": "submittals",
    "testing": "tests of the dimensions",
}
"""Nouns as a whole, and keys that are no words of the trade; the others have names already."""


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
        what = _name(each.lacks) if each.lacks else _without_ending(each.because)
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
    """Why a check could not look: ``not given: profiler runs (smoothness.runs)``."""
    return f"not given: {_name(each.lacks)} ({each.lacks})" if each.lacks else each.because


def _name(key: str) -> str:
    """What the key stands for, without the comma that would end it in a list."""
    return _NAMES.get(key) or label_of(tuple(key.split(".")), key).replace(", ", " ")


def _without_ending(because: str) -> str:
    """A reason as what it names, in a list that says itself that nothing of it is given."""
    return because.removesuffix(" is not given").removesuffix(" are not given")
