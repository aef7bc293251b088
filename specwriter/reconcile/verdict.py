"""What reconciling an area ends in."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from typing import Literal

from specwriter.diagnostic import NotRun
from specwriter.quantity import Interval
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import Requirement
from specwriter.reconcile.variables import ORDER

Outcome = Literal[
    "impossible", "not expected", "not assured", "assured", "idle", "not decided", "holds"
]
"""``impossible`` is proved, ``not expected`` rests on a relation with scatter, ``not assured`` has
a witness, ``assured`` a margin, ``idle`` can never bind, ``holds`` is all that can be said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tightening:
    """The least change of one dimension that alone would assure the result."""

    member: Requirement
    to: Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class ResultCheck:
    """A required result held against what everything else allows.

    ``allowed`` is the range of the result over all allowed choices; ``witness`` one choice, by
    variable, that obeys everything else as written and fails the result at its worst;
    ``margin`` how far the worst choice stays inside the limit. ``missing`` is an input that the
    job does not state, ``missing_needed`` the least value of it that would assure the result.
    """

    target: Requirement
    relation: Relation
    allowed: Interval
    members: tuple[Requirement, ...]
    witness: tuple[tuple[str, Fraction], ...] = ()
    margin: Fraction | None = None
    tightenings: tuple[Tightening, ...] = ()
    missing: str = ""
    missing_needed: Fraction | None = None

    @property
    def is_hopeless(self) -> bool:
        """True when no choice as written reaches the limit: only rounding leaves room."""
        goal, allowed = self.target.interval, self.allowed
        low = goal.low is not None and allowed.high is not None and allowed.high < goal.low
        high = goal.high is not None and allowed.low is not None and allowed.low > goal.high
        return low or high


@dataclass(frozen=True, slots=True, kw_only=True)
class Idle:
    """A limit that can never bind, and the requirements that keep its variable inside it."""

    requirement: Requirement
    allowed: Interval
    because: tuple[Requirement, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """One answer about one area: a clash, a result held against the rest, or an idle limit."""

    area: str
    outcome: Outcome
    clash: Clash | None = None
    result: ResultCheck | None = None
    idle: Idle | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """One row of the table of an area: what is required, what the rest allows, the outcome.

    ``expected`` is what relations with scatter leave a result that no exact relation bounds.
    """

    requirement: Requirement
    allowed: Interval
    outcome: Outcome
    verdict: Verdict | None = None
    expected: Interval | None = None


@dataclass(frozen=True, kw_only=True)
class AreaVerdicts:
    """Everything that reconciling found on one area.

    ``judged`` are the clashes and the results; the table, and the idle limits that it shows, are
    worked out by ``rows`` when somebody asks for them.
    """

    area: str
    judged: tuple[Verdict, ...]
    rows: Callable[[], Iterable[Standing]]
    not_run: tuple[NotRun, ...]
    ran: tuple[str, ...]

    @cached_property
    def table(self) -> tuple[Standing, ...]:
        """What is required, what the rest allows, and the outcome, in the order of variables."""
        return tuple(sorted(self.rows(), key=lambda row: ORDER[row.requirement.variable]))

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """Clashes and results, then the limits that are idle."""
        idle = (each.verdict for each in self.table if each.outcome == "idle")
        return (*self.judged, *(each for each in idle if each is not None))


@dataclass(frozen=True, slots=True, kw_only=True)
class Reconciliation:
    """All areas of a job; ``ran`` names what could look, ``not_run`` what could not."""

    areas: tuple[AreaVerdicts, ...]

    @property
    def verdicts(self) -> tuple[Verdict, ...]:
        """The verdicts of all areas."""
        return tuple(each for area in self.areas for each in area.verdicts)

    @property
    def not_run(self) -> tuple[NotRun, ...]:
        """What could not look, and why."""
        return tuple(each for area in self.areas for each in area.not_run)

    @property
    def ran(self) -> tuple[str, ...]:
        """What looked, each once."""
        return tuple(dict.fromkeys(each for area in self.areas for each in area.ran))
