"""The table of an area: what is required, what everything else allows, and the verdict.

::

    mainline       required               the rest allows        verdict
    groove width   0.090 in to 0.130 in   0.092 in to 0.163 in   holds
    texture depth  at least 0.8 mm        0.40 mm to 0.80 mm     not assured: 0.40 mm

What only a relation with scatter bounds is inside "as an estimate", or holds "as far as is known".
"""

from __future__ import annotations

from collections.abc import Iterator

from specwriter.model.labels import and_list
from specwriter.quantity import Interval, show_interval_like, show_like
from specwriter.reconcile.box import neat
from specwriter.reconcile.clash import Clash
from specwriter.reconcile.explain_result import show_against, witness_choice
from specwriter.reconcile.verdict import AreaVerdicts, ResultCheck, Standing, Verdict

Row = tuple[str, str, str, str]
JudgedRow = tuple[str, str, str, str, str]
ANYTHING = "anything"
HEAD = ("required", "the rest allows", "verdict")


def rows_of(area: AreaVerdicts) -> list[Row]:
    """Name, requirement as written, what the rest allows, verdict with margin or witness.

    A requirement that holds whatever the rest is has no row.
    """
    return [(*_bounds(each), verdict_of(each)) for each in _shown(area)]


def judged_rows_of(area: AreaVerdicts) -> list[JudgedRow]:
    """The same rows with the verdict in two cells.

    The second names the choice that fails a result, and whatever a requirement clashes with.
    """
    return [(*_bounds(each), *_in_full(each)) for each in _shown(area)]


def _shown(area: AreaVerdicts) -> Iterator[Standing]:
    for standing in area.table:
        if (_allowed(standing), verdict_of(standing)) != (ANYTHING, "holds"):
            yield standing


def _bounds(standing: Standing) -> tuple[str, str, str]:
    requirement = standing.requirement
    return requirement.label, requirement.written, _allowed(standing)


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
    outcome, behind = _judged(standing)
    if not behind:
        return outcome
    return f"{outcome}{': ' if outcome in _GIVES_ITS_REASON else ', '}{behind}"


def _in_full(standing: Standing) -> tuple[str, str]:
    outcome, behind = _judged(standing)
    match standing.verdict:
        case Verdict(result=ResultCheck() as result) if result.witness:
            return outcome, f"{behind} with {witness_choice(result)}"
        case Verdict(clash=Clash(members=members)):
            named = [f"{each.label} {each.written}" for each in members]
            own = f"{standing.requirement.label} {standing.requirement.written}"
            others = [each for each in named if each != own]
            return outcome, f"against {and_list(others)}" if others else behind
        case _:
            return outcome, behind


_GIVES_ITS_REASON = ("impossible", "not assured", "idle")


def _judged(standing: Standing) -> tuple[str, str]:
    """The outcome alone, and its margin, its worst value, its reason or how far it is known."""
    verdict = standing.verdict
    if verdict is not None and verdict.result is not None:
        return _of_result(standing.outcome, verdict.result)
    if verdict is not None and verdict.idle is not None:
        others = list(dict.fromkeys(each.label for each in verdict.idle.because))
        return "idle", f"{and_list(others)} {'keeps' if len(others) == 1 else 'keep'} it inside"
    if standing.outcome == "not decided":
        return "not judged beside the clash", ""
    if standing.expected and _is_anything(standing.allowed):
        return standing.outcome, "as far as is known"
    return standing.outcome, ""


def _of_result(outcome: str, check: ResultCheck) -> tuple[str, str]:
    quantity = check.target.quantity
    worst = dict(check.witness).get(check.target.variable)
    if worst is not None:
        return outcome, show_against(worst, quantity)
    if check.margin is not None:
        return outcome, f"margin {show_like(check.margin, quantity)}"
    if outcome == "not decided" and neat(check.allowed).within(check.target.interval):
        return "inside", "as an estimate"
    return outcome, ""
