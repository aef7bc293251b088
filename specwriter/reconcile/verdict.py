"""What reconciling an area ends in."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from specwriter.diagnostic import NotRun
from specwriter.quantity import Interval
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.requirement import Requirement

Outcome = Literal["impossible", "not assured", "assured", "not decided"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Tightening:
    """The least change of one dimension that alone would assure the result."""

    member: Requirement
    to: Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class ResultCheck:
    """A required texture depth held against what the dimensions allow (metres).

    ``grooves`` is the depth that the grooves alone give, ``total`` that of grooves and lands;
    ``total.high`` is infinite where the texture of the land is not stated. ``witness`` is one
    choice, by variable, that obeys every dimension as written and fails the result.
    """

    target: Requirement
    grooves: Interval
    total: Interval
    witness: tuple[tuple[str, Fraction], ...] = ()
    members: tuple[Requirement, ...] = ()
    land_needed: Fraction | None = None
    tightenings: tuple[Tightening, ...] = ()
    is_upper_bound: bool = False
    converted: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """One answer about one area: a clash of dimensions, or a result held against them."""

    area: str
    outcome: Outcome
    clash: Clash | None = None
    result: ResultCheck | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reconciliation:
    """All verdicts of a job; ``ran`` names what could look, ``not_run`` what could not."""

    verdicts: tuple[Verdict, ...]
    not_run: tuple[NotRun, ...]
    ran: tuple[str, ...] = ()
