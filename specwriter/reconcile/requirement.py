"""What a contract asks of one area, as exact intervals on named variables.

A variable is named as its key stands in the job (``groove.width``); ``texture_depth`` is the
texture depth on the scale of the sand patch. Lengths in metres, counts per metre.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from specwriter.diagnostic import Evidence
from specwriter.model import Area
from specwriter.quantity import Interval, Quantity

Role = Literal["dimension", "result", "condition"]

LABELS: dict[str, str] = {
    "groove.spacing": "groove spacing",
    "groove.per_foot": "grooves per foot",
    "groove.per_metre": "grooves per metre",
    "groove.width": "groove width",
    "groove.width_at_bottom": "groove width at the bottom",
    "groove.depth": "groove depth",
    "groove.clear_gap": "clear gap",
    "land.width": "land width",
    "ridge.height": "ridge height",
    "blade.segment": "cutting segment",
    "blade.core": "blade core",
    "blade.spacer": "spacer",
    "flush_grind.segment": "cutting segment of the flush grind",
    "flush_grind.core": "blade core of the flush grind",
    "flush_grind.spacer": "spacer of the flush grind",
    "flush_grind.land": "land of the flush grind",
    "texture_depth.land_texture": "texture of the land",
    "texture_depth": "texture depth",
}
"""Plain words for every variable; requirements are collected and listed in this order."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Requirement:
    """One written requirement: ``interval`` as written, ``reading`` with its rounding granted."""

    variable: str
    path: str
    label: str
    quantity: Quantity
    role: Role
    interval: Interval
    reading: Interval

    @property
    def evidence(self) -> Evidence:
        """The requirement as a finding shows it."""
        return Evidence(path=self.path, label=self.label, written=self.quantity.text)

    def narrowed(self, interval: Interval) -> Requirement:
        """The same requirement held to another interval."""
        return replace(self, interval=interval, reading=interval)

    def at_nominal(self) -> Requirement:
        """The same requirement without its tolerance; others stay as they are."""
        if self.quantity.form != "tolerance":
            return self
        nominal, slack = self.quantity.amounts[0].base, self.quantity.amounts[0].slack
        return self.narrowed(Interval(nominal, nominal).widen(slack))


def dimensions_of(area: Area) -> tuple[Requirement, ...]:
    """Every dimension and condition of the area that a relation may use."""
    return tuple(
        _requirement(area, variable, quantity)
        for variable in LABELS
        if (quantity := _stated(area, variable)) is not None
    )


def _requirement(area: Area, variable: str, quantity: Quantity) -> Requirement:
    is_blade = variable == "groove.width" and _width_is_of_blade(area)
    return Requirement(
        variable="blade.segment" if is_blade else variable,
        path=f"{area.path}.{variable}",
        label=LABELS[variable],
        quantity=quantity,
        role="condition" if variable == "texture_depth.land_texture" else "dimension",
        interval=quantity.interval,
        reading=quantity.reading,
    )


def _width_is_of_blade(area: Area) -> bool:
    """True where the width is set on the blade: the cut may come out a little wider."""
    return area.groove is not None and area.groove.width_basis == "blade"


def _stated(area: Area, variable: str) -> Quantity | None:
    noun, _, key = variable.partition(".")
    node = getattr(area, noun)
    value = getattr(node, key, None) if node is not None and key else None
    return value if isinstance(value, Quantity) else None


def result(area: Area, key: str, quantity: Quantity, interval: Interval) -> Requirement:
    """A requirement on the texture depth that acceptance measures; ``interval`` on its scale."""
    slack = max(amount.slack for amount in quantity.amounts)
    return Requirement(
        variable="texture_depth",
        path=f"{area.path}.texture_depth.{key}",
        label="texture depth",
        quantity=quantity,
        role="result",
        interval=interval,
        reading=interval.widen(slack),
    )


def and_list(words: Sequence[str]) -> str:
    """``a``, ``a and b``, ``a, b and c``."""
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
