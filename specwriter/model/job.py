"""The whole job file as typed, frozen data."""

from __future__ import annotations

from dataclasses import dataclass, field

from specwriter.model.area import Area
from specwriter.model.conditions import Conditions
from specwriter.model.contract import (
    Accepted,
    PayItem,
    Reason,
    Residue,
    Submittal,
    TrialSection,
)
from specwriter.model.node import Node
from specwriter.model.project import Project
from specwriter.model.settings import Settings


@dataclass(frozen=True, slots=True, kw_only=True)
class Job(Node):
    """One job file."""

    format: int
    project: Project
    areas: dict[str, Area]
    conditions: Conditions = field(default_factory=lambda: Conditions(path="conditions"))
    pay_items: dict[str, PayItem] = field(default_factory=dict)
    residue: Residue | None = None
    trial_section: TrialSection | None = None
    sequence: tuple[str, ...] = ()
    submittals: dict[str, Submittal] = field(default_factory=dict)
    accepted: tuple[Accepted, ...] = ()
    reasons: tuple[Reason, ...] = ()
    settings: Settings | None = None
