"""What the contract says around the texture: pay items, residue, sequence, submittals, trial."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from specwriter.model.node import Node
from specwriter.quantity import Quantity


@dataclass(frozen=True, slots=True, kw_only=True)
class PayItem(Node):
    """A pay item; ``id`` is its key under ``pay_items``, ``number`` the agency's item number."""

    id: str
    name: str
    unit: str
    number: str | None = None
    measured_as: str | None = None
    quantity: Quantity | None = None
    unit_price: Quantity | None = None
    includes: tuple[str, ...] = ()
    excludes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Residue(Node):
    """What becomes of the slurry."""

    regime: Literal["haul", "spread", "haul_and_spread"] | None = None
    disposal_site: str | None = None
    ph: Quantity | None = None
    setback: Quantity | None = None
    permit_by: Literal["contractor", "agency"] | None = None
    pay_item: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class TrialSection(Node):
    """A first stretch on which the texture is shown before production."""

    required: bool | None = None
    length: Quantity | None = None
    before: Quantity | None = None
    tries: Quantity | None = None
    paid: Literal["at_contract_price", "included"] | None = None
    shows: tuple[str, ...] = ()
    method: str | None = None
    response: Quantity | None = None
    production: Literal["after_acceptance", "at_contractors_risk"] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Submittal(Node):
    """A document due from the contractor; ``id`` is its key under ``submittals``."""

    id: str
    title: str | None = None
    content: str | None = None
    due: Quantity | None = None
    due_before: str | None = None
    action: Literal["review", "information"] | None = None
    response: Quantity | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason(Node):
    """Why a value is what it is; for the rationale memo, never for the contract text."""

    at: str
    because: str
    source: str | None = None
    by: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Accepted(Node):
    """A finding for which somebody takes responsibility."""

    finding: str
    at: str
    because: str
    by: str
    on: str
    until: str | None = None
    wording: str | None = field(default=None, metadata={"key": "for"})
    """The value at ``at`` as it was written when the finding was accepted."""
