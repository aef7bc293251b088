"""All areas of a job: clashes first, then the results that the dimensions must assure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from specwriter.diagnostic import NotRun
from specwriter.model import Area, Job
from specwriter.quantity import Interval
from specwriter.reconcile.clash import Clash, find_clashes
from specwriter.reconcile.registry import relations_for
from specwriter.reconcile.relation import Relation
from specwriter.reconcile.requirement import (
    LABELS,
    Requirement,
    and_list,
    dimensions_of,
    result,
)
from specwriter.reconcile.result_check import check_result
from specwriter.reconcile.verdict import Reconciliation, Verdict
from specwriter.trade.texture_depth import CONVERSION_SOURCES, conversion_of, etd_of_mpd

_RESULT = "texture-depth"
_MM = Fraction(1, 1000)


def reconcile(job: Job) -> Reconciliation:
    """The verdicts on every area, and which relations could not look."""
    verdicts: list[Verdict] = []
    not_run: list[NotRun] = []
    ran: dict[str, None] = {}
    for area in job.areas.values():
        requirements = dimensions_of(area)
        relations = relations_for(area)
        clashes = _clashes(requirements, relations)
        verdicts += [Verdict(area=area.id, outcome="impossible", clash=each) for each in clashes]
        if not clashes:
            verdicts += _results(area, requirements, relations, not_run)
        not_run += _without_inputs(area, requirements, relations)
        ran |= dict.fromkeys(_looked(requirements, relations))
    ran |= {_RESULT: None} if any(each.result for each in verdicts) else {}
    return Reconciliation(verdicts=tuple(verdicts), not_run=tuple(not_run), ran=tuple(ran))


def _clashes(
    requirements: Sequence[Requirement], relations: Sequence[Relation]
) -> tuple[Clash, ...]:
    """Clashes of the values as written, or else of the nominal values alone."""
    hard = find_clashes(requirements, relations)
    if hard:
        return hard
    nominal = find_clashes([each.at_nominal() for each in requirements], relations)
    by_path = {each.path: each for each in requirements}
    return tuple(
        replace(
            clash, members=tuple(by_path[each.path] for each in clash.members), nominal_only=True
        )
        for clash in nominal
    )


def _results(
    area: Area,
    requirements: Sequence[Requirement],
    relations: Sequence[Relation],
    not_run: list[NotRun],
) -> Iterator[Verdict]:
    for target, converted in _targets(area, not_run):
        found = check_result(area, target, requirements, relations, converted)
        if found is None:
            not_run.append(_skipped(area, "the dimensions leave the groove depth or spacing open"))
            continue
        outcome, check = found
        yield Verdict(area=area.id, outcome=outcome, result=check)
        if outcome != "assured":
            return


def _targets(area: Area, not_run: list[NotRun]) -> Iterator[tuple[Requirement, str]]:
    """The texture depths asked for, on the scale of the sand patch."""
    depth = area.texture_depth
    if depth is None:
        return
    if depth.surface == "between_grooves":
        not_run.append(_skipped(area, "the depth is measured between the grooves"))
        return
    for key in ("at_least", "single_at_least"):
        quantity = getattr(depth, key)
        if quantity is None:
            continue
        low = quantity.interval.low
        if low is None:
            not_run.append(_skipped(area, f"'{quantity.text}' sets no lower limit"))
            continue
        if depth.measure == "MPD":
            conversion = conversion_of(depth.method or "", depth.edition or "")
            if conversion is None:
                not_run.append(
                    _skipped(area, "no method and edition says how MPD becomes texture depth")
                )
                return
            goal = etd_of_mpd(low / _MM, conversion) * _MM
            source = CONVERSION_SOURCES[conversion]
            yield result(area, key, quantity, Interval(goal, None)), source
        else:
            yield result(area, key, quantity, Interval(low, None)), ""


def _skipped(area: Area, because: str) -> NotRun:
    return NotRun(
        slug=_RESULT,
        title="texture depth against the dimensions",
        area=area.id,
        because=because,
    )


def _looked(requirements: Sequence[Requirement], relations: Sequence[Relation]) -> Iterator[str]:
    """Relations with two values or more to hold against each other."""
    stated = {each.variable for each in requirements}
    for relation in relations:
        if len(stated.intersection(relation.variables)) >= 2:
            yield relation.slug


def _without_inputs(
    area: Area, requirements: Sequence[Requirement], relations: Sequence[Relation]
) -> Iterator[NotRun]:
    """Relations of which only one value is stated."""
    stated = {each.variable for each in requirements}
    for relation in relations:
        absent = [name for name in relation.variables if name not in stated]
        if len(absent) >= 2 and len(relation.variables) - len(absent) == 1:
            yield NotRun(
                slug=relation.slug,
                title=relation.statement,
                area=area.id,
                because=f"{and_list([LABELS.get(name, name) for name in absent])} are not given",
            )
