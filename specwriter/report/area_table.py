"""The table of an area: what is required, what everything else allows, and the verdict.

::

    mainline       required               the rest allows        verdict
    groove width   0.090 in to 0.130 in   0.092 in to 0.163 in   holds
    texture depth  at least 0.8 mm        0.40 mm to 0.80 mm     not assured: 0.40 mm

What only a relation with scatter bounds is inside "as an estimate", or holds "as far as is known".
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
        verdict_of(standing),
    )


def _allowed(standing: Standing) -> str:
    interval = neat(standing.allowed)
    if standing.outcome == "impossible" and interval.is_empty:
        return "nothing"
    if _is_anything(interval):
        interval = neat(standing.expected) if standing.expected else interval
    if _is_anything(interval):
        return ANYTHING
    return show_interval_like(
        Interval(interval.low or None, interval.high), standing.requirement.quantity
    )


def _is_anything(interval: Interval) -> bool:
    return not interval.low and interval.high is None


def verdict_of(standing: Standing) -> str:
    """The outcome in words, with the margin, the worst choice, or what keeps a limit idle."""
    verdict = standing.verdict
    if verdict is not None and verdict.result is not None:
        return _of_result(standing.outcome, verdict.result)
    if verdict is not None and verdict.idle is not None:
        others = ", ".join(dict.fromkeys(each.label for each in verdict.idle.because))
        return f"idle: {others} keep it inside"
    if standing.outcome == "not decided":
        return "not judged beside the clash"
    if standing.expected and _is_anything(standing.allowed):
        return f"{standing.outcome}, as far as is known"
    return standing.outcome


def _of_result(outcome: str, check: ResultCheck) -> str:
    quantity = check.target.quantity
    worst = dict(check.witness).get(check.target.variable)
    if worst is not None:
        return f"{outcome}: {show_against(worst, quantity)}"
    if check.margin is not None:
        return f"{outcome}, margin {show_like(check.margin, quantity)}"
    if outcome == "not decided" and neat(check.allowed).within(check.target.interval):
        return "inside, as an estimate"
    return outcome
