"""The table of an area: what is required, what everything else allows, and the verdict.

::

    mainline       required               the rest allows        verdict
    groove width   0.090 in to 0.130 in   0.092 in to 0.163 in   holds
    texture depth  at least 0.8 mm        0.40 mm to 0.80 mm     not assured: 0.40 mm
"""

from __future__ import annotations

from specwriter.quantity import Interval, show_interval_like, show_like
from specwriter.reconcile.explain_result import show_against
from specwriter.reconcile.propagate import neat
from specwriter.reconcile.verdict import AreaVerdicts, ResultCheck, Standing

Row = tuple[str, str, str, str]
ANYTHING = "anything"
HEAD = ("required", "the rest allows", "verdict")


def rows_of(area: AreaVerdicts) -> list[Row]:
    """Name, requirement as written, what the rest allows, verdict with margin or witness.

    A requirement that holds whatever the rest is has no row.
    """
    return [row for row in map(_row, area.table) if row[2:] != (ANYTHING, "holds")]


def _row(standing: Standing) -> Row:
    requirement = standing.requirement
    return (
        requirement.label,
        requirement.written,
        _allowed(standing),
        _verdict(standing),
    )


def _allowed(standing: Standing) -> str:
    interval = neat(standing.allowed)
    if not interval.low and interval.high is None:
        return ANYTHING
    if standing.outcome == "impossible" and interval.is_empty:
        return "nothing"
    return show_interval_like(
        Interval(interval.low or None, interval.high), standing.requirement.quantity
    )


def _verdict(standing: Standing) -> str:
    verdict = standing.verdict
    if verdict is not None and verdict.result is not None:
        return standing.outcome + _of_result(verdict.result)
    if verdict is not None and verdict.idle is not None:
        others = ", ".join(dict.fromkeys(each.label for each in verdict.idle.because))
        return f"idle: {others} keep it inside"
    return standing.outcome


def _of_result(check: ResultCheck) -> str:
    quantity = check.target.quantity
    worst = dict(check.witness).get(check.target.variable)
    if worst is not None:
        return f": {show_against(worst, quantity)}"
    return f", margin {show_like(check.margin, quantity)}" if check.margin is not None else ""
