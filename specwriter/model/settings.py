"""House settings: what the agency has decided where published documents disagree."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from specwriter.model.node import Node
from specwriter.quantity import Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Usual(Node):
    """What the house calls usual for one requirement, named by its way below the area."""

    of: str
    range: Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings(Node):
    """A missing setting has no default: the check that needs it is reported as not run."""

    file: str | None = None
    duty_verb: Literal["shall", "must", "imperative"] | None = None
    undated_references: Literal["refused", "edition_at_advertisement"] | None = None
    house_format: str | None = None
    numbering: str | None = None
    page: Literal["letter", "a4"] | None = None
    precedence: tuple[str, ...] = ()
    overlap: Quantity | None = None
    head_width: Quantity | None = None
    wheelbase: Quantity | None = None
    joint_match: Quantity | None = None
    curb_setback: Quantity | None = None
    runway_joint_offset: Quantity | None = None
    cure_age_concrete: Quantity | None = None
    cure_age_asphalt: Quantity | None = None
    shortest_window: Quantity | None = None
    shortest_ride_length: Quantity | None = None
    smoothness_resolution: Quantity | None = None
    governing_units: Literal["us", "si"] | None = None
    number_style: Literal["fractions", "decimals"] | None = None
    pay_step: Quantity | None = None
    lowest_ride_speed: Quantity | None = None
    usual: tuple[Usual, ...] = ()
